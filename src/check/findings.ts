/** Kinds of finding about entries (SCH: each for itself) and about what joins them (REF). */
import type { FindingKind, SubjectRef } from '../findings/finding.js'
import { didYouMean } from '../findings/nearest.js'
import type { Quantities } from '../units/quantity.js'

const since = '0.1.0'
const retired = null
const severity = 'error'

/** "Circuit A1.7", at the beginning of a sentence. */
const named = ({ kind, id }: SubjectRef): string => `${kind.charAt(0).toUpperCase()}${kind.slice(1)}${id === '' ? '' : ` ${id}`}`

/** `documents.0.file` → "documents.file": which one of the list it is, the place says. */
const keyText = (field: string | null): string => `"${(field ?? '').replace(/\.\d+/g, '')}"`

// --- entries for themselves ------------------------------------------------------------------------------------------
export const keyUnknown: FindingKind<Quantities> = {
  id: 'SCH101', name: 'key-unknown', since, retired, severity,
  meaning: 'An entry has a key that its kind does not know, so what is written there would be lost.',
  message: ({ subject, context = {} }) => `${named(subject)}: there is no key "${context.key}"${didYouMean(context.nearest)}`,
  remedy: ({ context = {} }) => (context.nearest === undefined ? `Use one of the keys: ${context.known}.` : `Write "${context.nearest}", or remove the key.`),
}

export const valueNotAccepted: FindingKind<Quantities> = {
  id: 'SCH102', name: 'value-not-accepted', since, retired, severity,
  meaning: 'A value is not of the form that its key takes.',
  message: ({ subject, field, context = {} }) => `${named(subject)}: ${field === null ? 'the entry' : keyText(field)} is ${context.written}, expected ${context.expected}`,
  remedy: ({ context = {} }) => `Write ${context.expected}.`,
}

export const wordNotInList: FindingKind<Quantities> = {
  id: 'SCH103', name: 'word-not-in-list', since, retired, severity,
  meaning: 'A key takes one of a list of words, and this is none of them.',
  message: ({ subject, field, context = {} }) => `${named(subject)}: ${keyText(field)} is ${context.written}${didYouMean(context.nearest)}`,
  remedy: ({ context = {} }) => (context.nearest === undefined ? `Write one of: ${context.known}.` : `Write "${context.nearest}".`),
}

export const quantityNotAccepted: FindingKind<Quantities> = {
  id: 'SCH104', name: 'quantity-not-accepted', since, retired, severity,
  meaning: 'A quantity has no unit, a unit of another kind, or is no number. Without its unit nobody can tell what was meant.',
  message: ({ subject, field, context = {} }) => `${named(subject)}: ${keyText(field)} is ${context.written}, expected ${context.expected}`,
  remedy: () => 'Write number and unit, with a point for decimals.',
}

export const vesselRepeated: FindingKind<Quantities> = {
  id: 'SCH105', name: 'vessel-repeated', since, retired, severity,
  meaning: 'The vessel is described in two places of one folder.',
  message: ({ context = {} }) => `The vessel is described a second time; the first is at ${context.first}`,
  remedy: () => 'Keep one entry "vessel". Another boat needs a folder of its own.',
}

export const keyMissing: FindingKind<Quantities> = {
  id: 'SCH201', name: 'key-missing', since, retired, severity,
  meaning: 'An entry lacks something without which it cannot be used, or has the key but no value.',
  message: ({ subject, context = {} }) => `${named(subject)}: "${context.key}" is missing`,
  remedy: ({ context = {} }) => `Add "${context.key}": ${context.about}`,
}

export const vesselMissing: FindingKind<Quantities> = {
  id: 'SCH202', name: 'vessel-missing', since, retired, severity,
  meaning: 'No file of the folder says which vessel it is and by which rules its installation is held.',
  message: () => 'No file of the folder has an entry "vessel"',
  remedy: () => 'Add a file vessel.yaml that begins with "vessel:" and gives at least "name" and "basis" below it.',
}

// --- tags ------------------------------------------------------------------------------------------------------------
export const tagRepeated: FindingKind<Quantities> = {
  id: 'REF101', name: 'tag-repeated', since, retired, severity,
  meaning: 'Two things have the same tag, so nobody can tell which one is meant. Tags are unique in the vessel, whatever they name.',
  message: ({ subject, context = {} }) => `${named(subject)}: this tag is already taken by ${context.other} at ${context.first}`,
  remedy: () => 'Give one of them another tag, on its label too.',
}

export const tagTooAlike: FindingKind<Quantities> = {
  id: 'REF102', name: 'tag-too-alike', since, retired, severity,
  meaning: 'Two tags differ only in capitals or in signs that an address cannot hold, so their pages would have the same address.',
  message: ({ subject, context = {} }) => `${named(subject)}: the tag is too like that of ${context.other} at ${context.first}; both would have the page address "${context.address}"`,
  remedy: () => 'Change a letter or digit of one of the two tags.',
}

// --- references ------------------------------------------------------------------------------------------------------
export const referenceUnknown: FindingKind<Quantities> = {
  id: 'REF103', name: 'reference-unknown', since, retired, severity,
  meaning: 'An entry refers to a tag that nothing in the folder has.',
  message: ({ subject, field, context = {} }) => `${named(subject)}: ${keyText(field)} names ${context.named}, which is not in the folder${didYouMean(context.nearest)}`,
  remedy: ({ context = {} }) => `Correct the name, or add ${context.expected} of this name.`,
}

export const referenceOfWrongKind: FindingKind<Quantities> = {
  id: 'REF104', name: 'reference-of-wrong-kind', since, retired, severity,
  meaning: 'An entry refers to a thing that exists but cannot stand there.',
  message: ({ subject, field, context = {} }) => `${named(subject)}: ${keyText(field)} names ${context.named} (${context.found}), expected ${context.expected}`,
  remedy: ({ context = {} }) => `Name ${context.expected}.`,
}

export const documentMissing: FindingKind<Quantities> = {
  id: 'REF105', name: 'document-missing', since, retired, severity,
  meaning: 'An entry lists a file that is not in the vessel folder.',
  message: ({ subject, context = {} }) => `${named(subject)}: there is no file ${context.named} in the folder${didYouMean(context.nearest)}`,
  remedy: () => 'Put the file there, or correct its path, written from the top of the folder.',
}

/** No reason to do without the pack: the page of the picture says that it is missing. */
export const pictureMissing: FindingKind<Quantities> = {
  id: 'REF201', name: 'picture-missing', since, retired, severity: 'warning',
  meaning: 'A photograph or an arrangement drawing names a file that is not in the vessel folder. Its page is made without the picture and says so.',
  message: ({ subject, context = {} }) => `${named(subject)}: there is no file ${context.named} in the folder${didYouMean(context.nearest)}`,
  remedy: () => 'Put the file there, or correct its path, written from the top of the folder.',
}

export const circuitFeedsItsSource: FindingKind<Quantities> = {
  id: 'REF106', name: 'circuit-feeds-its-source', since, retired, severity,
  meaning: 'A circuit lists what it is fed from as one of its loads.',
  message: ({ subject, context = {} }) => `${named(subject)}: ${context.named} is both what it is fed from and one of its loads`,
  remedy: () => 'Correct "fed-from" or "loads".',
}

export const wayTakenTwice: FindingKind<Quantities> = {
  id: 'REF107', name: 'way-taken-twice', since, retired, severity,
  meaning: 'Two circuits are on one way of one panel.',
  message: ({ subject, context = {} }) => `${named(subject)}: way ${context.way} of panel ${context.panel} is already taken by circuit ${context.other} at ${context.first}`,
  remedy: () => 'Correct the way of one of the two circuits, or list both loads under one circuit.',
}

export const wayBeyondPanel: FindingKind<Readonly<{ wayNumber: number; wayCount: number }>> = {
  id: 'REF108', name: 'way-beyond-panel', since, retired, severity,
  meaning: 'A circuit is on a way that its panel does not have.',
  message: ({ subject, evidence, context = {} }) => `${named(subject)}: way ${evidence.wayNumber} of panel ${context.panel}, which has ${evidence.wayCount}`,
  remedy: () => 'Correct the way, or the number of ways of the panel.',
}

export const notANetworkSwitch: FindingKind<Quantities> = {
  id: 'REF109', name: 'not-a-network-switch', since, retired, severity,
  meaning: 'An Ethernet network lists an item as its switch that is of another kind.',
  message: ({ subject, context = {} }) => `${named(subject)}: ${context.named} is of the kind "${context.found}", not a network switch`,
  remedy: () => 'Name the switch, or correct the kind of the item or of its model.',
}

export const placeTakenTwice: FindingKind<Quantities> = {
  id: 'REF110', name: 'place-taken-twice', since, retired, severity,
  meaning: 'Two procedures would take the place of the general text on one page of the manual, so one of them would not be seen.',
  message: ({ subject, context = {} }) => `${named(subject)}: the page "${context.place}" already shows the procedure "${context.other}" at ${context.first}`,
  remedy: () => 'Keep "place" in one of the two; the other is shown with what it is about.',
}

export const terminalUnknown: FindingKind<Quantities> = {
  id: 'REF301', name: 'terminal-unknown', since, retired, severity: 'warning',
  meaning: 'A cable ends at a terminal that the item does not list among its ports.',
  message: ({ subject, field, context = {} }) => `${named(subject)}: ${keyText(field)} names terminal "${context.named}", which ${context.item} does not have${didYouMean(context.nearest)}`,
  remedy: ({ context = {} }) => `Name one of its ports (${context.known}), or add the port to the item or its model.`,
}

/** No picture is fetched from elsewhere, since the pack is read without internet. */
export const targetNotShown: FindingKind<Quantities> = {
  id: 'REF202', name: 'target-in-text-not-shown', since, retired, severity: 'warning',
  meaning: 'A text in Markdown holds a picture, or a link that is no address on the web. The pack shows its words alone.',
  message: ({ subject, field, context = {} }) => `${named(subject)}: ${keyText(field)} holds ${context.what} ${context.target}, and the pack shows its words alone`,
  remedy: ({ context = {} }) => (context.what === 'the picture'
    ? 'Enter the picture under "photographs", with a call-out on what the text is about.'
    : 'Write a tag in double brackets, such as [[P1]]; enter a file under the "documents" of what it is about.'),
}

export const checkFindingKinds = [
  keyUnknown, valueNotAccepted, wordNotInList, quantityNotAccepted, vesselRepeated, keyMissing, vesselMissing, tagRepeated, tagTooAlike,
  referenceUnknown, referenceOfWrongKind, documentMissing, pictureMissing, targetNotShown, circuitFeedsItsSource, wayTakenTwice, wayBeyondPanel, notANetworkSwitch, placeTakenTwice, terminalUnknown,
] as const
