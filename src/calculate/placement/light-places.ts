/** Heights and places of the lights of a power-driven vessel against hull, length and one another: COLREG annex I. */
import { atLeast, atMost, type Finding, find, type FindingKind, type Limit } from '../../findings/finding.js'
import { grouped } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { PlaceCheck } from '../../model/results/placement.js'
import type { NavigationLightKind, Position, Tag, Vessel } from '../../model/vessel.js'
import { lightPlaces } from '../../references/tables/navigation-lights.js'
import { compare } from '../compare.js'
import { lightPlacedWrong, lightTooLow, sidelightTooHigh } from './findings.js'
import type { FittedLight } from './lights.js'

export interface PlaceChecks { readonly byTag: ReadonlyMap<Tag, readonly PlaceCheck[]>; readonly notAssessed: readonly Gap[]; readonly findings: readonly Finding[] }

interface Placed { readonly tag: Tag; readonly kind: NavigationLightKind; readonly at: Position }
interface Judged { readonly tag: Tag; readonly check: PlaceCheck; readonly finding: () => Finding }

export function placeChecks(vessel: Vessel, fitted: readonly FittedLight[]): PlaceChecks {
  const placed = fitted.flatMap(({ item, light, positionM }): readonly Placed[] => (positionM === null ? [] : [{ tag: item.tag, kind: light.kind, at: positionM }]))
  const { lengthM, name, stability: { gunwaleHeightM } } = vessel.identity
  const ofKind = (...kinds: readonly NavigationLightKind[]): readonly Placed[] => placed.filter(({ kind }) => kinds.includes(kind))
  const mastheads = ofKind('masthead').toSorted((a, b) => b.at[0] - a.at[0])
  const steaming = mastheads[0] ?? (lengthM !== null && lengthM < 12 ? ofKind('all-round white')[0] : undefined)
  const [sides, lanterns] = [ofKind('port side', 'starboard side'), ofKind('both sides')]
  if (lengthM === null || steaming === undefined) return { byTag: new Map(), notAssessed: withoutMasthead(fitted, [...sides, ...lanterns]), findings: [] }
  const judged: readonly Judged[] = [
    ...(lengthM < 12 ? aboveSidelights(steaming, [...sides, ...lanterns]) : []),
    ...(lengthM >= 12 && gunwaleHeightM !== null ? [aboveHull(vessel, steaming, lengthM, gunwaleHeightM), ...sidelightsLower(steaming, [...sides, ...lanterns], gunwaleHeightM)] : []),
    ...(lengthM >= 12 && lengthM < 20 ? lanterns.map(lantern => lanternBelow(steaming, lantern)) : []),
    ...(lengthM >= 20 ? sides.map(side => sideAbaft(steaming, side)) : []),
    ...(lengthM >= 20 && mastheads.length === 1 ? [forwardOfMiddle(steaming, lengthM)] : []),
    ...(mastheads.length > 1 ? twoMastheads(mastheads, lengthM) : []),
  ]
  return {
    byTag: new Map([...grouped(judged, ({ tag }) => [tag])].map(([tag, checks]) => [tag, checks.map(({ check }) => check)])),
    notAssessed: lengthM >= 12 && gunwaleHeightM === null ? [{ subjectTag: name, reason: 'height of masthead light and sidelights: the height of the gunwale is not recorded' }] : [],
    findings: judged.filter(({ check }) => !check.comparison.within).map(({ finding }) => finding()),
  }
}

/** Sidelights are held against the masthead light; one that is there and has no place leaves them open. */
function withoutMasthead(fitted: readonly FittedLight[], sides: readonly Placed[]): PlaceChecks['notAssessed'] {
  const masthead = fitted.find(({ light }) => light.kind === 'masthead')
  return masthead === undefined ? [] : sides.map(({ tag }) => ({ subjectTag: tag, reason: `navigation light: its height against the masthead light: the position of ${masthead.item.tag} is not recorded` }))
}

function height(kind: FindingKind<{ heightM: number }>, tag: Tag, words: string, heightM: number, limit: Limit): Judged {
  const comparison = compare('heightM', heightM, limit)
  return { tag, check: { words, comparison }, finding: () => find(kind, { subject: { kind: 'equipment', id: tag }, field: 'positionM', evidence: { heightM }, limit, context: { above: words } }) }
}

function lying(tag: Tag, words: string, distanceM: number, limit: Limit): Judged {
  const comparison = compare('distanceM', distanceM, limit)
  return { tag, check: { words, comparison }, finding: () => find(lightPlacedWrong, { subject: { kind: 'equipment', id: tag }, field: 'positionM', evidence: { distanceM }, limit, context: { place: words } }) }
}

/** The gunwale stands for the hull; a vessel of 20 m and over counts from her uppermost deck. */
function aboveHull({ identity: { beamM } }: Vessel, { tag, at }: Placed, lengthM: number, gunwaleHeightM: number): Judged {
  if (lengthM < 20) return height(lightTooLow, tag, 'above the gunwale', at[2] - gunwaleHeightM, atLeast(lightPlaces.mastheadAboveGunwale.leastM, lightPlaces.mastheadAboveGunwale.citation))
  const { leastM, mostM, citation } = lightPlaces.mastheadAboveHull
  return height(lightTooLow, tag, 'above the hull', at[2] - gunwaleHeightM, atLeast(Math.min(mostM, Math.max(leastM, beamM ?? 0)), citation))
}

function aboveSidelights({ tag, at }: Placed, sides: readonly Placed[]): readonly Judged[] {
  if (sides.length === 0) return []
  const { leastM, citation } = lightPlaces.mastheadAboveSidelights
  return [height(lightTooLow, tag, 'above the sidelights', at[2] - Math.max(...sides.map(side => side.at[2])), atLeast(leastM, citation))]
}

const lanternBelow = (masthead: Placed, { at }: Placed): Judged =>
  height(lightTooLow, masthead.tag, 'above the lantern of the sidelights', masthead.at[2] - at[2], atLeast(lightPlaces.lanternBelowMasthead.leastM, lightPlaces.lanternBelowMasthead.citation))

function sidelightsLower(masthead: Placed, sides: readonly Placed[], gunwaleHeightM: number): readonly Judged[] {
  const { shareFactor, citation } = lightPlaces.sidelightShare
  const limit = atMost(shareFactor * (masthead.at[2] - gunwaleHeightM), citation)
  return sides.map(({ tag, at }) => height(sidelightTooHigh, tag, 'above the gunwale', at[2] - gunwaleHeightM, limit))
}

const sideAbaft = (masthead: Placed, { tag, at }: Placed): Judged => lying(tag, 'forward of the transom', at[0], atMost(masthead.at[0], lightPlaces.sidelightsAbaftMasthead.citation))

const forwardOfMiddle = ({ tag, at }: Placed, lengthM: number): Judged => lying(tag, 'forward of the transom', at[0], atLeast(lengthM / 2, lightPlaces.oneMasthead.citation))

function twoMastheads([forward, after]: readonly Placed[], lengthM: number): readonly Judged[] {
  const { lengthFactor, mostM, stemFactor, citation } = lightPlaces.twoMastheads
  return [
    lying(after!.tag, 'between the masthead lights', forward!.at[0] - after!.at[0], atLeast(Math.min(mostM, lengthFactor * lengthM), citation)),
    lying(forward!.tag, 'from the stem', lengthM - forward!.at[0], atMost(stemFactor * lengthM, citation)),
  ]
}
