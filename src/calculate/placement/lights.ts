/** Navigation lights: range, intensity, arc, place and what hides them, by the collision regulations. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { Gap } from '../../model/results/gap.js'
import type { LengthClass, LightPlacement, LightsPlacement, Obscured } from '../../model/results/placement.js'
import type { Equipment, NavigationLight, Position, Vessel } from '../../model/vessel.js'
import {
  allRoundObscured, arcToleranceDeg, fullSectorOf, intensityCitation, intensityTable, lengthClassOf, lightBand, lightTypes, rangeCitation, rangesNmi, sectorCitation,
} from '../../references/tables/navigation-lights.js'
import { say } from '../../units/format.js'
import { compare } from '../compare.js'
import { overlap, united, widthOf } from '../geometry.js'
import { runMethod } from '../run-method.js'
import { lightArcDiffers, lightObscured, lightRangeShort, lightTooWeak, sidelightOnWrongSide } from './findings.js'
import { lightIntensityMethod } from './light-intensity.calc.js'
import { needsOf } from './light-needs.js'
import { placeChecks } from './light-places.js'
import { hiddenBy, standsIn } from './structures.js'

/** A light whose kind is recorded. */
export interface FittedLight { readonly item: Equipment; readonly light: NavigationLight; readonly positionM: Position | null }
export interface LightsJudged { readonly lights: LightsPlacement; readonly notAssessed: readonly Gap[]; readonly findings: readonly Finding[] }

export function lightsOf(vessel: Vessel): LightsJudged {
  const items = vessel.equipment.filter(({ kind, navigationLight, status }) => status !== 'removed' && (kind === 'navigation light' || navigationLight !== null))
  const fitted = items.flatMap((item): readonly FittedLight[] => (item.navigationLight === null ? [] : [{ item, light: item.navigationLight, positionM: item.positionM }]))
  const unknown = items.filter(({ navigationLight }) => navigationLight === null)
  const { lengthM, name } = vessel.identity
  const lengthClass = lengthM === null ? null : lengthClassOf(lengthM)
  const places = placeChecks(vessel, fitted)
  const judged = fitted.map(each => judgedLight(vessel, lengthClass, each))
  const needs = needsOf(vessel, fitted, unknown)
  return {
    lights: { lengthClass, required: needs.required, lights: judged.map(({ placed }) => ({ ...placed, places: places.byTag.get(placed.tag) ?? [] })) },
    notAssessed: [
      ...unknown.map(({ tag }) => ({ subjectTag: tag, reason: 'navigation light: which one it is, and its range, are not recorded' })),
      ...(items.length > 0 && lengthM === null ? [{ subjectTag: name, reason: 'range and height of navigation lights: the length of the vessel is not recorded' }] : []),
      ...(fitted.length > 0 && vessel.structures.length === 0 ? [{ subjectTag: name, reason: 'what hides navigation lights: no structure is recorded' }] : []),
      ...needs.notAssessed, ...places.notAssessed, ...judged.flatMap(({ notAssessed }) => notAssessed),
    ],
    findings: [...needs.findings, ...judged.flatMap(({ findings }) => findings), ...places.findings],
  }
}

interface JudgedLight { readonly placed: LightPlacement; readonly notAssessed: readonly Gap[]; readonly findings: readonly Finding[] }

function judgedLight(vessel: Vessel, lengthClass: LengthClass | null, { item, light, positionM }: FittedLight): JudgedLight {
  const { kind, rangeNmi, arcDeg, intensityCd } = light
  const type = lightTypes[kind]
  const neededNmi = lengthClass === null ? null : rangesNmi[type.ranges][lengthClass]
  const range = rangeNmi === null || neededNmi === null ? null : compare('rangeNmi', rangeNmi, { relation: 'at least', value: neededNmi, citation: rangeCitation(kind, lengthClass!) })
  const neededCd = intensityTable.find(row => row.rangeNmi === neededNmi)?.intensityCd ?? null
  const arc = arcDeg === null ? null : { arcDeg, ruleArcDeg: type.sector.widthDeg, alike: Math.abs(arcDeg - type.sector.widthDeg) <= arcToleranceDeg }
  const onWrongSide = positionM !== null && ((kind === 'port side' && positionM[1] <= 0) || (kind === 'starboard side' && positionM[1] >= 0))
  const placed: LightPlacement = {
    tag: item.tag, kind, sector: type.sector, range, arc, onWrongSide, places: [],
    intensity: neededNmi === null ? null : runMethod(lightIntensityMethod, { rangeNmi: neededNmi }),
    intensityComparison: intensityCd === null || neededCd === null ? null : compare('intensityCd', intensityCd, { relation: 'at least', value: neededCd, citation: intensityCitation }),
    obscured: obscuredOf(vessel, light, positionM),
  }
  const gaps = [
    ...(lengthClass !== null && rangeNmi === null && intensityCd === null ? ['its range is not recorded'] : []),
    ...(arcDeg === null ? ['the arc over which it shows is not recorded'] : []),
    ...(positionM === null ? ['where it stands and what hides it: its position is not recorded'] : []),
    ...standsIn(vessel, positionM).map(tag => `whether ${tag} hides it: its position lies inside it`),
  ]
  return { placed, notAssessed: gaps.map(reason => ({ subjectTag: item.tag, reason: `navigation light: ${reason}` })), findings: findingsOf(placed, lengthClass, positionM) }
}

function obscuredOf(vessel: Vessel, { kind }: NavigationLight, positionM: Position | null): Obscured | null {
  if (positionM === null || vessel.structures.length === 0) return null
  const shown = [fullSectorOf(kind)]
  const by = hiddenBy(vessel, positionM, lightBand).map(({ structureTag, sectors }) => ({ structureTag, sectors: overlap(sectors, shown) })).filter(({ sectors }) => sectors.length > 0)
  const sectors = united(by.flatMap(each => each.sectors))
  const allRound = kind.startsWith('all-round')
  const limit: Limit = { relation: 'at most', value: allRound ? allRoundObscured.widthDeg : 0, citation: allRound ? allRoundObscured.citation : sectorCitation }
  return { by, sectors, comparison: compare('obscuredDeg', widthOf(sectors), limit) }
}

function findingsOf({ tag, kind, range, intensityComparison, arc, onWrongSide, obscured }: LightPlacement, lengthClass: LengthClass | null, positionM: Position | null): readonly Finding[] {
  const subject = { kind: 'equipment', id: tag }
  const ofLight = { subject, field: 'navigationLight' }
  return [
    ...(range?.within === false ? [find(lightRangeShort, { ...ofLight, evidence: { rangeNmi: range.value }, limit: range.limit, context: { length: lengthClass! } })] : []),
    // A light of too short a range is too weak by its nature; that is one fault.
    ...(range?.within !== false && intensityComparison?.within === false ? [find(lightTooWeak, {
      ...ofLight, evidence: { intensityCd: intensityComparison.value }, limit: intensityComparison.limit, context: { range: say('rangeNmi', rangesNmi[lightTypes[kind].ranges][lengthClass!]) },
    })] : []),
    ...(arc?.alike === false ? [find(lightArcDiffers, {
      ...ofLight, evidence: { arcDeg: arc.arcDeg, ruleArcDeg: arc.ruleArcDeg }, limit: null, context: { kind: titleOf(kind) },
    })] : []),
    ...(onWrongSide ? [find(sidelightOnWrongSide, { subject, field: 'positionM', evidence: { toPortM: positionM![1] }, limit: null, context: { kind: titleOf(kind) } })] : []),
    ...(obscured?.comparison.within === false ? [find(lightObscured, {
      subject, field: 'positionM', evidence: { obscuredDeg: obscured.comparison.value }, limit: obscured.comparison.limit, context: { by: inWords(obscured.by.map(({ structureTag }) => structureTag)) },
    })] : []),
  ]
}

const titleOf = (kind: LightPlacement['kind']): string => lightTypes[kind].title.toLowerCase()
