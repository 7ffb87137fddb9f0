/** Kinds of finding about the files themselves (SRC). */
import type { Facts, Finding, FindingKind } from '../findings/finding.js'
import { didYouMean } from '../findings/nearest.js'
import type { Quantities } from '../units/quantity.js'

const since = '0.1.0'
const retired = null
const severity = 'error'

export const folderNotFound: FindingKind<Quantities> = {
  id: 'SRC101', name: 'folder-not-found', since, retired, severity,
  meaning: 'There is nothing at the path that was given, or what is there is no folder.',
  message: ({ subject, context = {} }) => `${subject.id}: ${context.reason}`,
  remedy: () => 'Give the path of the folder that holds the vessel’s files.',
}

export const folderWithoutData: FindingKind<Quantities> = {
  id: 'SRC201', name: 'folder-without-data', since, retired, severity,
  meaning: 'The folder holds no file that could describe a vessel.',
  message: ({ subject }) => `${subject.id}: no .yaml, .yml or .csv file in this folder or below it`,
  remedy: () => 'Give the path of the folder that holds the vessel’s files, or start one with a file vessel.yaml.',
}

export const fileUnreadable: FindingKind<Quantities> = {
  id: 'SRC102', name: 'file-unreadable', since, retired, severity,
  meaning: 'The system does not hand out the content of a file or folder.',
  message: ({ subject, context = {} }) => `${subject.id} cannot be read: ${context.reason}`,
  remedy: () => 'Put the file itself in the folder and allow it to be read.',
}

export const fileTooLarge: FindingKind<Readonly<{ fileSizeCount: number }>> = {
  id: 'SRC103', name: 'file-too-large', since, retired, severity,
  meaning: 'A data file is larger than any hand-kept list is; most likely it is something else.',
  message: ({ subject, evidence, context = {} }) => `${subject.id} has ${evidence.fileSizeCount} bytes, at most ${context.limit} are read`,
  remedy: () => 'Split the file by kind or by system, or move it out of the folder if it is no data of the vessel.',
}

export const fileNotUtf8: FindingKind<Readonly<{ byteNumber: number }>> = {
  id: 'SRC104', name: 'file-not-utf-8', since, retired, severity,
  meaning: 'A data file is not written in UTF-8, so letters such as ° or é cannot be told.',
  message: ({ subject, evidence }) => `${subject.id} is not UTF-8 text: byte ${evidence.byteNumber} belongs to no character`,
  remedy: () => 'Save the file again with the encoding UTF-8.',
}

export const linkOutOfFolder: FindingKind<Quantities> = {
  id: 'SRC105', name: 'link-out-of-folder', since, retired, severity,
  meaning: 'A symbolic link leads out of the vessel folder, so the folder is not complete in itself.',
  message: ({ subject }) => `${subject.id} is a link that leads out of the folder; it was not followed`,
  remedy: () => 'Put the file or folder itself in its place. Models for several vessels belong in a catalogue folder.',
}

export const yamlSyntax: FindingKind<Quantities> = {
  id: 'SRC111', name: 'yaml-syntax', since, retired, severity,
  meaning: 'A file breaks the rules of YAML, so what stands in it cannot be told for certain. Nothing of it is used.',
  message: ({ context = {} }) => `Not valid YAML: ${context.reason}`,
  remedy: ({ context = {} }) => context.remedy ?? 'Mend the line shown, or the one above it.',
}

export const keyRepeated: FindingKind<Quantities> = {
  id: 'SRC112', name: 'key-repeated', since, retired, severity,
  meaning: 'The same key stands twice in one entry, so one of the two values would be lost.',
  message: ({ context = {} }) => `The key "${context.key}" stands here a second time; the first is at ${context.first}`,
  remedy: () => 'Keep one of the two.',
}

export const aliasUnusable: FindingKind<Quantities> = {
  id: 'SRC113', name: 'alias-unusable', since, retired, severity,
  meaning: 'A YAML alias has no anchor before it, refers to what holds it, or multiplies the file beyond measure.',
  message: ({ context = {} }) => `The alias *${context.alias} ${context.reason}`,
  remedy: () => 'Write the value out instead of referring to it.',
}

export const nestedTooDeep: FindingKind<Readonly<{ depthNumber: number }>> = {
  id: 'SRC114', name: 'nested-too-deep', since, retired, severity,
  meaning: 'Values stand inside values deeper than any kind of entry has.',
  message: ({ evidence }) => `Values are nested more than ${evidence.depthNumber} deep`,
  remedy: () => 'Check the indentation and the brackets.',
}

export const fileNotByKind: FindingKind<Quantities> = {
  id: 'SRC115', name: 'file-not-by-kind', since, retired, severity,
  meaning: 'A file does not start with the kinds of entry it holds, or a kind does not hold a list (the vessel: a map).',
  message: ({ context = {} }) => `Expected ${context.expected}, found ${context.found}`,
  remedy: ({ context = {} }) => context.remedy ?? 'Begin the file with the kind of its entries, for example "equipment:", and list them below it.',
}

export const kindUnknown: FindingKind<Quantities> = {
  id: 'SRC116', name: 'kind-unknown', since, retired, severity,
  meaning: 'A key at the top of a file names no kind of entry, so what stands below it would be lost.',
  message: ({ context = {} }) => `"${context.key}" is no kind of entry${didYouMean(context.nearest)}`,
  remedy: ({ context = {} }) => (context.nearest === undefined ? `Use one of the kinds: ${context.known}.` : `Write "${context.nearest}".`),
}

export const kindNotInCatalogue: FindingKind<Quantities> = {
  id: 'SRC117', name: 'kind-not-in-catalogue', since, retired, severity,
  meaning: 'A catalogue holds what is true of every unit of a model; anything else belongs to one vessel.',
  message: ({ context = {} }) => `A catalogue cannot hold ${context.key}, only ${context.known}`,
  remedy: () => 'Move these entries to the vessel folder.',
}

export const frontMatterMissing: FindingKind<Quantities> = {
  id: 'SRC118', name: 'front-matter-missing', since, retired, severity,
  meaning: 'A Markdown file of the folder "procedures" does not say between two lines of --- at its head what the procedure is called. Nothing of it is used.',
  message: ({ subject, context = {} }) => `${subject.id} has no front matter: ${context.reason}`,
  remedy: () => 'Begin the file with a line of ---, then "title: What it is called", then another line of ---; or move a file that is no procedure out of the folder.',
}

export const procedureWithoutText: FindingKind<Quantities> = {
  id: 'SRC119', name: 'procedure-without-text', since, retired, severity,
  meaning: 'A procedure has a title and nothing below it.',
  message: ({ subject }) => `${subject.id} has no text below its front matter`,
  remedy: () => 'Write the procedure below the second line of ---, or remove the file.',
}

export const fileNameNamesNoKind: FindingKind<Quantities> = {
  id: 'SRC121', name: 'file-name-names-no-kind', since, retired, severity,
  meaning: 'The name of a CSV file says which kind of entry its rows are. This one names none, and no entry lists the file as a document.',
  message: ({ subject, context = {} }) => `${subject.id}: the name says no kind of entry${didYouMean(context.nearest)}`,
  remedy: ({ context = {} }) => `Begin the file name with a kind, for example cables.csv or cables-helm.csv (${context.known}), or list the file as a document of an item.`,
}

export const csvSyntax: FindingKind<Quantities> = {
  id: 'SRC122', name: 'csv-syntax', since, retired, severity,
  meaning: 'Quotation marks in a CSV file do not pair up, so the cells from there on cannot be told apart. Nothing of the file is used.',
  message: ({ context = {} }) => `Not valid CSV: ${context.reason}`,
  remedy: () => 'Put a cell that holds a quotation mark in quotes and write the mark twice ("16"" display"), or leave the mark out.',
}

export const csvHeaderUnusable: FindingKind<Quantities> = {
  id: 'SRC123', name: 'csv-header-unusable', since, retired, severity,
  meaning: 'A column has no name, or its name clashes with another column’s. Nothing of the file is used.',
  message: ({ context = {} }) => `${context.reason}`,
  remedy: () => 'Give each column one name of its own in the first row.',
}

export const csvRowRagged: FindingKind<Readonly<{ cellCount: number; columnCount: number }>> = {
  id: 'SRC124', name: 'csv-row-ragged', since, retired, severity,
  meaning: 'A row has fewer or more cells than there are columns, so a value may stand in the wrong column. The row is not used.',
  message: ({ evidence }) => `This row has ${evidence.cellCount} cells, the header has ${evidence.columnCount}`,
  remedy: () => 'Add or remove separators; put a cell that holds the separator itself in quotes.',
}

export const loadFindingKinds = [
  folderNotFound, folderWithoutData, fileUnreadable, fileTooLarge, fileNotUtf8, linkOutOfFolder, yamlSyntax, keyRepeated, aliasUnusable,
  nestedTooDeep, fileNotByKind, kindUnknown, kindNotInCatalogue, frontMatterMissing, procedureWithoutText, fileNameNamesNoKind, csvSyntax, csvHeaderUnusable, csvRowRagged,
] as const

/** Read without loss; the content is at fault, as with a schema error. */
const contentOnly: ReadonlySet<string> = new Set([kindUnknown.id, kindNotInCatalogue.id, frontMatterMissing.id, procedureWithoutText.id, fileNameNamesNoKind.id])

/** Whether a finding means that the folder could not be read as a vessel at all, as against read and found wrong. */
export const isUnreadable = ({ id }: Pick<Finding, 'id'>): boolean => id.startsWith('SRC') && !contentOnly.has(id)

/** Facts of a finding about a whole file or folder. */
export const aboutFile = <E extends Quantities>(name: string, evidence: E, context: Readonly<Record<string, string>> = {}): Facts<E> =>
  ({ subject: { kind: 'file', id: name }, field: null, evidence, limit: null, context })
