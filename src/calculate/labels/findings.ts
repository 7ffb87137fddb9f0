/** Findings (LBL): labels that cannot be read, printed or told apart. */
import type { AnyFindingKind, FindingKind } from '../../findings/finding.js'
import { sayAgainst, sayAgainstBoth } from '../../units/format.js'

const since = '0.1.0'
const retired = null

export const lettersTooSmall: FindingKind<{ letterHeightMm: number }> = {
  id: 'LBL101', name: 'label-letters-too-small', since, retired, severity: 'warning',
  meaning: 'A label has so much text for its size that its letters are smaller than can be read where it hangs. It is printed all the same.',
  message: ({ subject, evidence, limit, context }) => {
    const height = sayAgainst('letterHeightMm', evidence.letterHeightMm, limit!.value)
    return `${context?.['what']} ${subject.id}: the letters on its label are ${height.actual} high on ${context?.['size']}, limit at least ${height.limit}`
  },
  remedy: ({ context }) => `Give a larger size for "${context?.['use']}" under "label-sizes", or less text: ${context?.['shorten']}.`,
}

export const labelsOffSheet: FindingKind<{ reachMm: number }> = {
  id: 'LBL102', name: 'labels-off-sheet', since, retired, severity: 'warning',
  meaning: 'The labels of a size reach beyond the sheet that they lie on. The size is not used.',
  message: ({ subject, evidence, limit, context }) => {
    const reach = sayAgainstBoth('reachMm', evidence.reachMm, limit!.value)
    return `Label size ${subject.id}: the last ${context?.['of']} ends at ${reach.actual}, the sheet at ${reach.limit}`
  },
  remedy: () => 'Measure the sheet again: its own size, its margins, the labels, and from one label to the next.',
}

export const labelsOverlap: FindingKind<{ stepMm: number }> = {
  id: 'LBL103', name: 'labels-overlap', since, retired, severity: 'warning',
  meaning: 'The labels of a size lie over one another: from one to the next is less than a label. The size is not used.',
  message: ({ subject, evidence, limit, context }) => {
    const step = sayAgainstBoth('stepMm', evidence.stepMm, limit!.value)
    return `Label size ${subject.id}: from one ${context?.['of']} to the next are ${step.actual}, a label has ${step.limit}`
  },
  remedy: () => 'Measure from the edge of a label to the same edge of the next; of wrap-around labels the clear tail counts.',
}

export const noWrapSize: FindingKind<{ girthMm: number }> = {
  id: 'LBL104', name: 'no-wrap-size-for-cable', since, retired, severity: 'warning',
  meaning: 'No wrap-around label fits the cable: its clear tail does not go around, or its print laps over itself. It is printed on the nearest size.',
  message: ({ subject, evidence, limit, context }) => {
    const girth = sayAgainstBoth('girthMm', evidence.girthMm, limit!.value)
    return `Cable ${subject.id}: ${girth.actual} around, and the wrap-around labels take ${context?.['takes']} ${girth.limit}`
  },
  remedy: () => 'Give a size that goes around it under "label-sizes", use a flat label on a tie, or correct the diameter of the cable type.',
}

export const cablesLabelledAlike: FindingKind<{}> = {
  id: 'LBL105', name: 'cables-labelled-alike', since, retired, severity: 'error',
  meaning: 'Two cables carry the same text on a label, so that one is taken for the other.',
  message: ({ subject, context }) => `Cable ${subject.id}: its label "${context?.['text']}" is also that of cable ${context?.['other']}`,
  remedy: () => 'Give each its own text under "label-from" and "label-to", or leave them out: then the tag is printed.',
}

export const labelNamesAnotherCable: FindingKind<{}> = {
  id: 'LBL106', name: 'label-names-another-cable', since, retired, severity: 'error',
  meaning: 'The text given for a cable’s label has the tag of another cable and not its own. The two ends of one cable then carry two numbers.',
  message: ({ subject, context }) => `Cable ${subject.id}: its label "${context?.['text']}" names cable ${context?.['other']}`,
  remedy: ({ subject }) => `Write ${subject.id} on it, on the cable too, or correct the tag of the entry.`,
}

export const wrapWithoutTail: FindingKind<{}> = {
  id: 'LBL107', name: 'wrap-without-tail', since, retired, severity: 'warning',
  meaning: 'A size goes around a cable and has no clear tail to do so. It is not used.',
  message: ({ subject }) => `Label size ${subject.id}: the form is "wrap", and there is no clear tail`,
  remedy: () => 'Give the height of the clear part under "clear-tail", or write "form: sheet".',
}

export const labelSizeUnknown: FindingKind<{}> = {
  id: 'LBL201', name: 'label-size-unknown', since, retired, severity: 'warning',
  meaning: 'An entry gives nothing but the key of a label size, and the program knows none of that key. The usual sizes are used.',
  message: ({ subject, context }) => `Label size ${subject.id}: no size of that key is known; known are ${context?.['known']}`,
  remedy: () => 'Correct the key, or give all measures of the size.',
}

export const labelSizeNotUsed: FindingKind<{}> = {
  id: 'LBL301', name: 'label-size-not-used', since, retired, severity: 'note',
  meaning: 'A label size is entered and nothing is printed on it, because the entry does not say what it is for.',
  message: ({ subject }) => `Label size ${subject.id}: nothing is printed on it`,
  remedy: () => 'Write what it is for under "for": cables, ways, equipment or danger.',
}

export const labelWithoutTag: FindingKind<{}> = {
  id: 'LBL302', name: 'label-without-tag', since, retired, severity: 'warning',
  meaning: 'The text given for a cable’s label does not have the cable’s tag. Nobody finds the cable in this manual by what is on it.',
  message: ({ subject, context }) => `Cable ${subject.id}: its label "${context?.['text']}" does not have its tag`,
  remedy: ({ subject }) => `Put ${subject.id} into the text, or leave the text out: then tag and both ends are printed.`,
}

export const findingKinds: readonly AnyFindingKind[] = [
  lettersTooSmall, labelsOffSheet, labelsOverlap, noWrapSize, cablesLabelledAlike, labelNamesAnotherCable, wrapWithoutTail, labelSizeUnknown, labelSizeNotUsed, labelWithoutTag,
]
