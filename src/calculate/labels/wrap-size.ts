/** Which wrap-around label goes around a cable. */
import { atLeast, atMost, find, type Finding } from '../../findings/finding.js'
import type { WrapOutcome } from '../../model/results/labels.js'
import { wholeHeightMm } from '../../model/label-sheet.js'
import type { LabelSize, Tag } from '../../model/vessel.js'
import type { Citation } from '../../references/bibliography.js'
import { exceeds } from '../compare.js'
import { runMethod } from '../run-method.js'
import { noWrapSize } from './findings.js'
import { wrapMethod } from './wrap.calc.js'

const stock: Citation = { source: 'plane-geometry', place: 'the clear tail of the label' }
const print: Citation = { source: 'plane-geometry', place: 'the printed part of the label' }

export const wrapOn = (outerDiameterMm: number, { labelHeightMm }: LabelSize): WrapOutcome => runMethod(wrapMethod, { outerDiameterMm, printedHeightMm: labelHeightMm })

const girthOf = (outerDiameterMm: number, size: LabelSize): number | null => {
  const outcome = wrapOn(outerDiameterMm, size)
  return outcome.status === 'computed' ? outcome.output.girthMm : null
}

/** The tail goes around, and the print does not lap over itself. */
function fits(size: LabelSize, outerDiameterMm: number): boolean {
  const outcome = wrapOn(outerDiameterMm, size)
  if (outcome.status === 'not computed') return false
  const { girthMm, neededHeightMm } = outcome.output
  return !exceeds(neededHeightMm, atMost(wholeHeightMm(size), stock)) && !exceeds(girthMm, atLeast(size.labelHeightMm, print))
}

const byTail = (a: LabelSize, b: LabelSize): number => a.clearTailMm - b.clearTailMm

/**
 * Sizes that go around the cable, shortest tail first; flat ones, which hang on it, behind. Where none goes around, the
 * nearest and why. A cable of unknown diameter gets the first.
 */
export function wrapSizes(cableTag: Tag, outerDiameterMm: number | null, sizes: readonly LabelSize[]): { readonly sizes: readonly LabelSize[]; readonly finding: Finding | null } {
  const wraps = sizes.filter(({ form }) => form === 'wrap').toSorted(byTail)
  const flat = sizes.filter(({ form }) => form === 'sheet')
  if (outerDiameterMm === null || wraps.length === 0) return { sizes: sizes.slice(0, outerDiameterMm === null ? 1 : undefined), finding: null }
  const around = [...wraps.filter(size => fits(size, outerDiameterMm)), ...flat]
  if (around.length > 0) return { sizes: around, finding: null }
  const [shortest, longest] = [wraps[0]!, wraps.at(-1)!]
  const girthMm = girthOf(outerDiameterMm, longest)!
  const tooThick = girthMm > longest.clearTailMm
  const nearest = tooThick ? longest : wraps.toSorted((a, b) => a.labelHeightMm - b.labelHeightMm)[0] ?? shortest
  return {
    sizes: [nearest],
    finding: find(noWrapSize, {
      subject: { kind: 'cable', id: cableTag }, field: 'typeTag', evidence: { girthMm },
      limit: tooThick ? atMost(longest.clearTailMm, stock) : atLeast(nearest.labelHeightMm, print), context: { takes: tooThick ? 'at most' : 'at least' },
    }),
  }
}
