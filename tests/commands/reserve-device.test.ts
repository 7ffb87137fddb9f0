/** `asfitted reserve` for a device on a CAN bus or a network. The sums are redone by hand beside each text. */
import { describe, expect, it } from 'vitest'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf } from '../support/vessel-folders.js'

/**
 * helm -4 m- cabin, tails of 0.5 m. N1: free tee X2 at the insertion X1 at the helm (13.8 V), 10 m of light cable, X3 with P1 of LEN 10
 * in the cabin. K1: a switch at the helm with 40 W, a camera of class 2 in port 1. A1: a fuse block at the helm.
 */
const deviceBoat = (): string => folderOf({
  'vessel.yaml': 'vessel: {name: Device boat, basis: iso}\n',
  'places.yaml': `zones:
  - {tag: helm, name: Helm, space: interior}
  - {tag: cabin, name: Cabin, space: interior}
  - {tag: bow, name: Bow, space: deck}
wireways:
  - {tag: C1, from: helm, to: cabin, length: 4 m, kind: clipped}
  - {tag: C2, from: cabin, to: bow, length: 8 m, kind: clipped}
`,
  'wiring.yaml': `cable-types:
  - {tag: 2x6, name: Two cores, use: power, cores: 2, size: 6 mm2, insulation: 105 °C}
  - {tag: light, name: Bus cable, use: can bus, bus-cable: light}
  - {tag: eth, name: Network cable, use: ethernet, cores: 8}
batteries:
  - {tag: G1, name: Battery, zone: helm, nominal-voltage: 12 V, chemistry: agm, capacity: 50 Ah, internal-resistance: 20 mohm}
panels:
  - {tag: A1, name: Fuse block, kind: fuse block, zone: helm, ways: 4, rating: 30 A}
circuits:
  - {tag: F1, name: Fuse block, fed-from: G1, protection: {type: blade fuse, rating: 30 A}, loads: [A1]}
  - {tag: F2, name: Bus, fed-from: A1, way: 1, protection: {type: blade fuse, rating: 3 A}, loads: [X1]}
cables:
  - {tag: W1, from: F1, to: A1, type: 2x6, length: 0.5 m}
  - {tag: W2, from: F2, to: X1, type: 2x6, length: 0.5 m}
  - {tag: W3, from: X2, to: X3, type: light, length: 10 m}
  - {tag: W4, from: X3, to: P1, type: light, length: 1 m}
  - {tag: W5, from: 'K1:p1', to: 'B1:lan', type: eth, length: 10 m}
`,
  'devices.yaml': `models:
  - model: panel-9
    title: Panel 9
    kind: display
    current-max: 3 A
    load-equivalency: 2
    sends: [{pgn: 126993}]
    ports: [{name: lan, kind: ethernet, speed: 100 Mbit/s}, {name: can, kind: can bus}]
  - model: gauge
    title: Gauge
    kind: instrument
    current-max: 90 mA
    load-equivalency: 2
    ports: [{name: can, kind: can bus}]
  - {model: eye, title: Eye, kind: camera, current-max: 1 A, ports: [{name: lan, kind: ethernet, speed: 100 Mbit/s, power-class: 3}]}
  - {model: puzzle, title: Puzzle, kind: instrument, current-max: 1 A, ports: [{name: can, kind: can bus}]}
  - {model: stone, title: Stone}
equipment:
  - {tag: X1, name: Insertion, kind: can bus tee, zone: helm, current-max: 3 A}
  - {tag: P1, name: Instrument, kind: instrument, zone: cabin, load-equivalency: 10, sends: [{pgn: 126993}]}
  - {tag: B1, name: Camera, kind: camera, zone: helm, network-power: 4 W, address: 192.168.5.2, ports: [{name: lan, kind: ethernet, speed: 100 Mbit/s, power-class: 2}]}
  - tag: K1
    name: Switch
    kind: network switch
    zone: helm
    power-budget: 40 W
    power-voltage: 50 V
    address: 192.168.5.1
    ports:
      - {name: p1, kind: ethernet, speed: 1000 Mbit/s, power-class: 3}
      - {name: p2, kind: ethernet, speed: 1000 Mbit/s, power-class: 3}
      - {name: p3, kind: ethernet, speed: 1000 Mbit/s}
can-buses:
  - tag: N1
    name: Bus
    backbone:
      - {terminator: R1, zone: helm}
      - {power: X1, zone: helm, circuit: F2, voltage: 13.8 V}
      - {tee: X2, zone: helm}
      - {segment: W3}
      - {tee: X3, zone: cabin, device: P1, drop: W4}
      - {terminator: R2, zone: cabin}
ethernet-networks:
  - {tag: LAN1, name: Network, subnet: 192.168.5.0/24, switches: [K1]}
`,
})

async function reserve(...options: string[]) {
  const ran = await runCommand(['reserve', deviceBoat(), ...options], { workingFolder: temporaryFolder() })
  const plain = (text: string): string => text.replaceAll('\u00A0', ' ')
  return { code: ran.code, stdout: plain(ran.stdout), stderr: plain(ran.stderr) }
}

describe('a device on a CAN bus', () => {
  it('is told where it may go, with every sum', async () => {
    const { code, stdout, stderr } = await reserve('--len', '4', '--at', 'cabin')
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(stdout).toContain('Where a device of LEN 4 at cabin (Cabin) can join a CAN bus: it takes 4 · 0.05 A = 0.2 A of the bus')
    expect(stdout).toContain('1. N1 Bus: fits')
    expect(stdout).toContain('Nearest that fits: a new tee beside X3, cabin (Cabin)')
    expect(stdout).toContain('1.00 m within one place: 0 m + 2 · 0.5 m; limit 6.00 m')
    // Resistance of 10 m out and back: 2 · 10 · 0.057 = 1.14 Ω. Now 0.5 A: 0.57 V; of an isolated supply 3 V may go: 2.43 / 0.057 = 42.6.
    expect(stdout).toContain('20 as the bus is now: one device takes at most LEN 20')
    expect(stdout).toContain('the bus could give 42 by voltage drop to X3: 2.43 V / (0.05 A · 1.14 Ω), rounded down; with a drop of 6 m')
    // 0.57 + 0.228
    expect(stdout).toContain('X3: 0.57 V lost from the insertion now; with it 0.57 V + 0.2 A · 1.14 Ω = 0.798 V')
    expect(stdout).toContain('voltage there: 13.8 V − 0.57 V = 13.23 V now, 13.8 V − 0.798 V = 13.00 V with it')
    // 2 · 0.057 · 1 · 0.2 = 0.0228; 13.002 − 0.0228 = 12.9792
    expect(stdout).toContain('13.002 V at the tee less the drop cable, 2 · 0.057 Ω/m · 1 m · 0.2 A = 0.0228 V: 12.98 V, at least 9.00 V')
    expect(stdout).toContain('LEN 10 now, 14 with it: 14 · 0.05 A = 0.7 A through F2, whose device has 3 A')
    expect(stdout).toContain('48 devices, 76.00 m of drops')
    expect(stdout).toContain('without what the new device sends')
    expect(stdout).toContain('local codes')
  })

  it('prefers a free tee', async () => {
    expect((await reserve('--len', '4', '--at', 'helm')).stdout).toContain('Nearest that fits: free tee X2, helm (Helm)')
  })

  it('ends with 1 where the drop would be too long, and tells what a longer backbone would come to', async () => {
    // 8 m + 2 · 0.5 m; 10 m of backbone and 1 m of its last drop: 11 + 18 = 29 m.
    const { code, stdout } = await reserve('--len', '4', '--at', 'bow')
    expect(code).toBe(1)
    expect(stdout).toContain('because the drop would be 9.00 m (29.5 ft) long, limit 6.00 m (19.7 ft)')
    expect(stdout).toContain('11 m + 2 · 9 m = 29 m, limit 100 m, within')
    expect(stdout).toContain('- X2: the drop would be 13.00 m')
  })
})

describe('a device on a network', () => {
  it('is told port, power, cable and address, with every sum', async () => {
    const { code, stdout, stderr } = await reserve('--power-class', '3', '--at', 'cabin')
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(stdout).toContain('Where a device of power class 3 at cabin (Cabin) can be plugged in: its class reserves 15.4 W of the switch for 12.95 W at the device')
    expect(stdout).toContain('1. K1 Switch, in LAN1 Network: fits')
    expect(stdout).toContain('p2: class 3, 1000 Mbit/s; free besides: p3')
    expect(stdout).toContain('5.00 m by C1: 4 m + 2 · 0.5 m; limit 100.00 m')
    expect(stdout).toContain('40 W − 7 W = 33 W left now')
    expect(stdout).toContain('40 W − 22.4 W = 17.6 W with it')
    // 5 m · 0.2 Ω/m = 1 Ω; 50 · I − I² = 12.95: I = (50 − √2448.2) / 2 = 0.26035 A; 12.95 + 0.06778 = 13.01778 W
    expect(stdout).toContain('12.95 W at the device + 1 Ω · (0.2604 A)² = 13.02 W, from 50.00 V')
    expect(stdout).toContain('192.168.5.3 is free next, of 252 free in 192.168.5.0/24')
  })

  it('ends with 1 where no port gives its class', async () => {
    const { code, stdout } = await reserve('--power-class', '4', '--at', 'cabin')
    expect(code).toBe(1)
    expect(stdout).toContain('because no free port gives class 4; the most is class 3, at port p2')
  })

  it('takes a plain port without power', async () => {
    const { code, stdout } = await reserve('--ethernet', '--at', 'cabin')
    expect(code).toBe(0)
    expect(stdout).toContain('p3: no power, 1000 Mbit/s; free besides: p2')
    expect(stdout).not.toContain('by class')
  })
})

describe('a device that needs several things', () => {
  it('has a part for each, and fits when all fit', async () => {
    const { code, stdout } = await reserve('--current', '3 A', '--len', '2', '--ethernet', '--at', 'cabin')
    expect(code).toBe(0)
    expect(stdout).toMatch(/^One device at cabin \(Cabin\): circuit: fits; CAN bus: fits; network: fits\.\n/)
    expect(stdout.match(/^Where /gm)).toHaveLength(3)
    expect(await reserve('--current', '3 A', '--len', '2', '--power-class', '5', '--at', 'cabin')).toMatchObject({ code: 1, stdout: expect.stringContaining('circuit: fits; CAN bus: fits; network: does not fit.') })
  })

  it('gives the parts as JSON', async () => {
    const { code, stdout } = await reserve('--len', '4', '--power-class', '3', '--at', 'cabin', '--json')
    expect(code).toBe(0)
    expect(JSON.parse(stdout)).toMatchObject({
      atTag: 'cabin', fits: true, circuit: null, verdicts: [{ part: 'CAN bus', verdict: 'fits' }, { part: 'network', verdict: 'fits' }],
      bus: { request: { loadEquivalencyNumber: 4 }, buses: [{ busTag: 'N1', verdict: 'fits', spots: [{ atTeeTag: 'X3', how: 'new tee', drop: { value: 1 } }, { atTeeTag: 'X2', how: 'free tee', drop: { value: 5 } }] }] },
      network: { request: { powerClass: 3 }, switches: [{ switchTag: 'K1', verdict: 'fits', port: { name: 'p2' }, address: { nextFree: '192.168.5.3' } }] },
    })
  })
})

describe('a model of the catalogue', () => {
  const askedBy = async (...options: string[]) => {
    const { circuit, bus, network, notes } = JSON.parse((await reserve('--at', 'cabin', '--json', ...options)).stdout)
    return { currentA: circuit?.request.currentA ?? null, len: bus?.request.loadEquivalencyNumber ?? null, network: network === null ? null : network.request.powerClass ?? 'plain', notes }
  }
  it('tells what it needs: a circuit, a place on the bus, a port', async () => {
    expect(await askedBy('--model', 'panel-9')).toEqual({ currentA: 3, len: 2, network: 'plain', notes: [] })
    expect((await reserve('--at', 'cabin', '--model', 'panel-9')).stdout).toContain('with what the new device sends')
  })
  it('needs no circuit where the bus or the network cable feeds it', async () => {
    expect(await askedBy('--model', 'gauge')).toMatchObject({ currentA: null, len: 2, network: null })
    expect(await askedBy('--model', 'eye')).toMatchObject({ currentA: null, len: null, network: 3 })
  })
  it('gives way to options', async () => {
    expect(await askedBy('--model', 'panel-9', '--current', '5 A', '--len', '7', '--power-class', '1')).toMatchObject({ currentA: 5, len: 7, network: 1 })
  })
  it('says what it does not record', async () => {
    expect((await askedBy('--model', 'puzzle')).notes).toEqual(['How much puzzle takes of a CAN bus is not recorded: give --len, or enter its load equivalency.'])
    expect(await reserve('--at', 'cabin', '--model', 'stone')).toMatchObject({ code: 2, stderr: expect.stringContaining('--model "stone": it records no current, no load equivalency and no network port.') })
    expect(await reserve('--at', 'cabin', '--model', 'panel9')).toMatchObject({ code: 2, stderr: expect.stringContaining('did you mean "panel-9"? Models: panel-9, gauge, eye, puzzle and stone.') })
    expect(await reserve('--at', 'cabin', '--model', 'eye', '--hours', '4 h')).toMatchObject({ code: 2, stderr: expect.stringContaining('--hours is about a circuit of its own') })
  })
})
