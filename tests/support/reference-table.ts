import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'

/** Rows of a table in tests/reference, by column name. */
export const referenceTable = (name: string): readonly Readonly<Record<string, string>>[] =>
  parse(readFileSync(new URL(`../reference/${name}.csv`, import.meta.url)), { columns: true })
