/** Label stock and danger texts of the manual's general text. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readContent } from '../../src/load/read-content.js'
import { readDangerTexts, readLabelSizes } from '../../src/load/read-labels.js'
import { temporaryFolder } from '../support/temporary-folder.js'

function fileWith(text: string): string {
  const file = join(temporaryFolder(), 'odd.yaml')
  writeFileSync(file, text)
  return file
}
const sound = '- {size: a, title: A, form: sheet, page-width: 210 mm, page-height: 297 mm, label-width: 2.625 in, label-height: 1 in, columns: 2, rows: 2, left: 5 mm, top: 5 mm, step-across: 70 mm, step-down: 30 mm}\n'

describe('label stock', () => {
  it('is read in millimetres, whatever it is written in', async () => {
    const [size] = await readLabelSizes(fileWith(sound))
    // 2.625 · 25.4
    expect(size).toMatchObject({ key: 'a', labelWidthMm: 66.675, labelHeightMm: 25.4, clearTailMm: 0, uses: [] })
  })

  it.each([
    ['without a unit', sound.replace('210 mm', '210'), /odd\.yaml: .*page-width/s],
    ['with labels off the sheet', sound.replace('columns: 2', 'columns: 3'), /odd\.yaml: .*do not fit/s],
    ['with a key twice', sound + sound, /odd\.yaml: a is there twice/],
    ['for a use that there is not', sound.replace('}', ', for: [sails]}'), /odd\.yaml: .*for/s],
  ])('%s throws with its name', async (_, text, message) => {
    await expect(readLabelSizes(fileWith(text))).rejects.toThrow(message)
  })
})

describe('danger texts', () => {
  it('are there for every danger, each with a signal word that fits the worst outcome', async () => {
    const { dangerTexts } = await readContent()
    // ANSI Z535.4, ISO 3864-2 as quoted in published guides: WARNING could cause death; CAUTION minor or moderate injury.
    expect(Object.fromEntries(dangerTexts.map(({ kind, signal }) => [kind, signal]))).toEqual({
      'mains': 'WARNING', 'shore inlet': 'WARNING', 'lead-acid battery': 'WARNING', 'lithium battery': 'WARNING', 'moving machine': 'WARNING', 'radiation': 'CAUTION',
      'several supplies': 'WARNING', 'live in light': 'WARNING', 'unprotected conductor': 'WARNING',
    })
  })
  it('of an unknown danger throw with the name of the file', async () => {
    await expect(readDangerTexts(fileWith('- {kind: sharks, signal: DANGER, title: A, text: B, where: C}'))).rejects.toThrow(/odd\.yaml: .*kind/s)
  })
})
