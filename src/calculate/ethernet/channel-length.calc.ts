import type { Method } from '../method.js'
import { channelLimit } from './practice.js'

export type ChannelLengthInput = Readonly<{ cableLengthM: number; cordLengthM: number }>
export type ChannelLengthOutput = Readonly<{ channelLengthM: number }>

/**
 * Length of an Ethernet channel, from port to port.
 *
 * Formula   L = l_c + l_p
 * Units     l_c the longest cable [m], l_p cords and further cables joined to it [m]; L [m]
 * Source    iso-iec-11801
 */
export function channelLength(q: ChannelLengthInput): ChannelLengthOutput {
  return { channelLengthM: q.cableLengthM + q.cordLengthM }
}

export const channelLengthMethod: Method<ChannelLengthInput, ChannelLengthOutput> = {
  id: 'ethernet-channel-length',
  title: 'Length of an Ethernet link',
  formula: String.raw`L = l_c + l_p`,
  symbols: { cableLengthM: 'l_c', cordLengthM: 'l_p', channelLengthM: 'L' },
  citations: [channelLimit.citation],
  assumes: ['Cables that meet in a connector without electronics make one link from port to port.'],
  compute: channelLength,
  notApplicable: q => (q.cableLengthM >= 0 && q.cordLengthM >= 0 ? null : 'a length is below zero'),
  checks: [
    { origin: 'by hand', place: '94 m of cable and 8 m of cords: 94 + 8', input: { cableLengthM: 94, cordLengthM: 8 }, expected: { channelLengthM: 102 }, tolerance: 1e-9 },
    {
      origin: 'published', place: 'ISO/IEC 11801, from memory: 90 m of fixed cable and 10 m of cords make the channel of 100 m',
      input: { cableLengthM: 90, cordLengthM: 10 }, expected: { channelLengthM: 100 }, tolerance: 1e-9,
    },
  ],
}
