/** The words of a label in the space that it has: lines broken, the largest text that fits, and whether it can be read. */
import type { Comparison } from '../../model/results.js'
import type { BandKind, LabelLayout, LabelWords, TextBand } from '../../model/results/labels.js'
import { labelPlace, labelsOnSheet } from '../../model/label-sheet.js'
import type { LabelSize } from '../../model/vessel.js'
import { atLeast, type Limit } from '../../findings/finding.js'
import { closeReading, dangerReading, labelMarginMm, largestCodeMm, largestLetterMm, leastCodeMm, type Reading, signalReading } from '../../references/tables/label-practice.js'
import { capitalHeightFactor, type LabelFace, linePitchFactor, widthFactor } from '../../references/tables/letter-advances.js'
import { compare, exceeds } from '../compare.js'
import { letterHeight } from './letter-height.calc.js'
import { textSize, textSizeMethod } from './text-size.calc.js'

export interface LaidOut { readonly layout: LabelLayout; readonly comparison: Comparison }

interface Box { readonly leftMm: number; readonly topMm: number; readonly widthMm: number; readonly heightMm: number }

/** Shares of the height for the line on top, largest first: the one that leaves the smallest letters largest is taken. */
const headlineShares = [0.45, 0.4, 0.35, 0.3, 0.25]

export function layOut(words: LabelWords, size: LabelSize): LaidOut {
  const inner = innerBox(size)
  const code = words.hasCode ? codeBox(inner) : null
  const box = code === null ? inner : { ...inner, widthMm: inner.widthMm - code.sideMm }
  // On a low label all of it stands in one band; a signal word always has its own.
  const inOneBand = words.signal === null ? [[band('words', words, [[words.headline, ...words.texts].filter(part => part !== null).join(' ')], box)]] : []
  const { headline } = words
  const choices = headline === null ? inOneBand : [...headlineShares.map(share => bandsBelow(headline, words, box, box.heightMm * share)), ...inOneBand]
  const laidOut = choices.map(bands => ({ layout: { bands, code }, comparison: smallest(bands) }))
  return laidOut.reduce((best, next) => (readability(next) > readability(best) ? next : best))
}

function bandsBelow(headline: string, words: LabelWords, box: Box, headHeightMm: number): readonly TextBand[] {
  // The safety alert symbol stands before the signal word, as wide as it is high.
  const symbolMm = words.signal === null ? 0 : headHeightMm
  return [
    band(words.signal === null ? 'tag' : 'signal', words, [headline], { ...box, leftMm: box.leftMm + symbolMm, widthMm: box.widthMm - symbolMm, heightMm: headHeightMm }),
    band('words', words, words.texts, { ...box, topMm: box.topMm + headHeightMm, heightMm: box.heightMm - headHeightMm }),
  ]
}

/** How many times the least height the smallest letters have; more than enough counts as enough, so that the larger headline stays. */
export const readability = ({ comparison }: Pick<LaidOut, 'comparison'>): number => Math.min(comparison.value / comparison.limit.value, plenty)
const plenty = 1.4

function smallest(bands: readonly TextBand[]): Comparison {
  const held = bands.map(({ fit, least }) => compare('letterHeightMm', fit.letterHeightMm, least))
  return held.reduce((worst, next) => (next.value / next.limit.value < worst.value / worst.limit.value ? next : worst))
}

/** Inside the margins; a label at the edge of its sheet keeps further from it. Of a wrap-around label the printed part. */
function innerBox(size: LabelSize): Box {
  const { form, leftMm, topMm, pageWidthMm, pageHeightMm, labelWidthMm, labelHeightMm } = size
  const last = labelPlace(size, labelsOnSheet(size) - 1)
  const kept = (firstGapMm: number, lastGapMm: number): number => Math.max(labelMarginMm[form], labelMarginMm.pageEdge - Math.min(firstGapMm, lastGapMm))
  const sideMm = kept(leftMm, pageWidthMm - last.xMm - labelWidthMm)
  const endMm = kept(topMm, pageHeightMm - last.yMm - labelHeightMm)
  return { leftMm: sideMm, topMm: endMm, widthMm: Math.max(labelWidthMm - 2 * sideMm, 1), heightMm: Math.max(labelHeightMm - 2 * endMm, 1) }
}

/** To the right, as high as the label lets it be; none where it would be too small or leave no room for words. */
function codeBox({ leftMm, topMm, widthMm, heightMm }: Box): LabelLayout['code'] {
  const sideMm = Math.min(heightMm, largestCodeMm)
  if (sideMm < leastCodeMm || sideMm > widthMm / 2) return null
  return { leftMm: leftMm + widthMm - sideMm, topMm: topMm + (heightMm - sideMm) / 2, sideMm }
}

const leastLetter = ({ citation, ...reading }: Reading): Limit => atLeast(letterHeight(reading).letterHeightMm, citation)
const leastOf = (kind: BandKind, { use }: LabelWords): Limit => leastLetter(kind === 'signal' ? signalReading : use === 'danger' ? dangerReading : closeReading)

/** The ends on a cable's label are tags too: only where they could not be read otherwise are they set in the narrower face. */
function band(kind: BandKind, words: LabelWords, texts: readonly string[], box: Box): TextBand {
  if (kind === 'tag' || words.use !== 'cables') return bandIn(kind === 'tag' ? 'tag' : 'words', kind, words, texts, box)
  const usual = bandIn('tag', kind, words, texts, box)
  return exceeds(usual.fit.letterHeightMm, usual.least) ? bandIn('words', kind, words, texts, box) : usual
}

function bandIn(face: LabelFace, kind: BandKind, words: LabelWords, texts: readonly string[], box: Box): TextBand {
  const largestSizeMm = largestLetterMm[kind] / capitalHeightFactor
  const lines = brokenFor(texts, face, box, largestSizeMm)
  const longestLineFactor = Math.max(...lines.map(line => widthFactor(line, face)))
  const fitted = textSize({ boxWidthMm: box.widthMm, boxHeightMm: box.heightMm, longestLineFactor, lineCount: lines.length }).textSizeMm
  const textSizeMm = Math.min(fitted, largestSizeMm)
  return { kind, face, ...box, lines, fit: { method: textSizeMethod.id, textSizeMm, letterHeightMm: capitalHeightFactor * textSizeMm }, least: leastOf(kind, words) }
}

/** Tried from the largest text down, in steps too small to be seen. */
const stepMm = 0.05
const smallestTextMm = 0.5

function brokenFor(texts: readonly string[], face: LabelFace, { widthMm, heightMm }: Box, largestSizeMm: number): readonly string[] {
  for (let sizeMm = largestSizeMm; sizeMm > smallestTextMm; sizeMm -= stepMm) {
    const lines = texts.flatMap(text => broken(text, face, widthMm / sizeMm))
    const fits = lines.every(line => widthFactor(line, face) * sizeMm <= widthMm) && lines.length * linePitchFactor * sizeMm <= heightMm
    if (fits) return lines
  }
  return texts.flatMap(text => broken(text, face, widthMm / smallestTextMm))
}

/** At blanks only: a tag that is cut in two is read as another. A stroke stays with what is before it. */
function broken(text: string, face: LabelFace, widestFactor: number): readonly string[] {
  const words = text.replaceAll(' / ', '\u00A0/ ').split(' ')
  return words.reduce<readonly string[]>((lines, word) => {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`
    return lines.length > 0 && widthFactor(longer, face) > widestFactor ? [...lines, word] : [...lines.slice(0, -1), longer]
  }, [])
}
