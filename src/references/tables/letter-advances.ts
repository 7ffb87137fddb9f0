/**
 * How wide each letter is, in thousandths of the text size, of the two faces on labels; without kerning and ligatures, which
 * labels do without. From the fonts in templates/assets/fonts; the tests hold it against what a browser measures.
 */

/** Heights in thousandths of the text size; alike in both faces. */
export const capitalHeightFactor = 0.698
/** From one line to the next. Common practice, no source. */
export const linePitchFactor = 1.2

export type LabelFace = 'tag' | 'words'

/** IBM Plex Mono: every letter alike. */
const tagAdvance = 600

/** IBM Plex Sans Condensed, semibold: letters that are alike wide. */
const wordAdvances: Readonly<Record<number, string>> = {
  212: ' \u00A0', 235: "'", 252: 'i', 254: 'ìíîï', 255: 'j', 268: 'l', 269: '‘’', 274: ',.', 282: ':;', 284: '!¡', 299: '[]', 303: '()',
  316: '·', 319: '²', 320: '³¹', 328: 'f', 329: '{}', 334: 't', 346: '|¦', 357: 'r', 362: '-', 383: 'º', 387: 'IÌÍÎÏ', 395: 'ª', 401: '/\\',
  420: '®', 422: '°', 429: '"', 439: '¿', 447: '?', 449: 'sšş', 452: 'zžźż', 464: 'cçćč', 473: 'L', 474: '“”', 476: 'v', 481: 'Ł', 483: 'yýÿ',
  488: 'x', 491: '¢', 492: 'g', 494: 'J«»', 502: '_', 505: 'eèéêëęě', 506: 'oòóôõöőō', 507: 'aàáâãäåąă', 511: 'k', 512: 'ø', 514: '*', 515: '§',
  520: '£', 523: 'F', 524: 'T', 528: '–', 532: 'hnñńň', 533: '$uùúûüůűū', 539: 'µ', 540: '+0123456789<=>Z^`~¨¯±´¸×÷Ž≈≠≤≥√−', 544: 'EbdpqÈÉÊËþ',
  546: 'SŠ', 566: 'YÝ', 575: '¥', 581: 'CÇČ', 582: '#Þ', 583: 'PV', 595: 'X', 600: 'B', 601: 'R', 606: 'AÀÁÂÃÄÅ', 613: 'ß', 614: 'K', 624: 'UÙÚÛÜ',
  625: 'D', 626: 'ÐĐ', 641: 'G', 642: 'OQÒÓÔÕÖ', 643: 'ΩØ', 644: '&', 651: 'HNÑ', 702: '—', 712: '©', 728: '¼', 737: 'M', 739: 'w', 757: '½',
  782: 'æ', 790: '…', 802: 'm', 810: '←↑→↓↔', 811: '@', 818: 'œ', 859: 'Æ', 861: 'W', 870: '%', 896: 'Œ',
}
const advanceOfLetter = new Map(Object.entries(wordAdvances).flatMap(([advance, letters]) => [...letters].map((letter): [string, number] => [letter, Number(advance)])))
/** As wide as the text is high: no letter of another script is wider. */
const unknownAdvance = 1000

/** Width of a line in units of the text size. Letters that are in no table count as square, so that no text runs over. */
export function widthFactor(line: string, face: LabelFace): number {
  const thousandths = [...line].reduce((sum, letter) => sum + advance(letter, face), 0)
  return thousandths / 1000
}

function advance(letter: string, face: LabelFace): number {
  if (face === 'words') return advanceOfLetter.get(letter) ?? unknownAdvance
  return letter.codePointAt(0)! < 0x180 || '–—‘’“”…→←≤≥Ω'.includes(letter) ? tagAdvance : unknownAdvance
}
