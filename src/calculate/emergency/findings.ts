/** Findings (EMG): what must be at hand in an emergency, and whether it can be found. */
import type { FindingKind } from '../../findings/finding.js'

const since = '0.3.0'
const retired = null

type Context = Readonly<Record<string, string>> | undefined

const missing = (context: Context, name: string, weight: string): string =>
  `Vessel ${name}: not recorded and ${weight}${context?.['because'] === '' ? '' : ` because of ${context?.['because']}`}: ${context?.['words']}; source: ${context?.['source']}`
const remedy = (context: Context): string =>
  `Record it with its zone and place, or enter under absences why there is none; it is looked for on these emergency pages: ${context?.['pages']}.`

export const neededNotRecorded: FindingKind<{}> = {
  id: 'EMG201', name: 'emergency-need-not-recorded', since, retired, severity: 'warning',
  meaning: 'What must be at hand in an emergency is not recorded, and nothing says that the boat does without. The emergency pages cannot tell where it is. Told once the boat is delivered, or from the first absence that is stated.',
  message: ({ subject, context }) => missing(context, subject.id, 'needed'),
  remedy: ({ context }) => remedy(context),
}

export const advisedNotRecorded: FindingKind<{}> = {
  id: 'EMG202', name: 'emergency-advice-not-recorded', since, retired, severity: 'note',
  meaning: 'What is well to have in an emergency is not recorded, and nothing says that the boat does without. Told once the boat is delivered, or from the first absence that is stated.',
  message: ({ subject, context }) => missing(context, subject.id, 'advised'),
  remedy: ({ context }) => remedy(context),
}

export const gearWithoutZone: FindingKind<{}> = {
  id: 'EMG203', name: 'emergency-gear-without-zone', since, retired, severity: 'warning',
  meaning: 'A thing that is reached for in an emergency is recorded without the zone it is in. The page that sends people to it cannot say where to.',
  message: ({ subject, context }) => `Item ${subject.id} (${context?.['kind']}): it is reached for in an emergency, and no zone is recorded`,
  remedy: () => 'Enter its zone, and where in it.',
}

export const gearWithoutPlace: FindingKind<{}> = {
  id: 'EMG204', name: 'emergency-gear-without-place', since, retired, severity: 'note',
  meaning: 'A thing that is reached for in an emergency has its zone recorded, but neither words for the place nor a position. In the dark the zone alone is little help.',
  message: ({ subject, context }) => `Item ${subject.id} (${context?.['kind']}): it is reached for in an emergency, and neither words nor a position say where in its zone it is`,
  remedy: () => 'Enter the place in words that help in the dark, and best its position too.',
}

export const absenceContradicted: FindingKind<{}> = {
  id: 'EMG301', name: 'absence-contradicted', since, retired, severity: 'warning',
  meaning: 'The data say that the boat has none of a kind of equipment, and one of that kind is recorded on board.',
  message: ({ subject, context }) => `Absence ${subject.id}: the data say that there is none, and on board is recorded ${context?.['items']}`,
  remedy: () => 'Remove the absence, or correct the kind or the status of the item.',
}

export const findingKinds = [neededNotRecorded, advisedNotRecorded, gearWithoutZone, gearWithoutPlace, absenceContradicted] as const
