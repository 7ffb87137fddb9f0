/** `asfitted reserve`: where a new load can be taken from, what it takes to get there, and what it does to the feeders above. */
import { examine, type Examined } from '../build.js'
import { placeNamed, placesFor, type PlaceRequest } from '../calculate/reserve/places-for.js'
import { didYouMean, nearest } from '../findings/nearest.js'
import { inWords } from '../findings/words.js'
import { lookup } from '../model/lookup.js'
import type { SupplyForm, Tag, Vessel } from '../model/vessel.js'
import { jsonOf } from '../package/json.js'
import { say } from '../units/format.js'
import { type Dimension, type DimensionValue, parseQuantity } from '../units/parse-quantity.js'
import { exitCodeFor, findingsText, notAssessedText } from './outcome-text.js'
import { formInWords, reserveText } from './reserve-text.js'
import { type ExitCode, exitCode, type Surroundings, Unusable } from './surroundings.js'

/** As typed. */
export interface ReserveOptions {
  readonly current: string
  readonly at: string
  readonly voltage?: string
  readonly hours?: string
  readonly demandFactor?: string
  readonly critical?: true
  readonly continuous?: true
  readonly catalogue?: string
  readonly json?: true
}

/**
 * Prints every place with its working, the best first. Ends with 0 when one of them fits, with 1 when none does or the
 * data hold no vessel.
 *
 * Errors   Unusable when an option cannot be read, or names what the vessel does not have
 */
export async function reserve(folder: string, options: ReserveOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { stdout } = surroundings
  const quantities = readQuantities(options)
  const examined = await examine(folder, options.catalogue === undefined ? {} : { catalogue: options.catalogue })
  if (examined.status !== 'examined') {
    stdout.write(`${findingsText(examined, stdout, surroundings)}${notAssessedText(null)}\n`)
    return exitCodeFor(examined)
  }
  const { vessel, basis, results } = examined
  const request: PlaceRequest = {
    ...quantities,
    ...supplyAsked(examined, quantities.voltageV),
    atTag: placeAsked(vessel, options.at),
    loadClass: options.critical ? 'critical' : 'general',
    continuous: options.continuous ?? false,
  }
  const answers = placesFor(vessel, basis, results, request)
  stdout.write(options.json ? jsonOf({ request, places: answers }) : reserveText(examined, request, answers))
  return answers.some(({ verdict }) => verdict === 'fits') ? exitCode.clean : exitCode.errorsFound
}

function readQuantities({ current, voltage, hours, demandFactor = '1' }: ReserveOptions) {
  const currentA = read('--current', current, 'current')
  if (!(currentA > 0)) throw new Unusable(`--current "${current}": a current above zero is expected.`)
  const dailyH = hours === undefined ? null : read('--hours', hours, 'duration')
  if (dailyH !== null && dailyH > 24) throw new Unusable(`--hours "${hours}": hours of a day are expected, 24 at most.`)
  const factor = /^\d*\.?\d+$/.test(demandFactor) ? Number(demandFactor) : Number.NaN
  if (!(factor >= 0 && factor <= 1)) throw new Unusable(`--demand-factor "${demandFactor}": a number from 0 to 1 is expected, for example 0.5.`)
  return { currentA, dailyH, demandFactor: factor, voltageV: voltage === undefined ? null : read('--voltage', voltage, 'voltage') }
}

function read<D extends Dimension>(option: string, written: string, dimension: D): DimensionValue<D> {
  const parsed = parseQuantity(written, dimension)
  if (!parsed.ok) throw new Unusable(`${option} "${written}": expected ${parsed.expected}.`)
  return parsed.value
}

/** The supply that is meant: of the voltage asked for, else the only direct current on board. */
function supplyAsked({ results }: Examined, voltageV: number | null): { readonly nominalVoltageV: number; readonly form: SupplyForm } {
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

const onlyOf = <T>(things: readonly T[]): T | undefined => (things.length === 1 ? things[0] : undefined)

/** A place by its tag or, in whatever case, its name; else the only zone of that kind of space. */
function placeAsked(vessel: Vessel, written: string): Tag {
  const { items } = lookup(vessel)
  const things: readonly { readonly tag: Tag; readonly name: string }[] = [...vessel.zones, ...vessel.points, ...items.values()]
  const alike = (text: string): boolean => text.toLowerCase() === written.trim().toLowerCase()
  const found = things.find(({ tag }) => tag === written) ?? things.find(({ tag, name }) => alike(tag) || alike(name)) ?? onlyOf(vessel.zones.filter(({ space }) => alike(space)))
  if (found === undefined) {
    const suggestion = nearest(written, things.flatMap(({ tag, name }) => [tag, name])) ?? undefined
    throw new Unusable(`--at "${written}": no zone, wireway point or item has this tag or name${didYouMean(suggestion) || '.'} ${zonesText(vessel)}`)
  }
  if (placeNamed(vessel, found.tag) === null) throw new Unusable(`--at "${written}": the zone of ${found.tag} is not recorded. Enter it, or name a zone. ${zonesText(vessel)}`)
  return found.tag
}

const zonesText = ({ zones }: Vessel): string =>
  zones.length === 0 ? 'The vessel has no zones yet: enter them first.' : `Zones: ${zones.map(({ tag }) => tag).join(', ')}.`
