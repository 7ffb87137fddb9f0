/** Choices that hold for every basis; they are printed with the results they affect. */
export const commonReadings: readonly string[] = [
  'The drop of an a.c. circuit is that of its resistance at power factor 1; the limit for it is a land rule, used as advice.',
  'A conductor between two tabulated sizes counts as the thinner one; gauge and metric sizes are compared by cross-section.',
  'Insulation rated between two columns uses the cooler one.',
  'A cable that passes a machinery space, or any zone recorded as hotter than the ambient of the table, takes the engine-space factor; '
  + 'above the ambient of that factor there is no figure.',
  'The bundle of a cable is the largest number of loaded conductors in any wireway it runs through.',
  'A device is as far from its source as the cables between the two are long, or as measured. Where a device above already protects those cables, the distance does not matter.',
  'The voltage of a circuit is its nominal voltage, also where a battery is charged at a higher one; devices are sold by nominal voltage.',
  'American law for small passenger vessels (46 CFR 183.380(g)) limits lighting branches to 30 A; that law does not bind a pleasure craft and is not checked.',
  'Feeders to panels and busbars are held against the limit for main feeders, whatever they supply in the end.',
]
