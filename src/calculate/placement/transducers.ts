/** Transducers: how wide they see, and whether the depth offset that is set is right. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import type { Gap } from '../../model/results/gap.js'
import type { ConfiguredOffset, ExpectedOffset, TransducerPlacement } from '../../model/results/placement.js'
import type { DepthOffset, Equipment, Transducer, Vessel } from '../../model/vessel.js'
import { depthTolerance, exampleDepthM, footprintDepthsM, frequencyApart } from '../../references/tables/placement-practice.js'
import { sayBoth } from '../../units/format.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import type { Judged } from './compasses.js'
import { depthErrorMethod } from './depth-error.calc.js'
import { depthOffsetMethod } from './depth-offset.calc.js'
import { depthOffsetSign, depthShownTooDeep, depthShownTooShallow, frequenciesClose } from './findings.js'
import { footprintMethod } from './footprint.calc.js'
import { shownDepthMethod } from './shown-depth.calc.js'

const readings: readonly DepthOffset['reads'][] = ['below waterline', 'below keel', 'below transducer']
interface Fitted { readonly item: Equipment; readonly transducer: Transducer }

export function transducerPlacements(vessel: Vessel): Judged<TransducerPlacement> {
  const fitted = vessel.equipment.flatMap((item): readonly Fitted[] => (item.status === 'removed' || item.transducer === null ? [] : [{ item, transducer: item.transducer }]))
  const placed = fitted.map(each => placementOf(vessel, each))
  return {
    placed,
    notAssessed: [
      ...vessel.equipment.filter(({ kind, status, transducer }) => kind === 'transducer' && status !== 'removed' && transducer === null)
        .map(({ tag }) => ({ subjectTag: tag, reason: 'footprint and depth offset: nothing is recorded of its beam' })),
      ...placed.flatMap(gapsOf),
      ...placed.filter(({ configured }) => configured === null).map(({ tag }) => ({ subjectTag: tag, reason: 'depth offset: the one that is set is not recorded' })),
      ...(fitted.length < 2 ? [] : fitted.filter(({ transducer }) => !knowsFrequency(transducer)).map(({ item }) => ({ subjectTag: item.tag, reason: 'whether another transducer disturbs it: its frequency is not recorded' }))),
    ],
    findings: [...placed.flatMap(offsetFindings), ...frequencyFindings(fitted)],
  }
}

function placementOf(vessel: Vessel, { item, transducer }: Fitted): TransducerPlacement {
  const { beamDeg, beamAcrossDeg } = transducer
  const expected = readings.map(reads => ({ reads, offset: expectedOffset(vessel, item, reads) }))
  return {
    tag: item.tag,
    footprints: beamDeg === null && beamAcrossDeg === null ? [] : footprintDepthsM.map(depthM => ({
      depthM, along: footprintAt(depthM, beamDeg), across: footprintAt(depthM, beamAcrossDeg ?? beamDeg),
    })),
    expected,
    configured: transducer.depthOffset === null ? null : configuredOf(transducer.depthOffset, expected.find(({ reads }) => reads === transducer.depthOffset!.reads)!.offset),
  }
}

const footprintAt = (depthM: number, beamDeg: number | null) => (beamDeg === null
  ? { status: 'not computed' as const, method: footprintMethod.id, reason: 'the angle of its beam is not recorded' }
  : runMethod(footprintMethod, { depthM, beamDeg }))

function expectedOffset({ identity: { draughtM } }: Vessel, { positionM }: Equipment, reads: DepthOffset['reads']): ExpectedOffset {
  const missing = (reason: string): ExpectedOffset => ({ status: 'not computed', method: depthOffsetMethod.id, reason })
  if (positionM === null) return missing('the position of the transducer is not recorded')
  const transducerDepthM = -positionM[2]
  if (reads === 'below keel' && draughtM === null) return missing('the draught of the vessel is not recorded')
  return runMethod(depthOffsetMethod, { transducerDepthM, referenceDepthM: reads === 'below waterline' ? 0 : reads === 'below keel' ? draughtM! : transducerDepthM })
}

const tolerance: Limit = { relation: 'at most', value: depthTolerance.valueM, citation: depthTolerance.citation }

function configuredOf({ reads, offsetM }: DepthOffset, expected: ExpectedOffset): ConfiguredOffset {
  const error = expected.status === 'computed'
    ? runMethod(depthErrorMethod, { offsetM, expectedOffsetM: expected.output.expectedOffsetM })
    : { status: 'not computed' as const, method: depthErrorMethod.id, reason: expected.reason }
  return {
    reads, offsetM, error,
    signFits: reads === 'below waterline' ? offsetM >= 0 : reads === 'below keel' ? offsetM <= 0 : true,
    comparison: error.status === 'computed' ? compare('depthErrorM', Math.abs(error.output.depthErrorM), tolerance) : null,
    example: {
      shown: runMethod(shownDepthMethod, { measuredDepthM: exampleDepthM, offsetM }),
      right: expected.status === 'computed' ? runMethod(shownDepthMethod, { measuredDepthM: exampleDepthM, offsetM: expected.output.expectedOffsetM }) : null,
    },
  }
}

function gapsOf({ tag, footprints, expected }: TransducerPlacement): readonly Gap[] {
  const reasonsIn = (what: string, outcomes: readonly { readonly status: string; readonly reason?: string }[]): readonly string[] =>
    outcomes.flatMap(({ status, reason }) => (status === 'computed' ? [] : [`${what}: ${reason}`]))
  const reasons = [
    ...(footprints.length === 0 ? ['footprint: the angle of its beam is not recorded'] : []),
    ...reasonsIn('footprint', footprints.flatMap(({ along, across }) => [along, across])), ...reasonsIn('depth offset', expected.map(({ offset }) => offset)),
  ]
  return [...new Set(reasons)].map(reason => ({ subjectTag: tag, reason }))
}

export const sayOffset = (offsetM: number): string => `${offsetM > 0 ? '+' : offsetM < 0 ? '−' : ''}${sayBoth('offsetM', Math.abs(offsetM))}`

function offsetFindings({ tag, configured }: TransducerPlacement): readonly Finding[] {
  if (configured === null) return []
  const { reads, offsetM, signFits, error, comparison } = configured
  const about = { subject: { kind: 'equipment', id: tag }, field: 'depthOffset' }
  const depthErrorM = error.status === 'computed' ? error.output.depthErrorM : null
  if (!signFits) {
    const effect = depthErrorM === null ? '' : `; it shows ${sayBoth('depthErrorM', Math.abs(depthErrorM))} too ${depthErrorM > 0 ? 'deep' : 'shallow'}`
    return [find(depthOffsetSign, { ...about, evidence: { offsetM }, limit: null, context: { reads, effect } })]
  }
  if (depthErrorM === null || error.status !== 'computed' || comparison === null || comparison.within) return []
  const context = { reads, set: sayOffset(offsetM), expected: sayOffset(error.input.expectedOffsetM) }
  return [find(depthErrorM > 0 ? depthShownTooDeep : depthShownTooShallow, { ...about, evidence: { depthErrorM: comparison.value }, limit: comparison.limit, context })]
}

const knowsFrequency = ({ frequencyKHz }: Transducer): boolean => frequencyKHz !== null && frequencyKHz !== 0

function frequencyFindings(fitted: readonly Fitted[]): readonly Finding[] {
  const known = fitted.flatMap(({ item, transducer: { frequencyKHz } }) => (frequencyKHz === null || frequencyKHz === 0 ? [] : [{ tag: item.tag, frequencyKHz }]))
  return known.flatMap((one, i) => {
    const other = known.slice(0, i).find(({ frequencyKHz }) => Math.abs(frequencyKHz - one.frequencyKHz) < frequencyApart.shareFactor * Math.max(frequencyKHz, one.frequencyKHz))
    return other === undefined ? [] : [find(frequenciesClose, {
      subject: { kind: 'equipment', id: one.tag }, field: 'transducer', evidence: { frequencyKHz: one.frequencyKHz, otherFrequencyKHz: other.frequencyKHz }, limit: null, context: { other: other.tag },
    })]
  })
}
