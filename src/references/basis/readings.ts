/** Choices that hold for every basis; they are printed with the results they affect. */
export const commonReadings: readonly string[] = [
  'A conductor between two tabulated sizes counts as the thinner one; gauge and metric sizes are compared by cross-section.',
  'Insulation rated between two columns uses the cooler one.',
  'A cable that passes a machinery space, or any zone recorded as hotter than the ambient of the table, takes the engine-space factor; '
  + 'above the ambient of that factor there is no figure.',
  'The bundle of a cable is the largest number of loaded conductors in any wireway it runs through.',
  'Feeders to panels and busbars are held against the limit for main feeders, whatever they supply in the end.',
]
