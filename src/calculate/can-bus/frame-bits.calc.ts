import type { Method } from '../method.js'

export type FrameBitsInput = Readonly<{ dataByteCount: number; headBitCount: number }>
export type FrameBitsOutput = Readonly<{ nominalBitCount: number; worstBitCount: number }>

/** Bits before the data and its check sum on which bits may be stuffed. */
export const headBitCount = { extended: 54, standard: 34 } as const

/**
 * Length of a classical CAN frame, the three bits between frames included: without stuffed bits, and with as many as there can be.
 *
 * Formula   n = g + 8 s + 13,   n_w = n + ⌊(g + 8 s − 1) / 4⌋
 * Units     s data bytes, g bits of head and check sum that may be stuffed (54 with a 29-bit identifier, 34 with 11 bits); n, n_w [bit]
 * Source    davis-2007
 */
export function frameBits({ dataByteCount, headBitCount: headBits }: FrameBitsInput): FrameBitsOutput {
  const stuffable = headBits + 8 * dataByteCount
  const nominalBitCount = stuffable + 13
  return { nominalBitCount, worstBitCount: nominalBitCount + Math.floor((stuffable - 1) / 4) }
}

const row = (dataByteCount: number, head: number, nominalBitCount: number, worstBitCount: number, place: string) =>
  ({ origin: 'published', place, input: { dataByteCount, headBitCount: head }, expected: { nominalBitCount, worstBitCount }, tolerance: 0 }) as const

export const frameBitsMethod: Method<FrameBitsInput, FrameBitsOutput> = {
  id: 'can-frame-bits',
  title: 'Length of a CAN frame',
  formula: String.raw`n = g + 8\,s + 13 \qquad n_w = n + \left\lfloor \frac{g + 8\,s - 1}{4} \right\rfloor`,
  symbols: { dataByteCount: 's', headBitCount: 'g', nominalBitCount: 'n', worstBitCount: 'n_w' },
  citations: [{ source: 'davis-2007', place: 'equations (1) to (3)' }],
  assumes: ['29-bit identifier: g is 54, so n is 67 + 8 s and at worst 80 + 10 s.', 'No frame has to be sent again.'],
  compute: frameBits,
  notApplicable: q => (Number.isInteger(q.dataByteCount) && q.dataByteCount >= 0 && q.dataByteCount <= 8 ? null : 'a frame holds 0 to 8 bytes'),
  checks: [
    row(8, 54, 131, 160, 'Davis et al., 29-bit identifier, worst 80 + 10 s; Linux header can/length.h, 67 + 8 s: 8 bytes'),
    row(0, 54, 67, 80, 'the same, no data'),
    row(3, 54, 91, 110, 'the same, 3 bytes'),
    row(8, 34, 111, 135, 'Davis et al., 11-bit identifier, worst 55 + 10 s; Linux header can/length.h, 47 + 8 s: 8 bytes'),
    row(1, 34, 55, 65, 'the same, 1 byte'),
  ],
}
