import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { examine } from '../../src/build.js'
import { kindKeys } from '../../src/load/entry-kinds.js'
import { folderOf } from '../support/vessel-folders.js'

const starter = fileURLToPath(new URL('../../starter-vessel', import.meta.url))
const texts = new Map(readdirSync(starter, { recursive: true, encoding: 'utf8' })
  .filter(file => file.endsWith('.yaml'))
  .map(file => [file, readFileSync(`${starter}/${file}`, 'utf8')]))

describe('the starter vessel', () => {
  it('has no finding, and nothing of it is not assessed', async () => {
    const examination = await examine(starter)
    expect(examination).toMatchObject({ status: 'examined', findings: [], notAssessed: [] })
  })

  it('shows every kind of entry, filled in or as a comment to take over', () => {
    const all = [...texts.values()].join('\n')
    const shown = kindKeys.filter(kind => new RegExp(`^(# )?${kind}:`, 'm').test(all))
    expect(shown).toEqual([...kindKeys])
  })

  it('says in each file what goes in', () => {
    for (const [file, text] of texts) expect([file, text]).toEqual([file, expect.stringMatching(/^# yaml-language-server: .*\n#\n# [A-Z].{20,}/)])
  })

  it('has commented examples that are right once the # is taken away', async () => {
    const takenOver = Object.fromEntries([...texts].map(([file, text]) =>
      [file, text.replace(/^(\s*)# (?!yaml-language)(?=\s*(- )?(\{|[a-z-]+:( |$)))/gm, '$1')]))
    for (const [file, text] of texts) if (/^\s*# (year-built|subnet|serial):/m.test(text)) expect(takenOver[file]).not.toBe(text)
    const { findings } = await examine(folderOf(takenOver))
    // What they refer to, a manual or a network switch, is not there; what they say must be what the format takes.
    expect(findings.filter(({ id }) => !id.startsWith('REF')).map(({ id, message, at }) => [id, message, at?.file, at?.line])).toEqual([])
  })

  // Worked by hand from the data, with ISO's constant: drop = 0.0164 · I · (length out and back) / mm².
  it('gives the figures of a sum done by hand', async () => {
    const examination = await examine(starter)
    if (examination.status !== 'examined') throw new Error('the starter vessel is not a vessel')
    const { feeding, voltageDrop } = examination.results
    // Feeder: lights 0.43 + display 2.2 + radio 6 + socket 4 · 0.5 + bus 0.2 = 10.83 A
    expect(feeding.byCircuit.get('F1')!.designCurrent).toMatchObject({ output: { designCurrentA: expect.closeTo(10.83, 9) } })
    // Out 0.1 + 0.6 + 3.4 = 4.1 m, back 3.4 m, 16 mm²: 0.0164 · 10.83 · 7.5 / 16 = 0.08326 V
    // Radio: 0.0164 · 6 · 2.4 / 2.5 = 0.09446 V; together 0.17772 V, 1.481 % of 12 V
    expect(voltageDrop.byCircuit.get('A1.3')!.worst).toMatchObject({ voltageDropV: expect.closeTo(0.17772, 4), voltageDropPercent: expect.closeTo(1.481, 3) })
    // Bilge pump: 3.2 A, out and back 2 · (0.2 + 0.9 + 2 · 0.4 + 0.5) = 4.8 m: 0.0164 · 3.2 · 4.8 / 2.5 = 0.10076 V
    expect(voltageDrop.byCircuit.get('F2')!.worst).toMatchObject({ voltageDropV: expect.closeTo(0.10076, 5) })
  })
})
