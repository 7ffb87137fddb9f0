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
  const held = (bands: readonly TextBand[]): LaidOut => ({ layout: { bands, code }, comparison: smallest(bands) })
  const inOneBand = (): LaidOut => held([band('words', words, [[words.headline, ...words.texts].filter(part => part !== null).join(' ')], box)])
  const { headline } = words
  if (headline === null) return inOneBand()
  const apart = firstBest(headlineShares, share => held(bandsBelow(headline, words, box, box.heightMm * share)))
  // On a low label all of it stands in one band where that is read better; a signal word always has its own.
  return apart.comparison.within || words.signal !== null ? apart : better([apart, inOneBand()])
}

const better = (choices: readonly LaidOut[]): LaidOut => choices.reduce((best, next) => (readability(next) > readability(best) ? next : best))

/** As `better` of all of them; what is read well enough ends the search. */
function firstBest(shares: readonly number[], laidOutFor: (share: number) => LaidOut): LaidOut {
  const tried: LaidOut[] = []
  for (const share of shares) {
    const made = laidOutFor(share)
    tried.push(made)
    if (readability(made) >= plenty) break
  }
  return better(tried)
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

/** Differences too small to be seen. */
const stepMm = 0.05
const smallestTextMm = 0.5

interface Word { readonly text: string; readonly widthFactor: number }

/**
 * Lines broken for the largest text that fits, to a step. What fits fits in any smaller text too, so that the step is found by
 * halving. Text that fits in none of them is broken as for the smallest.
 */
function brokenFor(texts: readonly string[], face: LabelFace, { widthMm, heightMm }: Box, largestSizeMm: number): readonly string[] {
  const paragraphs = texts.map(text => wordsOf(text, face))
  const blankFactor = widthFactor(' ', face)
  const linesAt = (sizeMm: number): readonly Word[] => paragraphs.flatMap(words => broken(words, blankFactor, widthMm / sizeMm))
  const sizeAt = (step: number): number => largestSizeMm - step * stepMm
  const fits = (step: number): boolean => {
    const lines = linesAt(sizeAt(step))
    return lines.every(line => line.widthFactor * sizeAt(step) <= widthMm) && lines.length * linePitchFactor * sizeAt(step) <= heightMm
  }
  let [fitting, failing] = [Math.floor((largestSizeMm - smallestTextMm) / stepMm), -1]
  while (fitting - failing > 1) {
    const middle = Math.floor((fitting + failing) / 2)
    if (fits(middle)) fitting = middle
    else failing = middle
  }
  return linesAt(sizeAt(fitting)).map(({ text }) => text)
}

/** Parted at blanks only: a tag that is cut in two is read as another. A stroke stays with what is before it. */
const wordsOf = (text: string, face: LabelFace): readonly Word[] =>
  text.replaceAll(' / ', '\u00A0/ ').split(' ').map(word => ({ text: word, widthFactor: widthFactor(word, face) }))

function broken(words: readonly Word[], blankFactor: number, widestFactor: number): readonly Word[] {
  const lines: Word[] = []
  for (const word of words) {
    const last = lines.at(-1)
    const longer = last === undefined ? null : { text: `${last.text} ${word.text}`, widthFactor: last.widthFactor + blankFactor + word.widthFactor }
    if (longer === null || longer.widthFactor > widestFactor) lines.push(word)
    else lines[lines.length - 1] = longer
  }
  return lines
}
