/** Words of the cautions: signal words by the worst credible outcome, what can hurt in the order of the chapter, and pages of work that show them. */
export const signalWords = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'] as const
export type SignalWord = (typeof signalWords)[number]

export const hazards = [
  'electric shock', 'short circuit and fire', 'batteries', 'gas, fuel and exhaust', 'moving machines and heat', 'radiation and magnets',
  'heights and weights', 'water', 'navigation and distress', 'the installation and its record',
] as const
export type Hazard = (typeof hazards)[number]

/** `mains circuits`: circuits of mains voltage; `battery circuits`: those straight from a battery; `circuits`: every other; `sending`: trials of radios. */
export const cautionPages = ['panels', 'circuits', 'mains circuits', 'battery circuits', 'mains', 'networks', 'radio', 'placement', 'commissioning', 'sending', 'workshop', 'maintenance'] as const
export type CautionPage = (typeof cautionPages)[number]
