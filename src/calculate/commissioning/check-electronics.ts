/** Readings of buses and radios, as their own domains judged them: no sum is made a second time, and their findings are made there. */
import type { BusReading, BusResult, CanBusResults } from '../../model/results/can-bus.js'
import type { CheckKind, Deviation, Meaning, ReadingCheck } from '../../model/results/commissioning.js'
import type { RadioResults, StandingWaveCheck } from '../../model/results/radio.js'
import { compare } from '../compare.js'
import { deviationOf } from './checked.js'
import { meaningOf } from './meanings.js'

export const busKinds: Readonly<Record<BusReading['quantity'], CheckKind>> = {
  resistanceOhm: 'resistance between data wires', voltageV: 'voltage on a bus', busLoadPercent: 'load of a bus',
}

export const busChecks = ({ byBus }: CanBusResults): readonly ReadingCheck[] =>
  [...byBus.values()].flatMap(result => result.readings.map(reading => busCheck(result, reading)))

function busCheck(result: BusResult, reading: BusReading): ReadingCheck {
  const { quantity, number, date, atTag, measured, limits, tolerances, agrees, words, supersededBy } = reading
  const kind = busKinds[quantity]
  const value = { quantity, value: measured }
  const deviation = deviationOf(value, limits.map(asHeld), tolerances.map(asHeld))
  return {
    kind, number, date, subjectTag: result.bus.tag, loadTag: atTag, measured: value, calculated: calculatedOf(result, reading),
    limits, tolerances, workings: [], deviation, meaning: withWords(kind, deviation, words), gaps: agrees === null && words !== null ? [words] : [], supersededBy,
  }
}

/** A load lies between none and all bits stuffed. */
function calculatedOf({ load: { total } }: BusResult, { quantity, calculated }: BusReading): ReadingCheck['calculated'] {
  if (calculated === null) return null
  const most = quantity === 'busLoadPercent' && total.status === 'computed' ? total.output.worstLoadPercent : calculated
  return { quantity, least: calculated, most }
}

export const standingWaveChecks = ({ standingWaves }: RadioResults): readonly ReadingCheck[] => standingWaves.map(waveCheck)

/** What may be read behind the cable decides where that is known: an antenna on its limit reads so much there. */
function waveCheck(wave: StandingWaveCheck): ReadingCheck {
  const { number, date, subjectTag, readAtTag, readVswrFactor, limit, expected, gap, verdict, supersededBy } = wave
  const value = { quantity: 'vswrFactor', value: readVswrFactor }
  const mayRead = expected.status === 'computed' ? expected.output.readVswrFactor : null
  const limits = verdict === 'not assessed' ? [] : [compare('vswrFactor', readVswrFactor, mayRead === null ? limit : { ...limit, value: mayRead })]
  const deviation = deviationOf(value, limits.map(asHeld), [])
  const words = verdict === 'not explained' ? 'more comes back than an open end of the cable would send: the plug at the meter, or the cable'
    : verdict === 'hidden by loss' ? 'the loss of the cable makes a bad antenna look good' : null
  return {
    kind: 'standing wave ratio', number, date, subjectTag, loadTag: readAtTag === subjectTag ? null : readAtTag, measured: value, calculated: null,
    limits, tolerances: [], workings: [], deviation, meaning: withWords('standing wave ratio', deviation, words), gaps: gap === null ? [] : [gap], supersededBy,
  }
}

const asHeld = (comparison: ReadingCheck['limits'][number]) => ({ comparison })

/** What its own domain says of this very reading stands first. */
function withWords(kind: CheckKind, deviation: Deviation | null, words: string | null): Meaning | null {
  const meaning = deviation === null ? null : meaningOf(kind, deviation)
  return meaning === null || words === null ? meaning : { ...meaning, usually: [words, ...meaning.usually] }
}
