/** Mass and moments of what was fitted. */
import { isThere } from '../../model/lookup.js'
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { Gap } from '../../model/results/gap.js'
import type { MomentPart, MomentResults } from '../../model/results/placement.js'
import type { Vessel } from '../../model/vessel.js'
import { heelLimit, uncountedMassMostPercent } from '../../references/tables/placement-practice.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { centreOfFitMethod } from './centre-of-fit.calc.js'
import { heelAboveUsual } from './findings.js'
import { gravityShiftMethod } from './gravity-shift.calc.js'
import { heelMethod } from './heel.calc.js'

export interface MomentsJudged { readonly moments: MomentResults | null; readonly notAssessed: readonly Gap[]; readonly findings: readonly Finding[] }

export function momentsOf(vessel: Vessel): MomentsJudged {
  const items = [...vessel.equipment, ...vessel.batteries].filter(isThere)
  const parts = items.flatMap(({ tag, massKg, positionM }): readonly MomentPart[] => (massKg === null || positionM === null ? [] : [{
    tag, massKg, positionM, forwardMomentKgM: massKg * positionM[0], portMomentKgM: massKg * positionM[1], upMomentKgM: massKg * positionM[2],
  }]))
  const withoutPlace = items.flatMap(({ tag, massKg, positionM }) => (massKg !== null && positionM === null ? [{ tag, massKg }] : []))
  if (parts.length + withoutPlace.length === 0) return { moments: null, notAssessed: [], findings: [] }
  const withoutMassTags = items.filter(({ massKg }) => massKg === null).map(({ tag }) => tag)
  const sum = (of: 'massKg' | 'forwardMomentKgM' | 'portMomentKgM' | 'upMomentKgM'): number => parts.reduce((total, part) => total + part[of], 0)
  const centre = runMethod(centreOfFitMethod, {
    massKg: sum('massKg'), forwardMomentKgM: sum('forwardMomentKgM'), portMomentKgM: sum('portMomentKgM'), upMomentKgM: sum('upMomentKgM'),
  })
  const shift = shiftOf(vessel, centre)
  const heel = heelOf(vessel, centre)
  const limit: Limit = { relation: 'at most', value: heelLimit.heelDeg, citation: heelLimit.citation }
  const uncountedKg = withoutPlace.reduce((total, { massKg }) => total + massKg, 0)
  const tooMuchLeftOut = uncountedKg > (uncountedMassMostPercent / 100) * sum('massKg')
  const heelComparison = heel.status === 'computed' && !tooMuchLeftOut ? compare('heelDeg', Math.abs(heel.output.heelDeg), limit) : null
  const name = vessel.identity.name
  return {
    moments: { parts, withoutMassTags, withoutPlace, centre, shift, heel, heelComparison },
    notAssessed: [
      ...(withoutPlace.length === 0 ? [] : [{ subjectTag: name, reason: `moments of what has a mass and no position: ${inWords(withoutPlace.toSorted((a, b) => b.massKg - a.massKg).map(({ tag }) => tag))}` }]),
      ...(shift.status === 'computed' && vessel.identity.stability.includesEquipment === null ? [{ subjectTag: name, reason: 'shift of the centre of gravity and heel: whether the displacement counts the fit is not recorded; it is taken to be without it' }] : []),
      ...(centre.status === 'not computed' ? [{ subjectTag: name, reason: `moments: ${centre.reason}` }] : [
        ...(shift.status === 'not computed' ? [{ subjectTag: name, reason: `shift of the centre of gravity: ${shift.reason}` }] : []),
        ...(heel.status === 'computed' && tooMuchLeftOut ? [{ subjectTag: name, reason: `heel from the fit against its limit: what has no position weighs more than ${uncountedMassMostPercent} % of what is counted` }] : []),
        ...(heel.status === 'not computed' ? [{ subjectTag: name, reason: `heel from the fit: ${heel.reason}` }] : []),
      ]),
    ],
    findings: heel.status === 'computed' && heelComparison?.within === false ? [find(heelAboveUsual, {
      subject: { kind: 'vessel', id: name }, field: 'displacementKg', evidence: { heelDeg: heelComparison.value }, limit, context: { side: heel.output.heelDeg > 0 ? 'port' : 'starboard' },
    })] : [],
  }
}

const displacementMissing = 'the displacement of the vessel is not recorded'

function shiftOf({ identity: { displacementKg, stability } }: Vessel, centre: MomentResults['centre']): MomentResults['shift'] {
  const missing = (reason: string): MomentResults['shift'] => ({ status: 'not computed', method: gravityShiftMethod.id, reason })
  if (centre.status === 'not computed') return missing(centre.reason)
  if (displacementKg === null) return missing(displacementMissing)
  if (stability.centreOfGravityM === null) return missing('the centre of gravity of the vessel is not recorded')
  const [vesselForwardM, vesselToPortM, vesselUpM] = stability.centreOfGravityM
  const { massKg } = centre.input
  return runMethod(gravityShiftMethod, {
    massKg, referenceMassKg: stability.includesEquipment === true ? displacementKg - massKg : displacementKg + massKg,
    fitForwardM: centre.output.forwardM, fitToPortM: centre.output.toPortM, fitUpM: centre.output.upM, vesselForwardM, vesselToPortM, vesselUpM,
  })
}

function heelOf({ identity: { displacementKg, stability } }: Vessel, centre: MomentResults['centre']): MomentResults['heel'] {
  const missing = (reason: string): MomentResults['heel'] => ({ status: 'not computed', method: heelMethod.id, reason })
  if (centre.status === 'not computed') return missing(centre.reason)
  if (displacementKg === null) return missing(displacementMissing)
  if (stability.metacentricHeightM === null) return missing('the metacentric height is not recorded')
  return runMethod(heelMethod, {
    portMomentKgM: centre.input.portMomentKgM, displacementKg: stability.includesEquipment === true ? displacementKg : displacementKg + centre.input.massKg,
    metacentricHeightM: stability.metacentricHeightM,
  })
}
