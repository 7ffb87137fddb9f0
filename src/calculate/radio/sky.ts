/** What structures hide of the sky from an antenna, step by step along the horizon. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { type AntennaUse, middleM, type SkySector, type SkyView } from '../../model/results/radio.js'
import type { Sector } from '../../model/results/sector.js'
import type { Position, Structure, Tag, Vessel } from '../../model/vessel.js'
import { skyBlocked, skyFromElevationDeg } from '../../references/basis/radio-rules.js'
import { compare } from '../compare.js'
import { elevationsOfBox, isInside, sectorsOfBox } from '../geometry.js'
import { runMethod } from '../run-method.js'
import { skyBlockedAbove } from './findings.js'
import { skyBlockedBy, skyBlockedMethod } from './sky-blocked.calc.js'

/** A pole of 4 cm is 2° wide at arm's length: whole degrees would take it for half or for double. */
const stepsPerDeg = 10
const stepDeg = 1 / stepsPerDeg

/** At one bearing. `share` of the whole sky, in percent. */
interface Step { readonly hidden: readonly Hidden[]; readonly share: number }
interface Hidden { readonly structureTag: Tag; readonly lowestElevationDeg: number; readonly highestElevationDeg: number }

export function skyViewOf(vessel: Vessel, { tag, use, part }: AntennaUse): SkyView {
  const without = (gap: string): SkyView => ({ tag, blockedPercent: null, sectors: [], comparison: null, example: null, gap })
  if (part === null) return without('its position is not recorded')
  if (vessel.structures.length === 0) return without('no structure is recorded')
  const from: Position = [part.forwardM, part.toPortM, middleM(part)]
  const around = vessel.structures.find(structure => isInside(structure, from))
  if (around !== undefined) return without(`by its position it is inside ${around.tag}`)
  const steps = stepsAround(from, vessel.structures)
  const blockedPercent = steps.reduce((sum, { share }) => sum + share, 0)
  return {
    tag, blockedPercent, sectors: sectorsOf(steps), example: exampleOf(steps), gap: null,
    comparison: compare('blockedPercent', blockedPercent, use === 'satellite' ? skyBlocked.satellite : skyBlocked.gnss),
  }
}

/** Bearings as decimal fractions, without what binary ones leave behind. */
const middleDeg = (step: number): number => (2 * step + 1) / (2 * stepsPerDeg)
const edgeDeg = (step: number): number => step / stepsPerDeg

/** All round the horizon: what hides the sky at each bearing, of each box the elevations between which it stands. */
function stepsAround(from: Position, structures: readonly Structure[]): readonly Step[] {
  const hidden = Array.from({ length: 360 * stepsPerDeg }, (): Hidden[] => [])
  for (const structure of structures) {
    for (const step of stepsOf(sectorsOfBox(structure, from, sky))) {
      const stands = elevationsOfBox(structure, from, middleDeg(step))
      if (stands === null || stands.highestDeg <= skyFromElevationDeg) continue
      hidden[step]!.push({ structureTag: structure.tag, lowestElevationDeg: Math.max(stands.lowestDeg, skyFromElevationDeg), highestElevationDeg: stands.highestDeg })
    }
  }
  return hidden.map(each => ({ hidden: each, share: shareOf(each) }))
}
const sky = { lowestDeg: skyFromElevationDeg, highestDeg: 90 } as const

/** The steps that a box may stand in; those at its edges are looked at once more. */
function stepsOf(sectors: readonly Sector[]): ReadonlySet<number> {
  const steps = new Set<number>()
  for (const { fromDeg, widthDeg } of sectors) {
    const last = Math.ceil((fromDeg + widthDeg) * stepsPerDeg)
    for (let step = Math.floor(fromDeg * stepsPerDeg) - 1; step <= last; step += 1) steps.add(((step % (360 * stepsPerDeg)) + 360 * stepsPerDeg) % (360 * stepsPerDeg))
  }
  return steps
}

/** Share of the whole sky in one step; where boxes stand behind one another each elevation counts once. */
function shareOf(hidden: readonly Hidden[]): number {
  let [share, reached] = [0, skyFromElevationDeg]
  for (const { lowestElevationDeg, highestElevationDeg } of hidden.toSorted((a, b) => a.lowestElevationDeg - b.lowestElevationDeg)) {
    const fromDeg = Math.max(lowestElevationDeg, reached)
    if (highestElevationDeg <= fromDeg) continue
    share += skyBlockedBy({ widthDeg: stepDeg, lowestElevationDeg: fromDeg, highestElevationDeg, skyFromElevationDeg }).blockedPercent
    reached = highestElevationDeg
  }
  return share
}

function exampleOf(steps: readonly Step[]): SkyView['example'] {
  const single = steps.map((step, i) => ({ ...step, bearingDeg: middleDeg(i) })).filter(({ hidden }) => hidden.length === 1)
  const [most] = single.toSorted((a, b) => b.share - a.share)
  if (most === undefined) return null
  const { lowestElevationDeg, highestElevationDeg } = most.hidden[0]!
  return { bearingDeg: most.bearingDeg, outcome: runMethod(skyBlockedMethod, { widthDeg: stepDeg, lowestElevationDeg, highestElevationDeg, skyFromElevationDeg }) }
}

/** Steps next to one another at which something hides; a sector that runs through the bow is one. */
function sectorsOf(steps: readonly Step[]): readonly SkySector[] {
  const free = steps.findIndex(({ hidden }) => hidden.length === 0)
  const start = free === -1 ? 0 : free
  const sectors: { first: number; taken: Step[] }[] = []
  for (let i = 0; i < steps.length; i += 1) {
    const place = start + i
    const step = steps[place % steps.length]!
    if (step.hidden.length === 0) continue
    const last = sectors.at(-1)
    if (last !== undefined && last.first + last.taken.length === place) last.taken.push(step)
    else sectors.push({ first: place, taken: [step] })
  }
  return sectors.map(({ first, taken }) => {
    const hidden = taken.flatMap(step => step.hidden)
    return {
      fromDeg: edgeDeg(first % steps.length),
      toDeg: edgeDeg((first + taken.length - 1) % steps.length + 1),
      structureTags: [...new Set(hidden.map(({ structureTag }) => structureTag))],
      highestElevationDeg: hidden.reduce((highest, { highestElevationDeg }) => Math.max(highest, highestElevationDeg), 0),
      blockedPercent: taken.reduce((sum, { share }) => sum + share, 0),
    }
  }).toSorted((a, b) => a.fromDeg - b.fromDeg)
}

export const skyFindings = (skies: readonly SkyView[]): readonly Finding[] => skies.flatMap(({ tag, blockedPercent, sectors, comparison }) =>
  (comparison === null || comparison.within ? [] : [find(skyBlockedAbove, {
    subject: { kind: 'equipment', id: tag }, field: 'positionM', evidence: { blockedPercent: blockedPercent! }, limit: comparison.limit,
    context: { structures: inWords([...new Set(sectors.flatMap(({ structureTags }) => structureTags))]) },
  })]))
