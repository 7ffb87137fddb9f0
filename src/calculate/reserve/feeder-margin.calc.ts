import type { Method } from '../method.js'

export type FeederMarginInput = Readonly<{ limitCurrentA: number; takenCurrentA: number }>
export type FeederMarginOutput = Readonly<{ marginCurrentA: number }>

/**
 * What a protective device, conductor, panel, busbar or source could still carry.
 *
 * Formula   ΔI = I_max − I_t
 * Units     I_max rating or capacity [A], I_t current it carries by design [A]; ΔI [A], negative above the limit
 * Source    circuit-theory; that each part is held against its own rating is common-practice
 */
export function feederMargin(q: FeederMarginInput): FeederMarginOutput {
  return { marginCurrentA: q.limitCurrentA - q.takenCurrentA }
}

export const feederMarginMethod: Method<FeederMarginInput, FeederMarginOutput> = {
  id: 'feeder-margin',
  title: 'Margin of a feeder, panel or busbar',
  formula: String.raw`\Delta I = I_{max} - I_t`,
  symbols: { limitCurrentA: 'I_{max}', takenCurrentA: 'I_t', marginCurrentA: String.raw`\Delta I` },
  citations: [
    { source: 'circuit-theory', place: "Kirchhoff's current law" },
    { source: 'common-practice', place: 'each part of a feeder is held against its own rating, and the least margin decides' },
  ],
  assumes: [
    'A feeder has the least of the margins of its protective device, its conductors, the panels and busbars that it feeds and its source.',
    'A conductor that several circuits share is held against what it carries for all of them.',
    'What charging sources put in flows the other way and gives a feeder no more room: they may be off.',
  ],
  compute: feederMargin,
  notApplicable: q => (q.limitCurrentA > 0 && q.takenCurrentA >= 0 ? null : 'a rating is not above zero or a current is below it'),
  checks: [
    {
      origin: 'by hand', place: 'a 40 A fuse whose feeder is designed for 21 A: 40 − 21',
      input: { limitCurrentA: 40, takenCurrentA: 21 }, expected: { marginCurrentA: 19 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'a module rated 60 A whose channels take 64.5 A together: 60 − 64.5',
      input: { limitCurrentA: 60, takenCurrentA: 64.5 }, expected: { marginCurrentA: -4.5 }, tolerance: 1e-9,
    },
  ],
}
