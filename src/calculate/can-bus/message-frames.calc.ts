import type { Method } from '../method.js'

export type FramesInput = Readonly<{ payloadByteCount: number }>
export type FramesOutput = Readonly<{ frameCount: number }>

/**
 * Frames of a fast packet: the first holds 6 bytes of data, each further one 7.
 *
 * Formula   k = 1 for b ≤ 6, else 1 + ⌈(b − 6) / 7⌉
 * Units     b bytes of data; k frames
 * Source    open-pgn-dataset; iec-61162-3
 */
export function fastPacketFrames({ payloadByteCount }: FramesInput): FramesOutput {
  return { frameCount: payloadByteCount <= 6 ? 1 : 1 + Math.ceil((payloadByteCount - 6) / 7) }
}

const frames = (payloadByteCount: number, frameCount: number, place: string) =>
  ({ origin: 'published', place, input: { payloadByteCount }, expected: { frameCount }, tolerance: 0 }) as const

export const fastPacketFramesMethod: Method<FramesInput, FramesOutput> = {
  id: 'fast-packet-frames',
  title: 'Frames of a fast packet',
  formula: String.raw`k = 1 + \left\lceil \frac{\max(0,\; b - 6)}{7} \right\rceil`,
  symbols: { payloadByteCount: 'b', frameCount: 'k' },
  citations: [{ source: 'open-pgn-dataset', place: 'documentation of several open decoders: 6 bytes and 7 bytes a frame, 223 at most' }, { source: 'iec-61162-3', place: 'fast packet' }],
  assumes: ['Every frame of it is sent with 8 bytes, the last one filled up.'],
  compute: fastPacketFrames,
  notApplicable: q => (Number.isInteger(q.payloadByteCount) && q.payloadByteCount >= 0 && q.payloadByteCount <= 223 ? null : 'a fast packet holds at most 223 bytes'),
  checks: [
    frames(6, 1, 'open decoders: 6 bytes fill the first frame'),
    frames(43, 7, 'GNSS position, 43 bytes'),
    frames(134, 20, 'product information, 134 bytes'),
    frames(223, 32, 'the longest, 223 bytes in 32 frames'),
    { origin: 'by hand', place: '14 bytes: 6 in the first, 8 left, so two more', input: { payloadByteCount: 14 }, expected: { frameCount: 3 }, tolerance: 0 },
  ],
}

/**
 * Frames of a message by the transport protocol of J1939: one that announces it, then 7 bytes a frame. Up to 8 bytes go in one frame without it.
 *
 * Formula   k = 1 for b ≤ 8, else 1 + ⌈b / 7⌉
 * Units     b bytes of data; k frames
 * Source    sae-j1939
 */
export function transportFrames({ payloadByteCount }: FramesInput): FramesOutput {
  return { frameCount: payloadByteCount <= 8 ? 1 : 1 + Math.ceil(payloadByteCount / 7) }
}

export const transportFramesMethod: Method<FramesInput, FramesOutput> = {
  id: 'transport-protocol-frames',
  title: 'Frames of a long message on an engine bus',
  formula: String.raw`k = 1 + \left\lceil \frac{b}{7} \right\rceil \text{ for } b > 8`,
  symbols: { payloadByteCount: 'b', frameCount: 'k' },
  citations: [{ source: 'sae-j1939', place: 'part 21: broadcast announce message, then packets of 7 bytes, at most 255 of them' }],
  assumes: ['It is broadcast, so nothing is sent back.', 'Up to 8 bytes go in a single frame.'],
  compute: transportFrames,
  notApplicable: q => (Number.isInteger(q.payloadByteCount) && q.payloadByteCount >= 0 && q.payloadByteCount <= 1785 ? null : 'the transport protocol carries at most 1785 bytes'),
  checks: [
    { origin: 'by hand', place: 'the longest, 1785 = 255 · 7 bytes: 255 packets and the announcement', input: { payloadByteCount: 1785 }, expected: { frameCount: 256 }, tolerance: 0 },
    { origin: 'by hand', place: '20 bytes: 7 + 7 + 6, and the announcement', input: { payloadByteCount: 20 }, expected: { frameCount: 4 }, tolerance: 0 },
    { origin: 'by hand', place: '8 bytes: a single frame', input: { payloadByteCount: 8 }, expected: { frameCount: 1 }, tolerance: 0 },
  ],
}
