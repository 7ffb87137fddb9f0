/** What room is left on a bus: devices, drops, load, and at each tee the largest device that may be added. */
import type { Backbone, BusLengths, BusLoad, BusRoom, BusSupply, SolvedSection, Stretch, TeeRoom, TeeSupply } from '../../model/results/can-bus.js'
import type { Outcome } from '../../model/results.js'
import { busCables, deviceLenLimit, lowestDeviceV, newDrop } from '../../references/tables/can-rules.js'
import type { Quantities } from '../../units/quantity.js'
import { runMethod } from '../run-method.js'
import { lenByCurrentMethod, lenByVoltageMethod } from './len-left.calc.js'

export function roomOf(backbone: Backbone, lengths: BusLengths, supply: BusSupply, load: BusLoad): BusRoom {
  const isFree = (position: number): boolean => backbone.stations[position]!.device === null
  return {
    devicesLeft: Math.max(0, lengths.devices.margin),
    dropsLeftM: lengths.dropsComparison === null ? null : Math.max(0, lengths.dropsComparison.margin),
    loadLeftPercent: load.total.status === 'computed' ? Math.max(0, load.comparison.margin) : null,
    freeTeeTags: backbone.stations.filter(({ part, device }) => part.kind === 'tee' && device === null).map(({ part }) => part.tag),
    tees: supply.sections.flatMap(({ solved }) => (solved === null ? [] : solved.tees.map(tee => roomAt(solved, tee, isFree(tee.position))))),
    missing: supply.sections.flatMap(({ solved, missing }) => (solved === null ? missing : [])),
  }
}

type Left = NonNullable<TeeRoom['governed']>

/** The device would add its current to everything between the insertion and its tee. */
function roomAt(section: SolvedSection, tee: TeeSupply, free: boolean): TeeRoom {
  const found = [...byVoltage(section, tee), ...byCurrent(section, tee)]
  const governed = found.reduce<Left | null>((least, left) => (least === null || unitsIn(left) < unitsIn(least) ? left : least), null)
  return { tag: tee.tag, free, lenLeftNumber: Math.min(deviceLenLimit.value, governed === null ? Infinity : unitsIn(governed)), governed }
}
const unitsIn = ({ by }: Left): number => by.output.lenLeftNumber

/** What is lost along the backbone starts at the insertion; what arrives at a device falls by what the circuit before it loses more as well. */
function byVoltage({ tees, insertion }: SolvedSection, tee: TeeSupply): readonly Left[] {
  const feedOhm = insertion.feedResistanceOhm ?? 0
  const along = tees.filter(({ side }) => side === tee.side)
  const sharedOhm = (other: (typeof tees)[number]): number => (other.side === tee.side ? shared(tee, other) : 0)
  const newDropOhm = (2 * newDrop.lengthM * busCables[newDrop.cable].resistanceOhmPerKm) / 1000
  return [
    ...along.flatMap(other => voltageLeft(other.drop.margin, shared(tee, other), `voltage drop to ${other.tag}`)),
    ...tees.flatMap(other => (other.device === null ? [] : voltageLeft(other.device.lowest.margin, feedOhm + sharedOhm(other), `voltage at ${other.device.tag}`))),
    ...(tee.voltageV === null ? [] : voltageLeft(tee.voltageV - lowestDeviceV.value, feedOhm + tee.loopResistanceOhm + newDropOhm, 'voltage at the new device')),
  ]
}

/** Out and back, of the way that both have in common. */
const shared = (one: Pick<TeeSupply, 'loopResistanceOhm'>, other: Pick<TeeSupply, 'loopResistanceOhm'>): number => Math.min(one.loopResistanceOhm, other.loopResistanceOhm)

function byCurrent({ legs, againstProtection, insertion }: SolvedSection, tee: TeeSupply): readonly Left[] {
  const stretches = legs.find(({ side }) => side === tee.side)?.stretches ?? []
  const onTheWay = stretches.filter((_, i) => distanceTo(stretches, i) <= tee.distanceM)
  return [
    ...onTheWay.flatMap(({ current, cableTag }) => (current === null ? [] : currentLeft(current.margin, `current in ${cableTag}`))),
    ...(againstProtection === null ? [] : currentLeft(againstProtection.margin, `protective device ${insertion.circuitTag}`)),
  ]
}

const distanceTo = (stretches: readonly Stretch[], i: number): number => stretches.slice(0, i + 1).reduce((sum, { drop }) => sum + drop.input.lengthM, 0)

const voltageLeft = (marginV: number, resistanceOhm: number, words: string): readonly Left[] => leftBy(runMethod(lenByVoltageMethod, { marginV, resistanceOhm }), words)
const currentLeft = (marginA: number, words: string): readonly Left[] => leftBy(runMethod(lenByCurrentMethod, { marginA }), words)
const leftBy = <In extends Quantities>(by: Outcome<In, { lenLeftNumber: number }>, words: string): readonly Left[] => (by.status === 'computed' ? [{ words, by }] : [])
