/** Findings (CMP): what the pack does not hold of what is asked of an owner's manual. */
import type { FindingKind } from '../../findings/finding.js'
import { didYouMean } from '../../findings/nearest.js'

const since = '0.3.0'
const retired = null

export const requiredContentMissing: FindingKind<{ contentCount: number }> = {
  id: 'CMP201', name: 'required-content-missing', since, retired, severity: 'warning',
  meaning: 'The boat is delivered, and contents that an owner’s manual must have are neither in this pack nor, as far as the data say, in another document. Told from the day of delivery on; the page on completeness shows it before.',
  message: ({ subject, context }) => `Vessel ${subject.id}: the owner’s manual lacks ${context?.['contents']}`,
  remedy: () => 'Record what they rest on, or enter under manual-contents which document holds them, or why they do not apply; the page on completeness lists them all.',
}

export const requiredContentInPart: FindingKind<{ contentCount: number }> = {
  id: 'CMP202', name: 'required-content-in-part', since, retired, severity: 'note',
  meaning: 'The boat is delivered, and of contents that an owner’s manual must have this pack holds a part only. The page on completeness says what is missing of each.',
  message: ({ subject, context }) => `Vessel ${subject.id}: the owner’s manual holds only a part of ${context?.['contents']}`,
  remedy: () => 'Record what is missing, or enter under manual-contents which document holds the rest; the page on completeness says what is missing of each.',
}

export const contentKeyUnknown: FindingKind<{}> = {
  id: 'CMP301', name: 'content-key-unknown', since, retired, severity: 'warning',
  meaning: 'An entry of the contents names none of the contents that are asked for, so that it says nothing.',
  message: ({ subject, context }) => `Entry of the contents ${subject.id}: no content has this key${didYouMean(context?.['nearest'])}`,
  remedy: () => 'Write one of the keys that the page on completeness prints.',
}

export const contentElsewhereThoughHeld: FindingKind<{}> = {
  id: 'CMP302', name: 'content-elsewhere-though-held', since, retired, severity: 'note',
  meaning: 'An entry names another document for a content that this pack holds as well. Two texts on one thing drift apart, and nobody can tell which of them holds.',
  message: ({ subject, context }) => `Entry of the contents ${subject.id}: said to be elsewhere (${context?.['where']}), and in this pack as well`,
  remedy: () => 'Remove the entry, or see to it that both documents say the same.',
}

export const contentNotApplicableThoughHeld: FindingKind<{}> = {
  id: 'CMP303', name: 'content-not-applicable-though-held', since, retired, severity: 'warning',
  meaning: 'An entry says that a content does not apply to the boat, and the data say that it does: this pack holds it.',
  message: ({ subject, context }) => `Entry of the contents ${subject.id}: said not to apply (${context?.['reason']}), and this pack holds it`,
  remedy: () => 'Correct the data of the boat, or remove the entry.',
}

export const findingKinds = [requiredContentMissing, requiredContentInPart, contentKeyUnknown, contentElsewhereThoughHeld, contentNotApplicableThoughHeld] as const
