/** `asfitted reserve`: where a new load or device can be taken from, what it takes to get there, and what it leaves. */
import { examine, type Examined } from '../build.js'
import { onBuses } from '../calculate/reserve/on-bus.js'
import { onNetworks } from '../calculate/reserve/on-network.js'
import { placesFor, type PlaceRequest } from '../calculate/reserve/places-for.js'
import { reportJson } from '../findings/report.js'
import type { Tag } from '../model/vessel.js'
import { jsonOf } from '../package/json.js'
import { exitCodeFor, findingsText, notAssessedText } from './outcome-text.js'
import { type Asked, askedOf, placeAsked, read, type ReserveOptions, supplyAsked } from './reserve-options.js'
import { type ReserveAnswer, reserveText, verdictsOf } from './reserve-text.js'
import { type ExitCode, exitCode, type Surroundings } from './surroundings.js'

/**
 * Prints every place with its working, the best first. Ends with 0 when there is one for each part that was asked, with 1
 * when a part fits nowhere or the data hold no vessel.
 *
 * Errors   Unusable when an option cannot be read, or names what the vessel does not have
 */
export async function reserve(folder: string, options: ReserveOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { stdout } = surroundings
  const typed = read(options)
  const examined = await examine(folder, options.catalogue === undefined ? {} : { catalogue: options.catalogue })
  if (examined.status !== 'examined') {
    stdout.write(options.json ? reportJson(examined.findings, null) : `${findingsText(examined, stdout, surroundings)}${notAssessedText(null)}\n`)
    return exitCodeFor(examined)
  }
  const asked = askedOf(typed, options, examined.models)
  const atTag = placeAsked(examined.vessel, options.at)
  const answer = answerTo(examined, asked, options, atTag)
  const verdicts = verdictsOf(answer)
  const fits = verdicts.every(({ verdict }) => verdict === 'fits')
  stdout.write(options.json ? jsonOf({ atTag, fits, verdicts, notes: asked.notes, ...answer }) : reserveText(examined, atTag, answer, asked.notes))
  return fits ? exitCode.clean : exitCode.errorsFound
}

function answerTo(examined: Examined, { circuit, bus, network }: Asked, options: ReserveOptions, atTag: Tag): ReserveAnswer {
  const { vessel, basis, results } = examined
  return {
    circuit: circuit === null ? null : withPlaces({
      currentA: circuit.currentA, dailyH: circuit.dailyH, demandFactor: circuit.demandFactor,
      ...supplyAsked(examined, circuit.voltageV),
      atTag, loadClass: options.critical ? 'critical' : 'general', continuous: options.continuous ?? false,
    }),
    bus: bus === null ? null : { request: { ...bus, atTag }, buses: onBuses(vessel, basis, results, { ...bus, atTag }) },
    network: network === null ? null : { request: { ...network, atTag }, switches: onNetworks(vessel, basis, results, { ...network, atTag }) },
  }

  function withPlaces(request: PlaceRequest): ReserveAnswer['circuit'] {
    return { request, places: placesFor(vessel, basis, results, request) }
  }
}
