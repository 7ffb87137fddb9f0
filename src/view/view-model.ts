/**
 * What the templates get: finished text in typed blocks. One view serves the site and the printed manual; a template
 * prints, loops and branches on a boolean, nothing else.
 */
import type { Severity, SourcePosition } from '../findings/finding.js'
import type { SignalWord } from '../model/content.js'

export interface View {
  readonly vesselName: string
  readonly titleBlock: TitleBlock
  readonly cover: Cover
  readonly pages: readonly Page[]
  /** The printed documents: the manual first. */
  readonly volumes: readonly Volume[]
  readonly navigation: readonly NavigationEntry[]
  readonly schedules: readonly Schedule[]
  /** Further files of the pack. */
  readonly files: readonly TextFile[]
  readonly workbooks: readonly Workbook[]
  readonly labels: LabelPrints
}

/** Labels to be printed at their real size, and the same as tables for label printers. */
export interface LabelPrints {
  readonly documents: readonly LabelDocument[]
  readonly lists: readonly Schedule[]
}
/** Sheets of labels of one size, without a margin of their own. */
export interface LabelDocument {
  /** From the top of the pack. */
  readonly file: string
  readonly title: string
  /** As style sheets write them: `210mm`. */
  readonly pageWidth: string
  readonly pageHeight: string
  /** One `<svg>` for each sheet, in millimetres. */
  readonly sheets: readonly string[]
}

/** One printed document of the pack. */
export interface Volume {
  /** Its name in the pack: `manual.pdf`. */
  readonly file: string
  /** What other documents call it. */
  readonly name: string
  /** In the title block of each sheet. */
  readonly title: string
  /** In the order in which they are printed. */
  readonly chapters: readonly Chapter[]
  /** Whether a cover and a table of contents come first. */
  readonly fronted: boolean
}

/** A file for other programs, by its path from the top of the pack. */
export interface TextFile {
  readonly file: string
  /** What it is, in a few words. */
  readonly about: string
  readonly text: string
}

/** Drawing-office title block (ISO 7200 in idea): the same facts on each sheet. */
export interface TitleBlock {
  readonly title: string
  readonly vessel: string
  readonly documentNumber: string
  readonly issue: string
  readonly issuedOn: string
  readonly preparedBy: string
  readonly checkedBy: string
  readonly installer: string
  readonly basis: string
}

/** First sheet of the printed manual. */
export interface Cover {
  readonly subtitle: string | null
  readonly facts: readonly { readonly label: string; readonly value: Text }[]
  readonly note: string
}

export interface NavigationEntry { readonly title: string; readonly key: PageKey; readonly children: readonly NavigationEntry[] }

/** Stable address of a page without its ending: `equipment/p1`, `panels/a1`, `findings`. Made by site-map.ts. */
export type PageKey = string

export interface Page {
  readonly key: PageKey
  readonly title: string
  /** Small line above the title: what kind of thing this is ("Equipment", "Circuit of panel A1"). */
  readonly kicker: string | null
  readonly lead: Text | null
  readonly blocks: readonly Block[]
  /** What the printed manual shows of it, where that is less than the page; null: the same. */
  readonly printed: readonly Block[] | null
  /** Links back up: contents → chapter. */
  readonly trail: readonly Link[]
  /** Read in haste: large, and on paper on one sheet of its own, with as much as goes on it. */
  readonly oneSheet?: SheetFit
}

/** What of a page goes on its one sheet, the most first. The site has all. */
export type SheetFit = 'all, large' | 'all' | 'without drawings' | 'without remarks' | 'first of each list'

export interface Chapter {
  readonly number: string
  readonly title: string
  readonly anchor: string
  /** Said once at the chapter's head. */
  readonly introduction: Text | null
  /** Pages printed in this chapter, in order. `compact`: without starting a new sheet each. */
  readonly pageKeys: readonly PageKey[]
  readonly compact: boolean
  /** Short lines in two columns. */
  readonly twoColumns: boolean
  /** Sheets turned on their side, for wide schedules. */
  readonly landscape: boolean
  /** Whether the table of contents lists its pages; long runs are found through the index instead. */
  readonly listed: boolean
}

// --- text ------------------------------------------------------------------------------------------------------------
/** `to`: a page, or a part of one by its anchor: `safety#live-working`. */
export interface Link { readonly text: string; readonly to: PageKey }
/** `tag`: a designation, set in the label face. `level`: how a verdict is coloured; the word itself always says it too. */
export type Inline =
  | string
  | ({ readonly is: 'link'; readonly tag: boolean } & Link)
  | { readonly is: 'tag'; readonly text: string }
  /** A file of the vessel folder, which the pack keeps in its record. */
  | { readonly is: 'file'; readonly text: string; readonly file: string }
  /** A file at the top of the pack: a printed document, a calendar. */
  | { readonly is: 'pack file'; readonly text: string; readonly file: string }
  | { readonly is: 'verdict'; readonly text: string; readonly level: Level }
  | { readonly is: 'muted'; readonly text: string }
  | { readonly is: 'strong'; readonly text: string }
  /** The printed page on which `to` starts; the name of the document that has it, where that is another; on the site nothing. */
  | { readonly is: 'page number'; readonly to: PageKey }
  | { readonly is: 'break' }
export type Text = readonly Inline[]
export type Level = 'good' | 'note' | 'warning' | 'error' | 'not assessed'

// --- blocks ----------------------------------------------------------------------------------------------------------
export type Block =
  | { readonly is: 'heading'; readonly text: string; readonly anchor: string | null }
  | Paragraph
  /** Text with its own structure. Links to pages are written `[words](asfitted:PAGEKEY)`. */
  | { readonly is: 'markdown'; readonly source: string }
  | Facts
  | Table
  | Diagram
  | Drawing
  | Callout
  | Working
  | FindingList
  | CardList
  | Spoken
  | LegendCards
  | Reach
  | Picture
  | Steps

export interface Paragraph { readonly is: 'paragraph'; readonly text: Text }

/** Label and value, one a line. `dense`: in two columns where there is room. `large`: to be read in haste. */
export interface Facts { readonly is: 'facts'; readonly caption: string | null; readonly dense?: boolean; readonly large?: boolean; readonly entries: readonly { readonly label: string; readonly value: Text }[] }

export interface Table {
  readonly is: 'table'
  readonly id: string
  readonly caption: string
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
  readonly note: Text | null
  /** Shown in place of the table when it has no rows. */
  readonly empty: string
  /** To be filled in by hand: ruled cells, high enough to write in. */
  readonly forPen: boolean
  /** Where its columns or its sheets are laid out otherwise than those of other tables. */
  readonly layout: TableLayout | null
}
/**
 * `wire list`: many columns, on paper of fixed widths. `checklist`, `log sheet`, `hours sheet`: taken out of the manual, so they start a
 * sheet. `by group`: a row with empty cells is the name of those that follow. `signatures`: most room where one signs.
 */
export type TableLayout = 'wire list' | 'checklist' | 'log sheet' | 'hours sheet' | 'by group' | 'signatures'
export interface Column {
  readonly title: string
  readonly unit: string | null
  readonly align: 'left' | 'right' | 'center'
  /** Width hint: `tag` narrow, `number` narrow right, `text` takes the rest. */
  readonly width: 'tag' | 'number' | 'short' | 'text'
}
export interface Row { readonly cells: readonly Text[]; readonly level: Level | null; readonly anchor: string | null }

export interface Diagram {
  readonly is: 'diagram'
  readonly id: string
  /** The panel, module, network or system it shows; null for the vessel as a whole. */
  readonly about: string | null
  readonly caption: string
  /** Mermaid text; boxes link by `click NODE href "asfitted:PAGEKEY"`. */
  readonly mermaid: string
  /** The same content in words, for those who cannot see the drawing and for packs built without a browser. */
  readonly description: Text
}

/** A drawing of our own, made from the model: place carries the meaning. */
export interface Drawing {
  readonly is: 'drawing'
  readonly id: string
  readonly caption: string
  /** One of several that stand side by side where there is room. */
  readonly narrow?: boolean
  /** As wide as the page; on a telephone to be pushed sideways. */
  readonly wide?: boolean
  /** Files of the vessel folder that it shows, written `asfitted-picture:FILE`. */
  readonly pictures?: readonly string[]
  /** The whole `<svg>`, without ids, since one printed document holds them all; links are written `asfitted:PAGEKEY`. */
  readonly svg: string
  /** The same content in words, for those who cannot see it. */
  readonly description: Text
}

/** `anchor`: where links to it lead. */
export interface Callout { readonly is: 'callout'; readonly signal: SignalWord; readonly title: string; readonly markdown: string; readonly anchor?: string }

/** A calculation as it can be redone by hand: formula, every input with symbol and value, result, limit, source. */
export interface Working {
  readonly is: 'working'
  readonly title: string
  /** LaTeX; null when the lines say it. */
  readonly formula: string | null
  readonly inputs: readonly WorkingLine[]
  readonly results: readonly WorkingLine[]
  readonly limit: Text | null
  readonly verdict: { readonly text: string; readonly level: Level } | null
  readonly sources: readonly string[]
  readonly assumes: readonly string[]
}
/** `symbol` is LaTeX, or null. */
export interface WorkingLine { readonly symbol: string | null; readonly label: string; readonly value: string; readonly remark: Text | null }

export interface FindingList { readonly is: 'findings'; readonly empty: string; readonly findings: readonly FindingCard[] }
export interface FindingCard {
  readonly id: string
  readonly name: string
  readonly severity: Severity
  readonly subject: Text
  readonly message: string
  readonly limit: string | null
  readonly remedy: string
  readonly at: SourcePosition | null
  /** Who accepts it, when and why; null while nobody does. */
  readonly accepted: string | null
  /** Page of the finding's kind in the basis chapter. */
  readonly kind: Link
}

export interface CardList { readonly is: 'cards'; readonly cards: readonly { readonly title: string; readonly to: PageKey; readonly text: Text }[] }

/** Words to be read out, line by line. `blank`: what belongs on the ruled line after them; null: no line. */
export interface Spoken {
  readonly is: 'spoken'
  readonly id: string
  readonly caption: string
  readonly lines: readonly { readonly say: Text; readonly blank: string | null }[]
}

/** Cards to be cut out, at the size of the lettering that a panel's legend needs. */
export interface LegendCards { readonly is: 'legends'; readonly cards: readonly LegendCard[]; readonly empty: string }
export interface LegendCard {
  readonly tag: string
  readonly name: string
  /** "1 of 2", where one card does not hold all. */
  readonly part: string | null
  /** What the first column is called. */
  readonly wayTitle: string
  /** The warning, where mains voltage is behind it. */
  readonly mains: string | null
  readonly rows: readonly LegendRow[]
}
export interface LegendRow { readonly way: string; readonly name: string; readonly rating: string; readonly feeds: string; readonly spare: boolean; readonly unprotected: boolean }
/** Things to lay a hand on in haste, in the order in which they are reached for. */
export interface Reach {
  readonly is: 'reach'
  readonly id: string
  readonly caption: string
  readonly entries: readonly ReachEntry[]
}
export interface ReachEntry {
  /** What the hand does: "Shut", "Turn off". */
  readonly act: string | null
  readonly what: Text
  readonly where: Text | null
  readonly remark: Text | null
}

/** A picture of the vessel folder with numbered call-outs. */
export interface Picture {
  readonly is: 'picture'
  readonly file: string
  readonly caption: Text
  /** In place of the picture, for those who cannot see it. */
  readonly alternative: string
  readonly marks: readonly PictureMark[]
  /** What the numbers are; those that the page is about. */
  readonly list: readonly { readonly number: string; readonly text: Text }[]
}
/** `fromLeft`, `fromTop`: shares of the picture, `23.5%`. */
export interface PictureMark {
  readonly number: string
  readonly fromLeft: string
  readonly fromTop: string
  readonly name: string
  readonly to: PageKey | null
  /** One that the page is about. */
  readonly meant: boolean
}
/** What to do one after the other. Each step says where, what to do there, and what the outcome means. */
export interface Steps {
  readonly is: 'steps'
  readonly id: string
  readonly caption: string
  /** Said before the first. */
  readonly note: Text | null
  readonly steps: readonly Step[]
}
export interface Step {
  readonly number: string
  readonly title: Text
  readonly where: Text | null
  readonly lines: readonly { readonly label: string; readonly text: Text }[]
}

// --- schedules -------------------------------------------------------------------------------------------------------
/** A table for machines: file name, header, rows of plain text, written as CSV. */
export interface Schedule { readonly file: string; readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] }

// --- workbooks -------------------------------------------------------------------------------------------------------
/** A workbook for a spreadsheet program, by its path from the top of the pack. */
export interface Workbook {
  readonly file: string
  /** What it is, in a few words. */
  readonly about: string
  readonly sheets: readonly Sheet[]
}
export interface Sheet { readonly name: string; readonly columns: readonly SheetColumn[]; readonly rows: readonly (readonly SheetCell[])[] }
/** A column of numbers has their unit in its title. */
export interface SheetColumn { readonly title: string; readonly numbers: boolean }
/** Text is never taken for a number, a date or a formula; null: left empty, for the pen. */
export type SheetCell = string | number | null
