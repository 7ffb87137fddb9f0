/** Words for the names of quantities: `designCurrentA` → "design current". Names are words already; a few read better otherwise. */
import { unitOf } from '../units/quantity.js'

const special: Readonly<Record<string, string>> = {
  conductorLengthM: 'length of conductor, out and back',
  cableAreaMm2: 'sum of the cables’ cross-sections',
  tailLengthM: 'tail at each end',
  tableCurrentA: 'current from the table',
  ambientFactor: 'factor for the ambient temperature',
  bundleFactor: 'factor for the bundle',
  boreMm: 'bore',
  resistanceAt20COhmPerKm: 'resistance at 20 °C',
  lengthCharacterCount: 'characters, start and line end included',
  charactersPerS: 'characters a second',
  baudRateBaud: 'rate of the line',
  lineUsePercent: 'share of the line in use',
  lineTimeMs: 'time on the line',
  morePerS: 'times a second that it still fits',
  planPercent: 'share of the line that is planned',
  driveCurrentMilliA: 'current that the talker can drive',
  drawnCurrentMilliA: 'current that its listeners take',
  listenerCurrentMilliA: 'current of one more listener',
  moreListenersCount: 'further listeners',
}

export function wordsOf(name: string): string {
  const known = special[name]
  if (known !== undefined) return known
  const ending = unitOf(name)?.ending ?? ''
  const bare = /^(Factor|Count|Number)$/.test(ending) ? name : name.slice(0, name.length - ending.length)
  return bare.replace(/([A-Z])/g, (_, letter: string) => ` ${letter.toLowerCase()}`).replace(/ per (\w+) /, ' per $1 ').trim()
}
