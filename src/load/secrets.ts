/** Secrets as they stand in the files: the texts without them. */
import { type KindKey, kindOfFileName } from './entry-kinds.js'
import { type SourceFolder, type SourceNode, type Span, valueAt } from './source-folder.js'

const secretKeys: readonly string[] = ['user', 'secret']

/** Whether a field of an entry must not be printed, not even where it is at fault. */
export const isSecret = (kind: KindKey, [key]: readonly PropertyKey[]): boolean => kind === 'credentials' && secretKeys.includes(String(key))

/** What stands in place of a secret in a copy of the data: a text in quotes, in YAML as in a table. */
export const cutOut = 'not in this edition'

/**
 * The texts of the data files without the secrets of the credentials that are withheld. Values are cut out by their place,
 * so the rest is as it was written; what was written behind a `#` goes by its words.
 */
export function textsWithoutSecrets({ entries, texts }: SourceFolder, isWithheld: (credential: SourceNode) => boolean): ReadonlyMap<string, string> {
  const spans = entries.filter(({ kind, node }) => kind === 'credentials' && isWithheld(node)).flatMap(({ node }) => secretSpans(node))
  const secrets = spans.map(({ plain }) => plain).filter(plain => plain.length >= shortestInComments)
  return new Map([...texts].map(([name, text]) => {
    const ofFile = spans.filter(({ span }) => span.file.name === name).map(({ span }) => span)
    const cut = replaced(text, ofFile, written => `"${cutOut}"${/\s*$/.exec(written)![0]}`)
    return [name, spans.length === 0 ? cut : withoutInComments(cut, secrets)]
  }))
}

/** A shorter one is found in any text. */
const shortestInComments = 4

/**
 * For excerpts at a terminal: every secret as dots of the same number, so that each place stays where it is. A file that
 * could not be read whole has no places: there the keys tell. Null for a table of credentials, where nothing does.
 */
export function textForExcerpts({ entries, texts }: SourceFolder, file: string): string | null {
  const text = texts.get(file)
  if (text === undefined || (kindOfFileName(file) === 'credentials' && /\.csv$/i.test(file))) return null
  const spans = entries.filter(({ kind }) => kind === 'credentials').flatMap(({ node }) => secretSpans(node)).map(({ span }) => span).filter(span => span.file.name === file)
  return replaced(text, spans, dotted).replace(keyed, (_, before: string, value: string) => before + dotted(value))
}

const dotted = (written: string): string => written.replace(/[^\r\n]/g, '•')

/** `secret: …` up to the end of the value as far as one line shows it. */
const keyed = /(\b(?:secret|user|pass(?:word)?)s?["']?[ \t]*:[ \t]*)("(?:[^"\\\r\n]|\\.)*"?|'[^'\r\n]*'?|[^\s,}#][^,}\r\n]*)/gi

interface Secret { readonly span: Span; readonly plain: string }

/** A value that an alias brings in is cut out where it is written. */
const secretSpans = (node: SourceNode): readonly Secret[] => secretKeys.flatMap(key => {
  const value = valueAt(node, key)
  return value === null || value.plain === null ? [] : [{ span: value, plain: String(value.plain).trim() }]
})

function replaced(text: string, spans: readonly Span[], by: (written: string) => string): string {
  const once = [...new Map(spans.map(span => [span.start, span])).values()].toSorted((a, b) => b.start - a.start)
  return once.reduce((left, { start, end }) => left.slice(0, start) + by(left.slice(start, end)) + left.slice(end), text)
}

/** A secret that was taken out of use by a `#`, or is told in a comment, is one all the same. */
const withoutInComments = (text: string, secrets: readonly string[]): string => text.replace(/#.*/g, comment =>
  secrets.reduce((left, secret) => left.replaceAll(secret, cutOut), comment).replace(keyed, (_, before: string) => before + cutOut))
