/** Who may import whom: a stage imports the shared shelves and nothing of another stage. */
import { dirname, join, normalize } from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesBelow, textOf } from './files.js'

const shelves = ['model', 'units', 'references', 'findings']
const stages = ['load', 'check', 'calculate', 'view', 'render', 'package']

/** What a stage takes from another all the same, and why. */
const exceptions: Readonly<Record<string, readonly string[]>> = {
  // The view prints the methods it is handed; only their type crosses the border.
  'view → calculate/method.ts': ['type'],
  // Addresses are made once and used by links and anchors alike; the view model is what the templates get.
  'render → view/site-map.ts': ['value'],
  'render → view/view-model.ts': ['type'],
  // The check stage reads what the load stage read, and turns its positions into findings.
  'check → load': ['value', 'type'],
  // The collected lists of kinds are the registry's purpose.
  'findings → load/findings.ts': ['value'],
  'findings → check/findings.ts': ['value'],
  'findings → calculate': ['value', 'type'],
  // The record is written from the view's schedules.
  'package → view/view-model.ts': ['type'],
}

interface Import { readonly file: string; readonly from: string; readonly to: string; readonly kind: 'type' | 'value' }

const imports: readonly Import[] = filesBelow('src', '.ts').flatMap(file => {
  const lines = [...textOf(file).matchAll(/^(?:import|export) (type )?[^'"]*?from '(\.[^']+)'/gms)]
  return lines.map(([, type, specifier]) => ({
    file,
    from: file.split('/')[1]!,
    to: normalize(join(dirname(file), specifier!)).replace(/^src\//, '').replace(/\.js$/, '.ts'),
    kind: type === undefined ? 'value' as const : 'type' as const,
  }))
})

const allowed = ({ from, to, kind }: Import): boolean => {
  const folder = to.split('/')[0]!
  if (folder === from || shelves.includes(folder)) return true
  const named = exceptions[`${from} → ${to}`] ?? exceptions[`${from} → ${folder}`]
  return named?.includes(kind) ?? false
}

describe('import borders', () => {
  it.each([...stages, ...shelves])('%s imports nothing of another stage', stage => {
    expect(imports.filter(each => each.from === stage && !allowed(each)).map(({ file, to, kind }) => `${file} imports ${to} (${kind})`)).toEqual([])
  })

  it('has no exception that is not used', () => {
    const used = (name: string) => imports.some(({ from, to }) => name === `${from} → ${to}` || name === `${from} → ${to.split('/')[0]}`)
    expect(Object.keys(exceptions).filter(name => !used(name))).toEqual([])
  })

  it.each(['calculate', 'check', 'view', 'model', 'units', 'findings', 'references'])('%s touches neither files nor clock', stage => {
    const touching = filesBelow(`src/${stage}`, '.ts').filter(file => /from 'node:|Date\.now|new Date\(\)|process\./.test(textOf(file)))
    expect(touching).toEqual([])
  })
})
