/** Vessel folders on disk, as little as shows one thing. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { temporaryFolder } from './temporary-folder.js'

export function folderOf(files: Readonly<Record<string, string>>): string {
  const folder = join(temporaryFolder(), 'boat')
  mkdirSync(folder)
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), text)
  }
  return folder
}

/** One battery, one panel, one lamp on one circuit; `lampCable` is the length of the lamp's cable, out and back in one sheath. */
export const lampBoat = ({ name = 'Lamp boat', fuse = '3 A', lampCable = '2.0 m' } = {}): Readonly<Record<string, string>> => ({
  'vessel.yaml': `vessel: {name: ${name}, basis: iso}\n`,
  'places.yaml': 'zones:\n  - {tag: cabin, name: Cabin, space: interior, from: [0 m, -1 m, 0 m], to: [2 m, 1 m, 2 m]}\n',
  'wiring.yaml': `cable-types:
  - {tag: 2x1.5, name: Two cores, use: power, cores: 2, size: 1.5 mm2, insulation: 105 °C, outer-diameter: 7 mm}
batteries:
  - {tag: G1, name: Battery, zone: cabin, nominal-voltage: 12 V, chemistry: agm, capacity: 50 Ah, internal-resistance: 20 mohm}
equipment:
  - {tag: E1, name: Lamp, kind: light, zone: cabin, current-max: 1 A}
circuits:
  - tag: F1
    name: Lamp
    fed-from: G1
    protection: {type: blade fuse, rating: ${fuse}}
    load-class: critical
    loads: [E1]
cables:
  - {tag: W1, from: G1, to: F1, type: 2x1.5, length: 0.2 m}
  - {tag: W2, from: F1, to: E1, type: 2x1.5, length: ${lampCable}}
operating-modes:
  - {tag: evening, name: Evening}
duties:
  - {item: E1, mode: evening, hours: '19:00-23:00'}
`,
})
