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
  antennaPowerW: 'power at the antenna',
  connectorCount: 'connectors',
  perConnectorDb: 'loss of each connector',
  groundFactor: 'factor for reflection from the ground',
  limitWPerM2: 'limit of power density',
  vswrFactor: 'standing wave ratio',
  readVswrFactor: 'standing wave ratio where it is read',
  readReturnLossDb: 'return loss where it is read',
  antennaVswrFactor: 'standing wave ratio at the antenna',
  antennaReturnLossDb: 'return loss at the antenna',
  pulseUs: 'length of the pulse',
  repetitionHz: 'pulses a second',
  widthDeg: 'width along the horizon',
  skyFromElevationDeg: 'elevation from which the sky counts',
  deviationAt1MicroTDeg: 'deviation permitted at 1 µT',
  fieldMicroT: 'flux density allowed',
  keptDistanceM: 'distance to keep, rounded up',
  transducerDepthM: 'transducer below the waterline',
  referenceDepthM: 'what is read from, below the waterline',
  offsetM: 'offset that is set',
  depthErrorM: 'error, above zero too deep',
  forwardMomentKgM: 'moment forward',
  portMomentKgM: 'moment to port',
  upMomentKgM: 'moment up',
  referenceMassKg: 'displacement, with or less the fit',
  fitForwardM: 'fit, forward',
  fitToPortM: 'fit, to port',
  fitUpM: 'fit, up',
  vesselForwardM: 'vessel, forward',
  vesselToPortM: 'vessel, to port',
  vesselUpM: 'vessel, up',
  heelDeg: 'heel, above zero to port',
  bowM: 'to the bow',
  sternM: 'to the stern',
  portM: 'to the port side',
  starboardM: 'to the starboard side',
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
