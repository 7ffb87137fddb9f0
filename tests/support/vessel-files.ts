/** Vessel folders in memory, as name → text, and findings as one line each. */
import type { LocatedFinding } from '../../src/findings/finding.js'
import { gatherEntries } from '../../src/load/gather-entries.js'
import { decode } from '../../src/load/read-folder.js'
import type { SourceFolder } from '../../src/load/source-folder.js'

export type Files = Readonly<Record<string, string>>

/** `attached`: names of files in the folder that are no data. */
export function sourceOf(files: Files, { catalogue = {}, attached = [] }: { catalogue?: Files; attached?: readonly string[] } = {}): SourceFolder {
  const read = (texts: Files, role: 'vessel' | 'catalogue') => Object.entries(texts).map(([name, text]) => decode(new TextEncoder().encode(text), name, role))
  return gatherEntries([...read(files, 'vessel'), ...read(catalogue, 'catalogue')], new Set([...Object.keys(files), ...attached]), [])
}

/**
 * `file:line:column id ⟨the text that is pointed at⟩`, the text to the end of its line at most; without a place,
 * `⟨what the finding is about⟩ id`.
 */
export const listed = (findings: readonly LocatedFinding[], texts: ReadonlyMap<string, string>): readonly string[] =>
  findings.map(({ at, id, subject }) => {
    if (at === null) return `⟨${subject.id}⟩ ${id}`
    const line = texts.get(at.file)?.split(/\r\n|\n|\r/)[at.line - 1] ?? ''
    return `${at.file}:${at.line}:${at.column} ${id} ⟨${line.slice(at.column - 1, at.endLine === at.line ? at.endColumn - 1 : undefined)}⟩`
  })

/** The files with one passage replaced, which must stand in the file exactly once. */
export function changed(files: Files, name: string, from: string, to: string): Files {
  const parts = (files[name] ?? '').split(from)
  if (parts.length !== 2) throw new Error(`"${from}" stands ${parts.length - 1} times in ${name}`)
  return { ...files, [name]: parts.join(to) }
}

/** A vessel with one of everything, without a fault. All names in it are invented. */
export const smallVessel: Files = {
  'vessel.yaml': `vessel:
  name: Tern
  model: Skerry 31
  hull-number: "007"
  mmsi: "002320001"
  length: 31 ft 6 in
  displacement: 4.2 t
  year-built: 2026
  basis: iso
  document:
    number: HP-1
    issued-on: 2026-05-04
  conditions:
    ambient: {machinery: 55 °C}
    cable-tail: 40 cm
changes:
  - issue: A
    date: 2026-05-04
    what: First issue.
systems:
  - tag: nav
    name: Navigation
zones:
  - {tag: helm, name: Helm, space: cockpit}
  - {tag: engine-space, name: Engine space, space: machinery, ignition-protection: true}
  - {tag: bilge, name: Bilge, space: bilge, ambient: 77 °F}
wireway-points:
  - {tag: J1, name: Behind the helm, zone: helm}
wireways:
  - {tag: WW1, from: helm, to: J1, length: 1.5 m, kind: tray}
  - tag: WW2
    from: J1
    to: engine-space
    length: 10 ft
    kind: conduit
    bore: 32 mm
    zones: [helm, bilge, engine-space]
`,
  'equipment.yaml': `models:
  - model: brook-7
    title: Brook 7
    maker: Brook
    kind: display
    supply-min: 9 V
    supply-max: 32 V
    current-typical: 800 mA
    current-max: 1.4 A
    load-equivalency: 2
    mass: 2 lb
    ports:
      - {name: power, kind: power}
      - {name: net, kind: ethernet, speed: 1 Gbit/s, power-class: 3}
equipment:
  - tag: P1
    name: Helm display
    model: brook-7
    zone: helm
    system: nav
    point: J1
    position: [4.10 m, -0.35 m, 6 ft]
    current-max: 1.5 A
    status: fitted
    documents:
      - {file: ./docs/p1.pdf, title: Certificate}
  - tag: K1
    name: Network switch
    kind: network switch
    zone: helm
  - tag: X9
    name: Spare connector
batteries:
  - tag: G1
    name: House battery
    zone: engine-space
    nominal-voltage: 12 V
    capacity: 200 Ah
    chemistry: lfp
busbars:
  - {tag: X1, name: Positive busbar, zone: engine-space, rating: 150 A}
panels:
  - tag: A1
    name: Helm panel
    kind: fuse panel
    zone: helm
    ways: 6
`,
  'circuits.yaml': `circuits:
  - tag: F1
    name: Main
    fed-from: G1
    protection: {type: "class T fuse", rating: 100 A}
    loads: [X1]
    zone: engine-space
  - tag: F2
    name: Feeder of the helm panel
    fed-from: X1
    protection: {type: "bolt-in fuse, small", rating: 30 A}
    loads: A1
    demand-factor: 0.6
  - tag: A1.1
    name: Helm display
    fed-from: A1
    way: 1
    protection:
      type: blade fuse
      rating: 5 A
    load-class: critical
    loads: P1 K1
can-buses:
  - tag: N1
    name: Main bus
    backbone:
      - {terminator: R1, zone: helm}
      - {segment: W10}
      - {tee: T1, zone: helm, device: P1, drop: W11}
      - {power: T2, circuit: A1.1}
      - {terminator: R2}
ethernet-networks:
  - {tag: N2, name: Network, switches: [K1]}
`,
  'cable-types.yaml': `cable-types:
  - {tag: 2x2.5, name: Two-core, use: power, cores: 2, size: 2.5 mm2, insulation: 105 °C, tinned: true, outer-diameter: 9 mm}
  - {tag: 1x6AWG, name: Single, use: power, cores: 1, size: 6 AWG}
  - {tag: can, name: Bus cable, use: can bus}
`,
  'cables.csv': `tag,from,to,type,route,length,carries
W1,A1.1,P1:power,2x2.5,,,
W2,X1:+,F2,1x6AWG,WW2 WW1,,
W10,R1,T1,can,,2 m,
W11,T1,P1,can,,50 cm,
W12,X9,X9,,,,none
`,
}
/** Files that the small vessel's entries list. */
export const smallVesselAttached = ['docs/p1.pdf']
