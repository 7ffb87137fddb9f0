/** The six-bit characters of 406 MHz beacons. */
import type { Citation } from '../bibliography.js'

const bits: Readonly<Record<string, string>> = {
  A: '111000', B: '110011', C: '101110', D: '110010', E: '110000', F: '110110', G: '101011', H: '100101', I: '101100', J: '111010', K: '111110', L: '101001',
  M: '100111', N: '100110', O: '100011', P: '101101', Q: '111101', R: '101010', S: '110100', T: '100001', U: '111100', V: '101111', W: '111001', X: '110111',
  Y: '110101', Z: '110001', ' ': '100100', '-': '011000', '/': '010111',
  0: '001101', 1: '011101', 2: '011001', 3: '010000', 4: '001010', 5: '000001', 6: '010101', 7: '011100', 8: '001100', 9: '000011',
}
const characterOf: ReadonlyMap<string, string> = new Map(Object.entries(bits).map(([character, code]) => [code, character]))

/** A row of six-bit characters without the blanks around it, or null where one of them is none. */
export function textOfBits(row: string): string | null {
  const characters = (row.match(/.{6}/g) ?? []).map(code => characterOf.get(code))
  return characters.includes(undefined) ? null : characters.join('').trim()
}

export const modifiedBaudotCitation: Citation = { source: 'cospas-t001', place: 'table of the modified Baudot code', standing: 'from memory' }
