/** Kinds of finding of this domain (DEP). */
import type { FindingKind } from '../../findings/finding.js'

export const dataWayNotRecorded: FindingKind<{}> = {
  id: 'DEP201',
  name: 'data-way-not-recorded',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'An item needs the data of another, and no cable or network is entered by which they come, so what interrupts them cannot be told.',
  message: ({ subject, context }) => `${subject.id} needs data from ${context?.giver}, and no way between the two is entered`,
  remedy: ({ subject, context }) => `Enter the data cable or the bus drop between ${context?.giver} and ${subject.id}, or correct the list of what it needs data from.`,
}

const behindOneDevice = {
  since: '0.1.0',
  retired: null,
  message: ({ subject, context }: { subject: { id: string }; context?: Readonly<Record<string, string>> }) =>
    `Circuit ${subject.id}: its protective device alone stands before all of ${context?.service}, ${context?.items}${context?.restore ?? ''}`,
} as const

export const serviceBehindOneDevice: FindingKind<{}> = {
  ...behindOneDevice,
  id: 'DEP301',
  name: 'service-behind-one-device',
  severity: 'note',
  meaning: 'A service for safety is given by several items on circuits of their own, yet one protective device takes all of them. '
    + 'No rule forbids it; whoever is on board should know. For bilge pumping and engine control it is a warning (DEP302) unless all can be brought back by hand.',
  remedy: () => 'Move one of the items to another source, or keep a spare for the device beside it.',
}

export const vitalServiceBehindOneDevice: FindingKind<{}> = {
  ...behindOneDevice,
  id: 'DEP302',
  name: 'vital-service-behind-one-device',
  severity: 'warning',
  meaning: 'Bilge pumping, or the control of all engines, is given by several items on circuits of their own, yet one protective device takes all of them '
    + 'and nothing that is entered brings them back by hand. Where all are on one circuit no independence was meant, and there is no finding.',
  remedy: () => 'Move one of the items to another source, or provide a link that can be closed by hand.',
}

export const findingKinds = [dataWayNotRecorded, serviceBehindOneDevice, vitalServiceBehindOneDevice] as const
