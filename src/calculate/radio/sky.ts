/** What structures hide of the sky from an antenna, degree by degree along the horizon. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { type AntennaUse, middleM, type SkySector, type SkyView } from '../../model/results/radio.js'
import type { Position, Structure, Tag, Vessel } from '../../model/vessel.js'
import { skyBlocked, skyFromElevationDeg } from '../../references/basis/radio-rules.js'
import { compare } from '../compare.js'
import { elevationsOfBox, isInside } from '../geometry.js'
import { runMethod } from '../run-method.js'
import { skyBlockedAbove } from './findings.js'
import { skyBlockedBy, skyBlockedMethod } from './sky-blocked.calc.js'

const stepDeg = 1

interface Hidden { readonly structureTag: Tag; readonly lowestElevationDeg: number; readonly highestElevationDeg: number }

export function skyViewOf(vessel: Vessel, { tag, use, part }: AntennaUse): SkyView {
  const without = (gap: string): SkyView => ({ tag, blockedPercent: null, sectors: [], comparison: null, example: null, gap })
  if (part === null) return without('its position is not recorded')
  if (vessel.structures.length === 0) return without('no structure is recorded')
  const from: Position = [part.forwardM, part.toPortM, middleM(part)]
  const around = vessel.structures.find(structure => isInside(structure, from))
  if (around !== undefined) return without(`by its position it is inside ${around.tag}`)
  const degrees = Array.from({ length: 360 / stepDeg }, (_, i) => hiddenAt(from, vessel.structures, (i + 0.5) * stepDeg))
  const blockedPercent = degrees.reduce((sum, hidden) => sum + shareOf(hidden), 0)
  return {
    tag, blockedPercent, sectors: sectorsOf(degrees), example: exampleOf(degrees), gap: null,
    comparison: compare('blockedPercent', blockedPercent, use === 'satellite' ? skyBlocked.satellite : skyBlocked.gnss),
  }
}

/** What hides the sky at one bearing: of each box the elevations between which it stands. */
const hiddenAt = (from: Position, structures: readonly Structure[], atDeg: number): readonly Hidden[] => structures.flatMap(structure => {
  const stands = elevationsOfBox(structure, from, atDeg)
  return stands === null || stands.highestDeg <= skyFromElevationDeg ? [] : [{
    structureTag: structure.tag, lowestElevationDeg: Math.max(stands.lowestDeg, skyFromElevationDeg), highestElevationDeg: stands.highestDeg,
  }]
})

/** Share of the whole sky at one degree; where boxes stand behind one another each elevation counts once. */
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

function exampleOf(degrees: readonly (readonly Hidden[])[]): SkyView['example'] {
  const single = degrees.map((hidden, i) => ({ bearingDeg: (i + 0.5) * stepDeg, hidden })).filter(({ hidden }) => hidden.length === 1)
  const [most] = single.toSorted((a, b) => shareOf(b.hidden) - shareOf(a.hidden))
  if (most === undefined) return null
  const { lowestElevationDeg, highestElevationDeg } = most.hidden[0]!
  return { bearingDeg: most.bearingDeg, outcome: runMethod(skyBlockedMethod, { widthDeg: stepDeg, lowestElevationDeg, highestElevationDeg, skyFromElevationDeg }) }
}

/** Degrees next to one another at which something hides; one that runs through the bow is one. */
function sectorsOf(degrees: readonly (readonly Hidden[])[]): readonly SkySector[] {
  const free = degrees.findIndex(hidden => hidden.length === 0)
  const start = free === -1 ? 0 : free
  const sectors: { first: number; hidden: (readonly Hidden[])[] }[] = []
  for (let i = 0; i < degrees.length; i += 1) {
    const place = start + i
    const hidden = degrees[place % degrees.length]!
    if (hidden.length === 0) continue
    const last = sectors.at(-1)
    if (last !== undefined && last.first + last.hidden.length === place) last.hidden.push(hidden)
    else sectors.push({ first: place, hidden: [hidden] })
  }
  return sectors.map(({ first, hidden }) => ({
    fromDeg: (first % degrees.length) * stepDeg,
    toDeg: ((first + hidden.length - 1) % degrees.length + 1) * stepDeg,
    structureTags: [...new Set(hidden.flat().map(({ structureTag }) => structureTag))],
    highestElevationDeg: Math.max(...hidden.flat().map(({ highestElevationDeg }) => highestElevationDeg)),
    blockedPercent: hidden.reduce((sum, each) => sum + shareOf(each), 0),
  })).toSorted((a, b) => a.fromDeg - b.fromDeg)
}

export const skyFindings = (skies: readonly SkyView[]): readonly Finding[] => skies.flatMap(({ tag, blockedPercent, sectors, comparison }) =>
  (comparison === null || comparison.within ? [] : [find(skyBlockedAbove, {
    subject: { kind: 'equipment', id: tag }, field: 'positionM', evidence: { blockedPercent: blockedPercent! }, limit: comparison.limit,
    context: { structures: inWords([...new Set(sectors.flatMap(({ structureTags }) => structureTags))]) },
  })]))
