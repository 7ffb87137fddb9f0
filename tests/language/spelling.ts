/** Spelling by the British dictionary of cspell and the project's own words. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { finalizeSettings, getDictionary, mergeSettings, readSettings } from 'cspell-lib'

/** Trade terms, units and the invented names of the sample vessel; sorted. */
export const ownWords: readonly string[] = readFileSync(fileURLToPath(new URL('words.txt', import.meta.url)), 'utf8').split('\n').filter(line => line !== '')

/** Whether a word stands in the dictionary. */
export async function isKnown(): Promise<(word: string) => boolean> {
  const british = await readSettings(createRequire(import.meta.url).resolve('@cspell/dict-en-gb-mit/cspell-ext.json'))
  const dictionary = await getDictionary(finalizeSettings(mergeSettings(british, { language: 'en-GB', dictionaries: ['en-gb'] })))
  return word => dictionary.has(word)
}

/** Whether a word is spelt rightly: by the dictionary, or as one of the project's own. */
export async function spelling(): Promise<(word: string) => boolean> {
  const known = await isKnown()
  const own = new Set(ownWords)
  return word => own.has(word) || own.has(word.toLowerCase()) || known(word)
}

/**
 * The words of a passage that can be spelt: not what has a digit in it or stands as the unit behind a number, no abbreviation
 * in capitals, no name of a file, no single letter. Of a compound each part.
 */
export const wordsIn = (text: string): readonly string[] => text
  .replace(/\b(https?:\S+|\S+\.(example|yaml|csv|md|pdf|json|html)\S*)/g, ' ')
  .replace(/[\d.,]+\u00A0\S+/g, ' ')
  .split(/[\s/,;:()“”"…=·×→←≤≥+&|<>–]+/)
  .filter(token => !/[\d_@#^]/.test(token) && !/\p{L}\.\p{L}/u.test(token))
  .flatMap(token => token.split('-'))
  .map(word => word.replace(/’/g, "'").replace(/^[^\p{L}]+|[^\p{L}]+$/gu, '').replace(/'s$/, ''))
  .filter(word => word.length > 1 && !/^\p{Lu}+s?$/u.test(word))
