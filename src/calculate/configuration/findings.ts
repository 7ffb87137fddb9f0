/** Findings (CFG): configuration record: software and settings to restore after a replacement. */
import type { FindingKind } from '../../findings/finding.js'

const since = '0.2.0'
const retired = null

export const softwareNotRecorded: FindingKind<{ itemCount: number }> = {
  id: 'CFG201', name: 'software-not-recorded', since, retired, severity: 'note',
  meaning: 'Devices that run software are entered without its version. After an update nobody can tell what was there before, and a recall of a version cannot be answered.',
  message: ({ subject, context }) => `${context?.['what']} ${subject.id}: no software version is recorded of ${context?.['items']}`,
  remedy: () => 'Read the version on each device and enter it with the date.',
}

export const settingsNotRecorded: FindingKind<{ itemCount: number }> = {
  id: 'CFG202', name: 'settings-not-recorded', since, retired, severity: 'note',
  meaning: 'Devices that have to be set up are entered without a single setting. A replacement would have to be set up from nothing.',
  message: ({ subject, context }) => `Vessel ${subject.id}: nothing to restore after a replacement is recorded of ${context?.['items']}`,
  remedy: () => 'Enter the settings that matter, with the menu in which they are found.',
}

export const settingWithoutDate: FindingKind<{ settingCount: number }> = {
  id: 'CFG203', name: 'setting-without-date', since, retired, severity: 'note',
  meaning: 'Settings are entered without the date on which they were read, so nobody can tell whether they still hold.',
  message: ({ subject, context }) => `Vessel ${subject.id}: settings of ${context?.['items']} have no date`,
  remedy: () => 'Enter the date on which each was read.',
}

export const loginNotRecorded: FindingKind<{ itemCount: number }> = {
  id: 'CFG204', name: 'login-not-recorded', since, retired, severity: 'note',
  meaning: 'A router, an access point or a link to the outside is entered, and nothing says how to log in or where that is written down.',
  message: ({ subject, context }) => `Vessel ${subject.id}: how to log in is not recorded for ${context?.['items']}`,
  remedy: () => 'Enter who may log in and where the secret is kept; the secret itself may stay out of the data.',
}

export const settingContradictsEntry: FindingKind<{}> = {
  id: 'CFG301', name: 'setting-contradicts-entry', since, retired, severity: 'warning',
  meaning: 'A setting as read on a device differs from what another entry says of the same: the device is set wrong, or the entry is.',
  message: ({ subject, context }) => `Item ${subject.id}: its setting "${context?.['name']}" is ${context?.['set']}, entered is ${context?.['entered']}`,
  remedy: () => 'Read the device again, and correct the device or the entry.',
}

export const settingTwice: FindingKind<{}> = {
  id: 'CFG302', name: 'setting-recorded-twice', since, retired, severity: 'warning',
  meaning: 'A setting of a device is entered with two values, and no date tells which of them is the later.',
  message: ({ subject, context }) => `Item ${subject.id}: its setting "${context?.['name']}" is entered as ${context?.['values']}`,
  remedy: () => 'Remove the one that no longer holds, or enter the dates.',
}

export const secretAmongSettings: FindingKind<{}> = {
  id: 'CFG303', name: 'secret-among-settings', since, retired, severity: 'warning',
  meaning: 'A password, key or PIN is entered as a setting. Settings stand in every edition of the pack, for everybody to read.',
  message: ({ subject, context }) => `Item ${subject.id}: its setting "${context?.['name']}" is a secret, and settings go into every edition`,
  remedy: () => 'Move it to the credentials, and take it out of the settings.',
}

export const secretElsewhere: FindingKind<{}> = {
  id: 'CFG304', name: 'secret-elsewhere', since, retired, severity: 'warning',
  meaning: 'The secret of a credential stands word for word in another entry, which every edition of the pack carries.',
  message: ({ subject, context }) => `Credential ${subject.id}: the secret of "${context?.['name']}" also stands in ${context?.['places']}`,
  remedy: () => 'Take it out there, or change the secret.',
}

export const findingKinds = [softwareNotRecorded, settingsNotRecorded, settingWithoutDate, loginNotRecorded, settingContradictsEntry, settingTwice, secretAmongSettings, secretElsewhere] as const
