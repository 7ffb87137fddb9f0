/** Limits on mains voltage (a.c.) of each basis, with their citations. Passes only look up and compare. */
import type { Limit } from '../../findings/finding.js'
import type { BasisId } from '../../model/vessel.js'
import type { Citation } from '../bibliography.js'

export interface AcRules {
  /** Residual-current protection of the whole shore supply. */
  readonly residualCurrentA: Limit
  readonly residualTripTimeMs: Limit
  /** Whether it has to be with the main disconnect, so that devices further down do not take its place. */
  readonly residualAtMainDisconnect: boolean
  /** Length of conductor within which an isolation transformer takes its place; null: the rules name no such exception. */
  readonly transformerDistanceM: Limit | null
  /** Residual current at sockets in wet places and machinery spaces. */
  readonly socketResidualCurrentA: Limit
  /** From the shore inlet to its first overcurrent protective device, along the conductor. */
  readonly inletDistanceM: Limit
  readonly inletRatingCitation: Citation
  readonly polesCitation: Citation
  readonly polarityCitation: Citation
  readonly galvanicIsolationCitation: Citation
  readonly neutralCitation: Citation
  readonly switchingCitation: Citation
}

const wholeCraftIso: Citation = { source: 'iso-13297', place: 'residual-current device for the whole craft: at most 30 mA, 100 ms, double pole', standing: 'from memory' }

export const acRules: Readonly<Record<BasisId, AcRules>> = {
  iso: {
    residualCurrentA: { relation: 'at most', value: 0.03, citation: wholeCraftIso },
    residualTripTimeMs: { relation: 'at most', value: 100, citation: wholeCraftIso },
    residualAtMainDisconnect: false,
    transformerDistanceM: null,
    socketResidualCurrentA: {
      relation: 'at most', value: 0.03,
      citation: { source: 'iso-13297', place: 'sockets in galley, toilet, machinery space, weather deck: at most 10 mA each, or 30 mA for the whole craft', standing: 'from memory' },
    },
    inletDistanceM: { relation: 'at most', value: 3, citation: { source: 'iso-13297', place: 'main shore breaker within 3 m of the inlet, else a further device within 3 m', standing: 'from memory' } },
    inletRatingCitation: { source: 'iso-13297', place: 'overcurrent protection of the shore supply', standing: 'from memory' },
    polesCitation: { source: 'iso-13297', place: 'main breaker opens all live conductors, neutral included', standing: 'from memory' },
    polarityCitation: { source: 'iso-13297', place: 'polarised systems: indication of reversed polarity', standing: 'from memory' },
    galvanicIsolationCitation: { source: 'common-practice', place: 'galvanic isolator or isolation transformer in the shore earth conductor' },
    neutralCitation: { source: 'iso-13297', place: 'neutral is joined to the protective conductor at the source only', standing: 'from memory' },
    switchingCitation: { source: 'iso-13297', place: 'no two sources on one circuit at the same time', standing: 'from memory' },
  },
  abyc: {
    residualCurrentA: { relation: 'at most', value: 0.03, citation: { source: 'abyc-e11', place: 'E-11.11.1.1' } },
    residualTripTimeMs: { relation: 'at most', value: 100, citation: { source: 'abyc-e11', place: 'E-11.11.1.1' } },
    residualAtMainDisconnect: true,
    transformerDistanceM: { relation: 'at most', value: 3.048, citation: { source: 'abyc-e11', place: 'E-11.11.1, exception: isolation transformer within 10 ft of the inlet' } },
    socketResidualCurrentA: {
      relation: 'at most', value: 0.006,
      citation: { source: 'abyc-e11', place: 'sockets in head, galley, machinery space, weather deck: class A, 5 mA nominal, 4 to 6 mA' },
    },
    inletDistanceM: { relation: 'at most', value: 3.048, citation: { source: 'abyc-e11', place: 'E-11.10.2.8.3, main shore breaker within 10 ft of the inlet', standing: 'from memory' } },
    inletRatingCitation: { source: 'abyc-e11', place: 'main shore breaker rated at most as the inlet', standing: 'from memory' },
    polesCitation: { source: 'abyc-e11', place: 'main shore breaker opens all current-carrying conductors', standing: 'from memory' },
    polarityCitation: { source: 'abyc-e11', place: 'reverse-polarity indication on 120 V two-wire-and-earth systems', standing: 'from memory' },
    galvanicIsolationCitation: { source: 'abyc-a28', place: 'galvanic isolators' },
    neutralCitation: { source: 'abyc-e11', place: 'neutral is grounded at the source only', standing: 'from memory' },
    switchingCitation: { source: 'abyc-e11', place: 'transfer between sources: no two at the same time', standing: 'from memory' },
  },
}

/** Share of a source's rating that loads running for hours should take: what a working figure is made of. */
export const workingShare = { shareFactor: 0.8, citation: { source: 'common-practice', place: 'loads that run for hours take at most 80 % of the rating' } } as const

/** Nominal voltages that differ by no more are one system under two names (110 and 120 V, 220, 230 and 240 V). */
export const alikeVoltageFactor = 1.1

/** Two-wire-and-earth systems on which one conductor is to be neutral and the other live. */
export const polarizedSystem = { fromV: 100, toV: 130 } as const

/** From this voltage on a supply has three phases. */
const threePhaseFromV = 346
/** Live conductors, neutral included where it is one of two: what a main breaker has to open. */
export const liveConductorCount = (nominalVoltageV: number): number => (nominalVoltageV >= threePhaseFromV ? 3 : 2)

/** Places where sockets need protection against shock, by the space and by words in the zone's name. Common practice in reading the rules. */
export const wetPlaces = {
  spaces: ['machinery', 'deck', 'cockpit', 'bilge'],
  words: /\b(galley|pantry|heads?|toilets?|wc|showers?|bath(?:room)?|wash(?:room)?|laundry|engine|machinery)\b/i,
} as const

/** "30 mA": residual currents are read in milliampere. */
export const sayResidualCurrent = (residualCurrentA: number): string => `${Number((1000 * residualCurrentA).toPrecision(6))}\u00A0mA`
