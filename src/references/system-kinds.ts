/** The usual systems of a boat, by which the manual's general text is chosen; a yard may have others besides. */
export const systemKinds = [
  'navigation', 'communication', 'safety', 'monitoring', 'networks', 'power', 'charging', 'mains', 'switching',
  'propulsion', 'steering', 'steadying', 'deck', 'lighting', 'comfort',
] as const
export type SystemKind = (typeof systemKinds)[number]
export const isSystemKind = (word: string): word is SystemKind => (systemKinds as readonly string[]).includes(word)
