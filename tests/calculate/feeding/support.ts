/** A small boat that the feeding tests add to: a battery, an isolator, a main fuse, a busbar and a panel of four ways. */
import { feedingPass } from '../../../src/calculate/feeding/index.js'
import type { Segment } from '../../../src/model/results.js'
import type { Circuit, Equipment, Vessel } from '../../../src/model/vessel.js'
import { aBattery, aBusbar, aCable, aCircuit, anEquipment, aPanel, aVessel } from '../../support/vessel-builder.js'

/** `W5: A1.1 > P1` */
export function cables(...written: readonly string[]): ReturnType<typeof aCable>[] {
  return written.map(text => {
    const [, tag, from, to] = /^(\S+): (\S+) > (\S+)$/.exec(text) ?? []
    if (tag === undefined || from === undefined || to === undefined) throw new Error(`not a cable: ${text}`)
    return aCable({ tag, from, to })
  })
}

export const load = (tag: string, currentMaxA: number | null = null, given: Partial<Equipment> = {}): Equipment =>
  anEquipment({ tag, currentMaxA, ...given })
export const junction = (tag: string, kind = 'junction box'): Equipment => anEquipment({ tag, kind })
export const circuit = (tag: string, loadTags: readonly string[], given: Partial<Circuit> = {}): Circuit =>
  aCircuit({ tag, fedFromTag: 'A1', loadTags, ...given })

interface Added { equipment?: readonly Equipment[]; circuits?: readonly Circuit[]; cables?: readonly ReturnType<typeof aCable>[] }

/**
 *   G1 ─WM1─ Q1 ─WM2─ F1 ─WM3─ X1 ─WM4─ F2 ─WM5─ A1 ─ ways A1.1 …
 */
export const boat = ({ equipment = [], circuits = [], cables: more = [] }: Added = {}, given: Partial<Vessel> = {}): Vessel => aVessel({
  batteries: [aBattery({ tag: 'G1' })],
  busbars: [aBusbar({ tag: 'X1' })],
  panels: [aPanel({ tag: 'A1', ways: 4 })],
  equipment: [junction('Q1', 'battery isolator'), ...equipment],
  circuits: [
    aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['X1'] }),
    aCircuit({ tag: 'F2', fedFromTag: 'X1', loadTags: ['A1'] }),
    ...circuits,
  ],
  cables: [...cables('WM1: G1 > Q1', 'WM2: Q1 > F1', 'WM3: F1 > X1', 'WM4: X1 > F2', 'WM5: F2 > A1'), ...more],
  ...given,
})

export function feed(vessel: Vessel, tag: string) {
  const { byCircuit, findings } = feedingPass(vessel)
  const found = byCircuit.get(tag)
  if (found === undefined) throw new Error(`no circuit ${tag}`)
  return { ...found, findings, ids: findings.map(({ id }) => id) }
}

/** `W5: A1.1 > J1, 6 A` */
export const inWords = (segments: readonly Segment[]): string[] =>
  segments.map(({ cableTag, nearTag, farTag, currentA }) => `${cableTag}: ${nearTag} > ${farTag}, ${currentA === null ? 'not known' : `${currentA} A`}`)

export const messages = (vessel: Vessel): string[] => feedingPass(vessel).findings.map(({ id, message }) => `${id} ${message}`)
