/** From a transmitter's connector along its cables, through splitters and connectors, to the antenna. */
import { type Attached, attachedAt, lookup } from '../../model/lookup.js'
import type { Cable, CableEnd, Equipment, Tag, Transmitter, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { inWords } from '../../findings/words.js'

export type WayStep =
  | { readonly is: 'cable'; readonly cable: Cable }
  | { readonly is: 'ports'; readonly item: Equipment; readonly fromTerminal: string; readonly toTerminal: string; readonly lossDb: number | null }
export interface Way { readonly antenna: Equipment | null; readonly steps: readonly WayStep[]; readonly gap: string | null }

const antennaKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['vhf antenna', 'gnss antenna', 'satellite antenna', 'mobile-data antenna', 'broadcast antenna'])
/** What passes everything on, connector to connector. */
const passingKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['connector', 'junction box'])
export const splitterKind: EquipmentKindKey = 'antenna splitter'

export const isAntenna = ({ kind, antenna, portLosses }: Equipment): boolean => antennaKinds.has(kind) || (antenna !== null && portLosses.length === 0)

export function wayOf(vessel: Vessel, item: Equipment, { terminal }: Transmitter): Way {
  if (terminal === null) return { antenna: item, steps: [], gap: null }
  const { equipment } = lookup(vessel)
  const found: { readonly antenna: Equipment; readonly steps: readonly WayStep[] }[] = []
  const open: string[] = []
  const seen = new Set<string>([`${item.tag}:${terminal}`])
  // The list grows while it is gone through: that is the queue.
  const places: Place[] = [{ item, terminal, steps: [], by: null }]
  for (const place of places) {
    for (const { cable, far } of onwardFrom(vessel, place)) {
      const next = equipment.get(far.tag)
      const key = `${far.tag}:${far.terminal}`
      if (next === undefined || next.status === 'removed') open.push(`${cable.tag} leads to nothing that is there`)
      else if (!seen.has(key)) {
        seen.add(key)
        const steps: readonly WayStep[] = [...place.steps, { is: 'cable', cable }]
        if (next.transmitters.length > 0) continue
        if (isAntenna(next)) found.push({ antenna: next, steps })
        else if (passingKinds.has(next.kind)) places.push({ item: next, terminal: null, steps, by: cable })
        else {
          const onward = through(vessel, next, far.terminal).filter(({ terminal: out }) => !seen.has(`${next.tag}:${out}`))
          if (onward.length === 0) open.push(`${cable.tag} leads to ${next.tag}, and from there no way to an antenna is recorded`)
          for (const { terminal: out, lossDb } of onward) {
            seen.add(`${next.tag}:${out}`)
            places.push({ item: next, terminal: out, steps: [...steps, { is: 'ports', item: next, fromTerminal: far.terminal ?? 'unnamed', toTerminal: out, lossDb }], by: cable })
          }
        }
      }
    }
  }
  const antennas = [...new Set(found.map(({ antenna }) => antenna.tag))]
  if (antennas.length === 1) return { ...found[0]!, gap: null }
  const gap = antennas.length > 1 ? `its cables lead to ${inWords(antennas)}, and which it uses is not known` : open[0] ?? `no coaxial cable is recorded at its connector ${terminal}`
  return { antenna: null, steps: [], gap }
}

interface Place { readonly item: Equipment; readonly terminal: string | null; readonly steps: readonly WayStep[]; readonly by: Cable | null }

/** From a connector of an item; of what only joins cables, by each of the others. */
const onwardFrom = (vessel: Vessel, { item, terminal, by }: Place): readonly Attached[] => (passingKinds.has(item.kind)
  ? coaxOn(vessel, item.tag).filter(({ cable }) => cable !== by) : coaxAt(vessel, item.tag, terminal))

/** Where the signal goes on inside an item: by its recorded losses; in a splitter without any, to every other connector. */
function through(vessel: Vessel, item: Equipment, terminal: string | null): readonly { readonly terminal: string; readonly lossDb: number | null }[] {
  if (item.portLosses.length > 0) {
    return item.portLosses.flatMap(({ fromTerminal, toTerminal, lossDb }) =>
      (fromTerminal === terminal ? [{ terminal: toTerminal, lossDb }] : toTerminal === terminal ? [{ terminal: fromTerminal, lossDb }] : []))
  }
  if (item.kind !== splitterKind) return []
  const others = coaxOn(vessel, item.tag).flatMap(({ near }) => near.terminal ?? []).filter(name => name !== terminal)
  return [...new Set(others)].map(out => ({ terminal: out, lossDb: null }))
}

const fitted = ({ status }: Cable): boolean => status !== 'removed'

/** A type that is recorded says it; else the connector at one of the ends. */
function isCoax(vessel: Vessel, { typeTag, from, to }: Cable): boolean {
  const { cableTypes, equipment } = lookup(vessel)
  const type = typeTag === null ? undefined : cableTypes.get(typeTag)
  if (type !== undefined) return type.use === 'coax'
  return [from, to].some(({ tag, terminal }) => equipment.get(tag)?.ports.some(port => port.kind === 'coax' && port.name === terminal) ?? false)
}

/** Every coaxial cable of an item, with its end there and its other end. */
const coaxOn = (vessel: Vessel, tag: Tag): readonly (Attached & { readonly near: CableEnd })[] =>
  (lookup(vessel).cablesAt.get(tag) ?? []).filter(cable => fitted(cable) && isCoax(vessel, cable)).flatMap(cable => [
    ...(cable.from.tag === tag ? [{ cable, near: cable.from, far: cable.to }] : []),
    ...(cable.to.tag === tag ? [{ cable, near: cable.to, far: cable.from }] : []),
  ])

/** At a connector; where none is named on the cable, the only coaxial cable of the item. */
function coaxAt(vessel: Vessel, tag: Tag, terminal: string | null): readonly Attached[] {
  const named = terminal === null ? [] : attachedAt(lookup(vessel), tag, terminal).filter(({ cable }) => fitted(cable))
  if (named.length > 0) return named
  const unnamed = coaxOn(vessel, tag).filter(({ near }) => near.terminal === null)
  return unnamed.length === 1 ? unnamed : []
}
