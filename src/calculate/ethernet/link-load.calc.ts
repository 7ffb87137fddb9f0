import type { Method } from '../method.js'
import { linkSpeed, plannedLoad } from './practice.js'

export type LinkLoadInput = Readonly<{ streamsMbitPerS: number; speedMbitPerS: number }>
export type LinkLoadOutput = Readonly<{ loadPercent: number }>

/**
 * Share of a link that steady streams take in one direction.
 *
 * Formula   u = 100 · B / v
 * Units     B sum of the streams in that direction [Mbit/s], v speed of the link [Mbit/s]; u [%]
 * Source    ieee-802-3; the share to plan with is common-practice
 * Assumes   full duplex; a stream is as large on the link as its sender states, overhead included
 */
export function linkLoad(q: LinkLoadInput): LinkLoadOutput {
  return { loadPercent: (100 * q.streamsMbitPerS) / q.speedMbitPerS }
}

export const linkLoadMethod: Method<LinkLoadInput, LinkLoadOutput> = {
  id: 'ethernet-link-load',
  title: 'Load of an Ethernet link',
  formula: String.raw`u = 100\,B / v`,
  symbols: { streamsMbitPerS: 'B', speedMbitPerS: 'v', loadPercent: 'u' },
  citations: [linkSpeed, plannedLoad.citation],
  assumes: [
    'The speed is the lower of the two ports; a cable with fewer than four pairs allows 100 Mbit/s.',
    'A stream for one receiver counts once for each; one for all counts once on each link on the way to any of them. A switch that does not sort such streams sends them to every port.',
    'Charts, updates and what people do by hand are not in it: that is what the share is left free for.',
  ],
  compute: linkLoad,
  notApplicable: q => (q.speedMbitPerS > 0 && q.streamsMbitPerS >= 0 ? null : 'the speed of the link is not above zero'),
  checks: [
    {
      origin: 'by hand', place: 'four cameras of 6 Mbit/s and a radar of 20 Mbit/s over a link of 100 Mbit/s: 4 · 6 + 20 = 44',
      input: { streamsMbitPerS: 44, speedMbitPerS: 100 }, expected: { loadPercent: 44 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: '44 Mbit/s over a link of 1000 Mbit/s',
      input: { streamsMbitPerS: 44, speedMbitPerS: 1000 }, expected: { loadPercent: 4.4 }, tolerance: 1e-9,
    },
  ],
}
