/** Rules for power cables that no current decides: the thinnest that may be used, and the thinnest that may be joined in parallel. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { lookup } from '../../model/lookup.js'
import type { Cable, CableType, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { deviceAdvice } from '../../references/basis/device-advice.js'
import { awgSize } from '../../references/tables/astm-b258-awg.js'
import { saySize } from '../../units/format.js'
import { exceeds } from '../compare.js'
import { conductorBelowMinimum, parallelTooThin } from './findings.js'

export function cableRules(vessel: Vessel, basis: Basis): readonly Finding[] {
  const { cableTypes } = lookup(vessel)
  return vessel.cables.flatMap(cable => {
    const type = cableTypes.get(cable.typeTag ?? '')
    if (cable.status === 'removed' || type === undefined || (type.use !== 'power' && type.use !== 'ac power')) return []
    return [...minimumSize(basis, cable, type), ...parallel(cable, type)]
  })
}

function minimumSize({ minimumSize: { inSheath, separate, citation } }: Basis, cable: Cable, { size, cores }: CableType): readonly Finding[] {
  if (size === null) return []
  const least = cable.carries === 'both' || (cores ?? 1) > 1 ? inSheath : separate
  const limit: Limit = { relation: 'at least', value: least.crossSectionMm2, citation }
  if (!exceeds(size.crossSectionMm2, limit)) return []
  return [find(conductorBelowMinimum, {
    ...about(cable), limit, evidence: { crossSectionMm2: size.crossSectionMm2 },
    context: { size: saySize(size), least: saySize(least), kind: least === inSheath ? 'in a sheath' : 'by itself' },
  })]
}

function parallel(cable: Cable, { size }: CableType): readonly Finding[] {
  if (cable.parallelCount < 2 || size === null) return []
  const { mm2, awg, citation } = deviceAdvice.parallel
  const limit: Limit = { relation: 'at least', value: size.system === 'awg' ? awgSize(awg)!.crossSectionMm2 : mm2, citation }
  if (!exceeds(size.crossSectionMm2, limit)) return []
  return [find(parallelTooThin, { ...about(cable), limit, evidence: { crossSectionMm2: size.crossSectionMm2 }, context: { size: saySize(size), least: size.system === 'awg' ? `${awg}\u00A0AWG` : `${mm2}\u00A0mm²` } })]
}

const about = ({ tag }: Cable) => ({ subject: { kind: 'cable', id: tag }, field: 'typeTag' })
