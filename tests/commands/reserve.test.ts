import { describe, expect, it } from 'vitest'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf, lampBoat } from '../support/vessel-folders.js'

/** The lamp boat with a fuse block of four ways; 12 V, cable tails of the usual length. */
function blockBoat(block = 'ways: 4, rating: 30 A'): string {
  const files = lampBoat()
  const wiring = files['wiring.yaml']!
    .replace('circuits:\n', `panels:\n  - {tag: A1, name: Fuse block, kind: fuse block, zone: cabin, ${block}}\ncircuits:\n`
      + '  - {tag: F9, name: Fuse block, fed-from: G1, protection: {type: blade fuse, rating: 30 A}, loads: [A1]}\n')
    .replace('fed-from: G1\n', 'fed-from: A1\n    way: 2\n')
    .replace('{tag: W1, from: G1, to: F1, type: 2x1.5, length: 0.2 m}', '{tag: W1, from: F9, to: A1, type: 2x6, length: 0.5 m}')
    .replace('cable-types:\n', 'cable-types:\n  - {tag: 2x6, name: Two thick cores, use: power, cores: 2, size: 6 mm2, insulation: 105 °C}\n')
  return folderOf({ ...files, 'wiring.yaml': wiring })
}

async function reserve(folder: string, ...options: string[]) {
  const ran = await runCommand(['reserve', folder, ...options], { workingFolder: temporaryFolder() })
  const plain = (text: string): string => text.replaceAll('\u00A0', ' ')
  return { code: ran.code, stdout: plain(ran.stdout), stderr: plain(ran.stderr) }
}

describe('asfitted reserve', () => {
  it('answers with the place, its free ways and every sum, and ends with 0', async () => {
    const { code, stdout, stderr } = await reserve(blockBoat(), '--current', '8 A', '--at', 'cabin', '--hours', '4 h')
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(stdout).toContain('Where 8.0 A at cabin (Cabin) can be taken from: 12 V d.c., general load, by ISO 13297.')
    expect(stdout).toContain('1. A1 Fuse block, from G1 Battery: fits')
    expect(stdout).toMatch(/ways free +1, 3, 4\n/)
    // The lamp takes 1 A; 30 A fuse.
    expect(stdout).toMatch(/feeder F9 +1\.0 A now, 9\.0 A with it; least margin, of protective device F9: 30 A − 9 A = 21 A, within/)
    expect(stdout).toMatch(/new cable, out and back: 0\.0164 · 8 A · .* m \/ .* mm² = /)
    expect(stdout).toContain('blade fuse of 10 A: at least 1 · 8 A = 8 A')
    expect(stdout).toContain('8 A · 4 h = 32 Ah')
    expect(stdout).toContain('local codes')
  })

  it('ends with 1 where no place fits, and says why', async () => {
    const { code, stdout } = await reserve(blockBoat(), '--current', '30 A', '--at', 'cabin')
    expect(code).toBe(1)
    expect(stdout).toContain('No panel, module or busbar can take it as it is.')
    expect(stdout).toContain('because feeder F9 would carry too much for its protective device and panel A1')
    expect(stdout).toMatch(/30 A − 31 A = -1 A, too little/)
    expect((await reserve(blockBoat('ways: 2, rating: 30 A'), '--current', '1 A', '--at', 'cabin')).code).toBe(0)
  })

  it('does not take what is not recorded for a fit', async () => {
    const { code, stdout } = await reserve(blockBoat('ways: 4'), '--current', '8 A', '--at', 'cabin')
    expect(code).toBe(1)
    expect(stdout).toContain('A1 Fuse block, from G1 Battery: not assessed')
    expect(stdout).toContain('because feeder F9: the rated current of panel A1 is not recorded')
  })

  it('takes an item, a name in whatever case, and the only zone of a kind of space, as the place', async () => {
    for (const at of ['E1', 'CABIN', 'lamp', 'interior']) expect((await reserve(blockBoat(), '--current', '800 mA', '--at', at)).code).toBe(0)
  })

  it('gives the same as JSON', async () => {
    const { code, stdout } = await reserve(blockBoat(), '--current', '8 A', '--at', 'cabin', '--critical', '--continuous', '--demand-factor', '.5', '--json')
    expect(code).toBe(0)
    expect(JSON.parse(stdout)).toMatchObject({
      atTag: 'cabin', fits: true, verdicts: [{ part: 'circuit', verdict: 'fits' }], notes: [], bus: null, network: null,
      circuit: {
        request: { currentA: 8, demandFactor: 0.5, loadClass: 'critical', continuous: true, nominalVoltageV: 12, form: 'dc', dailyH: null },
        places: [{ pointTag: 'A1', verdict: 'fits', protection: { ratedCurrentA: 10 }, feeders: [{ circuitTag: 'F9', beforeCurrentA: 1, afterCurrentA: 8 }] }],
      },
    })
  })

  it.each([
    [['--current', '8', '--at', 'cabin'], '--current "8": expected a current with its unit'],
    [['--current', '0 A', '--at', 'cabin'], 'a current above zero'],
    [['--current', '8 A', '--at', 'cabn'], 'did you mean "cabin"? Zones: cabin.'],
    [['--current', '8 A', '--at', 'xyzzy'], 'no zone, wireway point or item has this tag or name. Zones: cabin.'],
    [['--current', '8 A', '--at', 'cabin', '--voltage', '24 V'], 'No panel or busbar has 24 V: with --voltage give one of those on board (12 V d.c.).'],
    [['--current', '8 A', '--at', 'cabin', '--voltage', '24'], 'expected a voltage with its unit'],
    [['--current', '8 A', '--at', 'cabin', '--hours', '25 h'], '24 at most'],
    [['--current', '8 A', '--at', 'cabin', '--demand-factor', '2'], 'a number from 0 to 1'],
    [['--at', 'cabin'], 'what is to be added? Give at least one of --current "8 A"'],
    [['--at', 'cabin', '--hours', '4 h'], '--hours is about a circuit of its own: give --current as well'],
    [['--at', 'cabin', '--len', '4', '--critical'], '--critical is about a circuit of its own'],
    [['--current', '8 A'], '--at'],
    [['--at', 'cabin', '--len', '0'], '--len "0": a load equivalency number is expected, a whole number of 1 or more'],
    [['--at', 'cabin', '--len', '2.5'], '--len "2.5"'],
    [['--at', 'cabin', '--power-class', '9'], '--power-class "9": a class of power over the network cable is expected, 0 to 8.'],
    [['--at', 'cabin', '--model', 'lanp'], '--model "lanp": no model of the catalogue has this key. The catalogue holds no models.'],
  ])('refuses %j with 2 and a remedy', async (options, said) => {
    const { code, stdout, stderr } = await reserve(blockBoat(), ...options)
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toContain(said)
  })

  it('says that nothing is fed where no panel or busbar is', async () => {
    const { code, stderr } = await reserve(folderOf(lampBoat()), '--current', '1 A', '--at', 'cabin')
    expect({ code, stderr }).toMatchObject({ code: 2, stderr: expect.stringContaining('No panel or busbar of the vessel is fed from a source') })
  })

  it('shows what is wrong with the data where there is no vessel to ask', async () => {
    const { code, stdout } = await reserve(folderOf(lampBoat({ fuse: '3' })), '--current', '1 A', '--at', 'cabin')
    expect(code).toBe(1)
    expect(stdout).toContain('Nothing was calculated: mend the errors first.')
    expect((await reserve(temporaryFolder(), '--current', '1 A', '--at', 'cabin')).code).toBe(2)
  })

  it('does so as JSON for a program', async () => {
    const { code, stdout } = await reserve(folderOf(lampBoat({ fuse: '3' })), '--current', '1 A', '--at', 'cabin', '--json')
    expect(code).toBe(1)
    expect(JSON.parse(stdout)).toMatchObject({ findings: [expect.anything()], summary: { error: 1 }, notAssessedCount: null })
    expect(JSON.parse((await reserve(temporaryFolder(), '--current', '1 A', '--at', 'cabin', '--json')).stdout)).toMatchObject({ notAssessedCount: null })
  })

  it('asks which of several of one name is meant', async () => {
    const files = lampBoat()
    const places = `${files['places.yaml']}  - {tag: fore, name: Fore cabin, space: interior}\n  - {tag: aft, name: Store, space: locker}\n  - {tag: bow, name: Store, space: locker}\n`
    const folder = folderOf({ ...files, 'places.yaml': places })
    expect(await reserve(folder, '--len', '1', '--at', 'store')).toMatchObject({ code: 2, stderr: 'asfitted: --at "store": it may be aft (Store) and bow (Store). Give the tag of the one that is meant.\n' })
    expect((await reserve(folder, '--len', '1', '--at', 'locker')).stderr).toContain('it may be aft (Store) and bow (Store)')
    // No bus is on board, so it fits nowhere; but the place is found.
    for (const at of ['bow', 'Bow', 'Fore cabin']) expect(await reserve(folder, '--len', '1', '--at', at)).toMatchObject({ code: 1, stdout: expect.stringContaining('No CAN bus is recorded.') })
  })
})
