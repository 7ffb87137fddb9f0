/** What `asfitted reserve` is asked, as typed and as meant. */
import type { Examined } from '../build.js'
import type { BusRequest } from '../calculate/reserve/on-bus.js'
import type { NetworkRequest } from '../calculate/reserve/on-network.js'
import { placeNamed } from '../calculate/reserve/place-named.js'
import { didYouMean, nearest } from '../findings/nearest.js'
import { inWords } from '../findings/words.js'
import { lookup } from '../model/lookup.js'
import type { SupplyForm, Tag, Vessel } from '../model/vessel.js'
import { currentPerLenA } from '../references/tables/can-rules.js'
import { powerClasses } from '../references/tables/poe-classes.js'
import { say } from '../units/format.js'
import { type Dimension, type DimensionValue, parseQuantity } from '../units/parse-quantity.js'
import { formInWords } from './reserve-circuit-text.js'
import { Unusable } from './surroundings.js'

/** As typed. */
export interface ReserveOptions {
  readonly at: string
  readonly current?: string
  readonly voltage?: string
  readonly hours?: string
  readonly demandFactor?: string
  readonly critical?: true
  readonly continuous?: true
  readonly len?: string
  readonly powerClass?: string
  readonly ethernet?: true
  /** Key of a model of the catalogue. */
  readonly model?: string
  readonly catalogue?: string
  readonly json?: true
}

/** What is asked; a part that is not is null. */
export interface Asked {
  readonly circuit: { readonly currentA: number; readonly dailyH: number | null; readonly demandFactor: number; readonly voltageV: number | null } | null
  readonly bus: Pick<BusRequest, 'loadEquivalencyNumber' | 'sends'> | null
  readonly network: Pick<NetworkRequest, 'powerClass'> | null
  /** What a model does not tell, in sentences. */
  readonly notes: readonly string[]
}

/** What the options say by themselves, before the vessel is read. */
export interface Typed extends Omit<Asked, 'circuit' | 'notes'> {
  readonly currentA: number | null
  readonly terms: Omit<NonNullable<Asked['circuit']>, 'currentA'>
}

export function read(options: ReserveOptions): Typed {
  const { current, len, powerClass, ethernet, model } = options
  const typed: Typed = {
    currentA: current === undefined ? null : readCurrent(current),
    terms: readTerms(options),
    bus: len === undefined ? null : { loadEquivalencyNumber: readLen(len), sends: null },
    network: powerClass !== undefined ? { powerClass: readPowerClass(powerClass) } : ethernet ? { powerClass: null } : null,
  }
  if (model !== undefined) return typed
  if (typed.currentA === null) refuseIdle(options)
  if (typed.currentA === null && typed.bus === null && typed.network === null) {
    throw new Unusable('what is to be added? Give at least one of --current "8 A" (a circuit of its own), --len 4 (a device on a CAN bus), --power-class 3 (fed over its network cable), --ethernet (a network port without power), or --model with a model of the catalogue.')
  }
  return typed
}

const onlyWithCurrent = { voltage: '--voltage', hours: '--hours', demandFactor: '--demand-factor', critical: '--critical', continuous: '--continuous' } as const

function refuseIdle(options: ReserveOptions): void {
  const idle = (Object.keys(onlyWithCurrent) as (keyof typeof onlyWithCurrent)[]).find(key => options[key] !== undefined)
  if (idle !== undefined) throw new Unusable(`${onlyWithCurrent[idle]} is about a circuit of its own: give --current as well, or leave it out.`)
}

/** Options first; what they leave open is taken of the model. */
export function askedOf({ currentA, terms, bus, network }: Typed, options: ReserveOptions, models: Examined['models']): Asked {
  const model = options.model === undefined ? null : needsOf(options.model, models)
  const current = currentA ?? model?.currentA ?? null
  const asked: Asked = {
    circuit: current === null ? null : { currentA: current, ...terms },
    bus: bus === null ? model?.bus ?? null : { ...bus, sends: model?.bus?.sends ?? null },
    network: network ?? model?.network ?? null,
    notes: bus === null && model?.lacksLen ? [`How much ${options.model} takes of a CAN bus is not recorded: give --len, or enter its load equivalency.`] : [],
  }
  if (current === null) refuseIdle(options)
  if (asked.circuit === null && asked.bus === null && asked.network === null) {
    throw new Unusable(`--model "${options.model}": it records no current, no load equivalency and no network port. Enter them in the catalogue, or give --current, --len, --power-class or --ethernet as well.`)
  }
  return asked
}

interface Needs extends Omit<Asked, 'circuit' | 'notes'> {
  readonly currentA: number | null
  readonly lacksLen: boolean
}

/** What a model needs of the vessel, by its facts in the catalogue. */
function needsOf(key: string, models: Examined['models']): Needs {
  const model = models.get(key)
  if (model === undefined) {
    const known = models.size === 0 ? 'The catalogue holds no models.' : `Models: ${inWords([...models.keys()])}.`
    throw new Unusable(`--model "${key}": no model of the catalogue has this key${didYouMean(nearest(key, [...models.keys()]) ?? undefined) || '.'} ${known}`)
  }
  const { ports, loadEquivalencyNumber, sends } = model
  const network = ports.filter(({ kind }) => kind === 'ethernet').toSorted((a, b) => (b.powerClass ?? -1) - (a.powerClass ?? -1))[0]
  const takenCurrentA = model.currentMaxA ?? model.currentTypicalA
  // What lives on its network cable, or on the bus, needs no circuit.
  const isFedElsewhere = (network?.powerClass ?? null) !== null
    || (takenCurrentA !== null && loadEquivalencyNumber !== null && takenCurrentA <= loadEquivalencyNumber * currentPerLenA)
  return {
    currentA: isFedElsewhere ? null : takenCurrentA,
    bus: loadEquivalencyNumber === null ? null : { loadEquivalencyNumber, sends: sends.map(message => ({ ...message, terminal: null })) },
    network: network === undefined ? null : { powerClass: network.powerClass },
    lacksLen: loadEquivalencyNumber === null && ports.some(({ kind }) => kind === 'can bus'),
  }
}

function readCurrent(written: string): number {
  const currentA = readQuantity('--current', written, 'current')
  if (!(currentA > 0)) throw new Unusable(`--current "${written}": a current above zero is expected.`)
  return currentA
}

function readTerms({ voltage, hours, demandFactor = '1' }: ReserveOptions): Typed['terms'] {
  const dailyH = hours === undefined ? null : readQuantity('--hours', hours, 'duration')
  if (dailyH !== null && dailyH > 24) throw new Unusable(`--hours "${hours}": hours of a day are expected, 24 at most.`)
  const factor = /^\d*\.?\d+$/.test(demandFactor) ? Number(demandFactor) : Number.NaN
  if (!(factor >= 0 && factor <= 1)) throw new Unusable(`--demand-factor "${demandFactor}": a number from 0 to 1 is expected, for example 0.5.`)
  return { dailyH, demandFactor: factor, voltageV: voltage === undefined ? null : readQuantity('--voltage', voltage, 'voltage') }
}

function readQuantity<D extends Dimension>(option: string, written: string, dimension: D): DimensionValue<D> {
  const parsed = parseQuantity(written, dimension)
  if (!parsed.ok) throw new Unusable(`${option} "${written}": expected ${parsed.expected}.`)
  return parsed.value
}

const wholeNumber = (written: string): number => (/^\d{1,4}$/.test(written) ? Number(written) : Number.NaN)

function readLen(written: string): number {
  const len = wholeNumber(written)
  if (!(len >= 1)) throw new Unusable(`--len "${written}": a load equivalency number is expected, a whole number of 1 or more; each stands for 50 mA.`)
  return len
}

function readPowerClass(written: string): number {
  const classNumber = wholeNumber(written)
  if (!powerClasses.some(each => each.classNumber === classNumber)) throw new Unusable(`--power-class "${written}": a class of power over the network cable is expected, 0 to 8.`)
  return classNumber
}

/** The supply that is meant: of the voltage asked for, else the only direct current on board. */
export function supplyAsked({ results }: Examined, voltageV: number | null): { readonly nominalVoltageV: number; readonly form: SupplyForm } {
  const known = new Map<string, { readonly nominalVoltageV: number; readonly form: SupplyForm }>()
  for (const { nominalVoltageV, supplyForm: form } of results.reserve.byPoint.values()) {
    if (nominalVoltageV !== null && form !== null) known.set(`${nominalVoltageV} ${form}`, { nominalVoltageV, form })
  }
  const supplies = [...known.values()]
  if (supplies.length === 0) throw new Unusable('No panel or busbar of the vessel is fed from a source. Enter what feeds them: asfitted check tells where it is missing.')
  const onBoard = inWords(supplies.map(supplyText))
  const direct = supplies.filter(({ form }) => form === 'dc')
  if (voltageV === null) {
    if (direct.length === 1) return direct[0]!
    throw new Unusable(`${direct.length === 0 ? 'No direct current is' : 'Several supplies are'} on board (${onBoard}): say with --voltage which is meant.`)
  }
  const meant = [...direct, ...supplies].find(({ nominalVoltageV }) => nominalVoltageV === voltageV)
  if (meant === undefined) throw new Unusable(`No panel or busbar has ${say('nominalVoltageV', voltageV)}: with --voltage give one of those on board (${onBoard}).`)
  return meant
}

const supplyText = ({ nominalVoltageV, form }: { readonly nominalVoltageV: number; readonly form: SupplyForm }): string =>
  `${say('nominalVoltageV', nominalVoltageV)} ${formInWords(form)}`

interface Named { readonly tag: Tag; readonly name: string }

/** A place by its tag or, in whatever case, its name; else the only zone of that kind of space. */
export function placeAsked(vessel: Vessel, written: string): Tag {
  const { items } = lookup(vessel)
  const things: readonly Named[] = [...vessel.zones, ...vessel.points, ...items.values()]
  const alike = (text: string): boolean => text.toLowerCase() === written.trim().toLowerCase()
  const ways: readonly (readonly Named[])[] = [
    things.filter(({ tag }) => tag === written), things.filter(({ tag }) => alike(tag)), things.filter(({ name }) => alike(name)), vessel.zones.filter(({ space }) => alike(space)),
  ]
  const found = ways.find(each => each.length > 0) ?? []
  const [meant, ...others] = found
  if (meant === undefined) {
    const suggestion = nearest(written, things.flatMap(({ tag, name }) => [tag, name])) ?? undefined
    throw new Unusable(`--at "${written}": no zone, wireway point or item has this tag or name${didYouMean(suggestion) || '.'} ${zonesText(vessel)}`)
  }
  if (others.length > 0) throw new Unusable(`--at "${written}": it may be ${inWords(found.map(({ tag, name }) => `${tag} (${name}${zoneText(vessel, tag)})`))}. Give the tag of the one that is meant.`)
  if (placeNamed(vessel, meant.tag) === null) throw new Unusable(`--at "${written}": the zone of ${meant.tag} is not recorded. Enter it, or name a zone. ${zonesText(vessel)}`)
  return meant.tag
}

function zoneText(vessel: Vessel, tag: Tag): string {
  const zoneTag = placeNamed(vessel, tag)?.zoneTag
  return zoneTag === undefined || zoneTag === tag ? '' : `, in ${zoneTag}`
}

const zonesText = ({ zones }: Vessel): string =>
  zones.length === 0 ? 'The vessel has no zones yet: enter them first.' : `Zones: ${zones.map(({ tag }) => tag).join(', ')}.`
