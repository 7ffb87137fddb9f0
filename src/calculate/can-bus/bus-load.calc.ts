import { bitRateCitation } from '../../references/tables/can-rules.js'
import type { Method } from '../method.js'

export type MessageLoadInput = Readonly<{ timesCount: number; frameCount: number; intervalMs: number; nominalBitCount: number; worstBitCount: number }>
export type MessageLoadOutput = Readonly<{ framesPerS: number; nominalBitPerS: number; worstBitPerS: number }>

/**
 * What a message that is sent again and again takes of a bus.
 *
 * Formula   f = 1000 m k / T,   r = f n,   r_w = f n_w
 * Units     m of them each interval, k frames each, T [ms], n and n_w bits a frame; f [1/s], r and r_w [bit/s]
 * Source    davis-2007 for the bits
 */
export function messageLoad(q: MessageLoadInput): MessageLoadOutput {
  const framesPerS = (1000 * q.timesCount * q.frameCount) / q.intervalMs
  return { framesPerS, nominalBitPerS: framesPerS * q.nominalBitCount, worstBitPerS: framesPerS * q.worstBitCount }
}

export const messageLoadMethod: Method<MessageLoadInput, MessageLoadOutput> = {
  id: 'can-message-load',
  title: 'What a message takes of a CAN bus',
  formula: String.raw`f = \frac{1000\,m\,k}{T} \qquad r = f\,n \qquad r_w = f\,n_w`,
  symbols: {
    timesCount: 'm', frameCount: 'k', intervalMs: 'T', nominalBitCount: 'n', worstBitCount: 'n_w', framesPerS: 'f', nominalBitPerS: 'r', worstBitPerS: 'r_w',
  },
  citations: [{ source: 'davis-2007', place: 'length of a frame' }],
  assumes: ['It is sent at its interval, neither faster nor slower.', 'What is sent on an event or on request only counts nothing.'],
  compute: messageLoad,
  notApplicable: q => (q.intervalMs > 0 ? null : 'the interval is not above zero'),
  checks: [
    {
      origin: 'by hand', place: 'position, 8 bytes, ten a second: 10 frames of 131, at worst 160 bits',
      input: { timesCount: 1, frameCount: 1, intervalMs: 100, nominalBitCount: 131, worstBitCount: 160 }, expected: { framesPerS: 10, nominalBitPerS: 1310, worstBitPerS: 1600 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'GNSS position, 7 frames once a second: 7 · 160',
      input: { timesCount: 1, frameCount: 7, intervalMs: 1000, nominalBitCount: 131, worstBitCount: 160 }, expected: { framesPerS: 7, worstBitPerS: 1120 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'two engines, 26 bytes in 4 frames twice a second each: 2 · 4 · 2',
      input: { timesCount: 2, frameCount: 4, intervalMs: 500, nominalBitCount: 131, worstBitCount: 160 }, expected: { framesPerS: 16, worstBitPerS: 2560 }, tolerance: 1e-9,
    },
  ],
}

export type BusLoadInput = Readonly<{ nominalBitPerS: number; worstBitPerS: number; capacityBitPerS: number }>
export type BusLoadOutput = Readonly<{ nominalLoadPercent: number; worstLoadPercent: number }>

/**
 * Share of the capacity of a bus that is in use.
 *
 * Formula   p = 100 r / c,   p_w = 100 r_w / c
 * Units     r, r_w sums of what is sent [bit/s], c bit rate [bit/s]; p, p_w [%]
 * Source    bus-cable-guides for the bit rate
 */
export function busLoad(q: BusLoadInput): BusLoadOutput {
  return { nominalLoadPercent: (100 * q.nominalBitPerS) / q.capacityBitPerS, worstLoadPercent: (100 * q.worstBitPerS) / q.capacityBitPerS }
}

const ofFrames = (framesPerS: number) => ({ nominalBitPerS: framesPerS * 131, worstBitPerS: framesPerS * 160, capacityBitPerS: 250_000 })

export const busLoadMethod: Method<BusLoadInput, BusLoadOutput> = {
  id: 'can-bus-load',
  title: 'Load of a CAN bus',
  formula: String.raw`p = \frac{100\,r}{c} \qquad p_w = \frac{100\,r_w}{c}`,
  symbols: { nominalBitPerS: 'r', worstBitPerS: 'r_w', capacityBitPerS: 'c', nominalLoadPercent: 'p', worstLoadPercent: 'p_w' },
  citations: [bitRateCitation, { source: 'davis-2007', place: 'length of a frame' }],
  assumes: ['Nominal: without stuffed bits. Worst: every frame with as many stuffed bits as there can be.', 'Frames that are sent again after a fault are left out.'],
  compute: busLoad,
  notApplicable: q => (q.capacityBitPerS > 0 ? null : 'the bit rate is not above zero'),
  checks: [
    { origin: 'by hand', place: 'position ten times a second: 10 · 160 / 250 000 and 10 · 131 / 250 000', input: ofFrames(10), expected: { nominalLoadPercent: 0.524, worstLoadPercent: 0.64 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'GNSS position, 7 frames once a second', input: ofFrames(7), expected: { worstLoadPercent: 0.448 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'two engines, rapid and dynamic: 20 + 16 frames a second', input: ofFrames(36), expected: { worstLoadPercent: 2.304 }, tolerance: 1e-9 },
    {
      origin: 'by hand', place: 'position, course, GNSS, heading, wind, speed, depth, rudder and two engines: 10 + 4 + 7 + 10 + 10 + 1 + 1 + 10 + 36 = 89 frames a second',
      input: ofFrames(89), expected: { nominalLoadPercent: 4.6636, worstLoadPercent: 5.696 }, tolerance: 1e-9,
    },
  ],
}
