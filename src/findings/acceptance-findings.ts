/** Kinds of finding about accepted deviations (ACC). The subject is the acceptance: "DEP301 of F1". */
import type { FindingKind } from './finding.js'
import { didYouMean } from './nearest.js'

const since = '0.3.0'
const retired = null

export const acceptedFindingMissing: FindingKind<{}> = {
  id: 'ACC201', name: 'accepted-finding-missing', since, retired, severity: 'warning',
  meaning: 'A deviation is accepted that was not found. Either it has been mended, and the entry would accept it unseen if it came back, or its id or subject is not written as the finding has it, and the finding stands unaccepted.',
  message: ({ subject, context }) => `Accepted deviation ${subject.id}: ${context?.['what'] ?? 'there is no such finding'}${didYouMean(context?.['nearest'])}`,
  remedy: () => 'Remove the entry if the deviation has been mended; else write id and subject as the finding has them.',
}

export const acceptedFindingChanged: FindingKind<{}> = {
  id: 'ACC301', name: 'accepted-finding-changed', since, retired, severity: 'warning',
  meaning: 'A finding no longer says what it said when it was accepted, so it is not accepted any more.',
  message: ({ subject, context }) => `Accepted deviation ${subject.id}: the finding now says "${context?.['says']}", so it is no longer accepted`,
  remedy: () => 'Look at the finding again: mend it, or accept it with its new words.',
}

export const findingAcceptedTwice: FindingKind<{}> = {
  id: 'ACC302', name: 'finding-accepted-twice', since, retired, severity: 'note',
  meaning: 'Two entries accept the same finding. The first of them is printed, the other is not.',
  message: ({ subject, context }) => `Accepted deviation ${subject.id}: the finding is already accepted by ${context?.['by']}, ${context?.['date']}`,
  remedy: () => 'Remove one of the two entries.',
}

export const acceptedAfterIssue: FindingKind<{}> = {
  id: 'ACC303', name: 'accepted-after-issue', since, retired, severity: 'warning',
  meaning: 'A deviation was accepted after the date of issue of the document that carries the acceptance: one of the two dates is wrong, or the document needs a new issue.',
  message: ({ subject, context }) => `Accepted deviation ${subject.id}: accepted on ${context?.['date']}, after the date of issue ${context?.['issuedOn']}`,
  remedy: () => 'Correct the date, or give the document a new issue with its date.',
}

export const findingNotAcceptable: FindingKind<{}> = {
  id: 'ACC304', name: 'finding-not-acceptable', since, retired, severity: 'warning',
  meaning: 'A fault of the data itself (SRC, SCH, REF), or a finding about an acceptance (ACC), was to be accepted. With the one nothing can be calculated; the other is about the paper, not the boat.',
  message: ({ subject }) => `Accepted deviation ${subject.id}: a finding of this kind is mended in the data and cannot be accepted`,
  remedy: () => 'Remove the entry, and mend what the finding is about.',
}

export const acceptanceFindingKinds = [acceptedFindingMissing, acceptedFindingChanged, findingAcceptedTwice, acceptedAfterIssue, findingNotAcceptable] as const
