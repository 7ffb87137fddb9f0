/** Attenuation of a type of coaxial cable at a frequency: its maker's figures first, else the table of its kind. */
import type { Attenuation } from '../../model/results/radio.js'
import type { Coax } from '../../model/vessel.js'
import { coaxKinds, type CoaxKindKey, lossDbPer100FtByKind, tableFrequencyMHz } from '../../references/tables/coax-attenuation.js'
import { mPerFt } from '../../units/convert.js'
import { say } from '../../units/format.js'
import { runMethod } from '../run-method.js'
import { attenuationBetweenPointsMethod } from './attenuation-between-points.calc.js'
import { attenuationByRootMethod } from './attenuation-by-root.calc.js'

export function attenuationOf(coax: Coax | null, frequencyMHz: number): Attenuation {
  if (coax !== null && coax.attenuation.length > 0) return statedBy(coax.attenuation, frequencyMHz)
  const kind = coaxKinds.find(key => key === coax?.kind)
  return kind === undefined
    ? { status: 'not computed', method: attenuationByRootMethod.id, reason: 'neither the kind of its cable nor its maker’s attenuation is recorded' }
    : runMethod(attenuationByRootMethod, { statedAttenuationDbPer100M: tableDbPer100M(kind), statedFrequencyMHz: tableFrequencyMHz, frequencyMHz })
}

const tableDbPer100M = (kind: CoaxKindKey): number => lossDbPer100FtByKind[kind] / mPerFt

function statedBy(points: Coax['attenuation'], frequencyMHz: number): Attenuation {
  const exact = points.find(point => point.frequencyMHz === frequencyMHz)
  if (exact !== undefined) return { status: 'stated', attenuationDbPer100M: exact.lossDbPer100M }
  const [first] = points
  if (points.length === 1) return runMethod(attenuationByRootMethod, { statedAttenuationDbPer100M: first!.lossDbPer100M, statedFrequencyMHz: first!.frequencyMHz, frequencyMHz })
  const lower = points.findLast(point => point.frequencyMHz < frequencyMHz)
  const upper = points.find(point => point.frequencyMHz > frequencyMHz)
  if (lower === undefined || upper === undefined) {
    const [from, to] = [first!, points.at(-1)!].map(point => say('frequencyMHz', point.frequencyMHz))
    return { status: 'not computed', method: attenuationBetweenPointsMethod.id, reason: `its maker’s attenuation is recorded from ${from} to ${to}, and ${say('frequencyMHz', frequencyMHz)} is outside` }
  }
  return runMethod(attenuationBetweenPointsMethod, {
    lowerFrequencyMHz: lower.frequencyMHz, lowerAttenuationDbPer100M: lower.lossDbPer100M, upperFrequencyMHz: upper.frequencyMHz, upperAttenuationDbPer100M: upper.lossDbPer100M, frequencyMHz,
  })
}
