/** The manual's general text, the same for every vessel: Markdown files of `content/`. */
export interface Content {
  /** By file name without its ending: `how-to-read`, `glossary`, … */
  readonly pages: ReadonlyMap<string, ContentPage>
  /** Safety cautions, in the order of their files. */
  readonly cautions: readonly Caution[]
}
export interface ContentPage { readonly title: string; readonly markdown: string }

export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE'
export interface Caution {
  readonly key: string
  readonly signal: SignalWord
  readonly title: string
  readonly markdown: string
  /** Keys of systems' or equipment's kinds it belongs to; empty: it stands for the whole installation. */
  readonly equipmentKinds: readonly string[]
}
