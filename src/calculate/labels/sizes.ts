/** Which stock each use is printed on: the program's own sizes, and what the vessel's folder says of others. */
import { atLeast, atMost, find, type Finding } from '../../findings/finding.js'
import { labelFaults, type LabelFault } from '../../model/label-sheet.js'
import type { LabelSize, LabelSizeEntry, LabelUse, Vessel } from '../../model/vessel.js'
import type { Citation } from '../../references/bibliography.js'
import { labelSizeNotUsed, labelSizeUnknown, labelsOffSheet, labelsOverlap, wrapWithoutTail } from './findings.js'

export interface Stock {
  /** For each use the sizes to try, in their order; empty where there is none. */
  readonly byUse: Readonly<Record<LabelUse, readonly LabelSize[]>>
  readonly findings: readonly Finding[]
}

const entered: Citation = { source: 'vessel-data', place: 'the label size as entered' }
/** Height of the sheet by the vessel's units: US Letter or A4. */
const paperHeightMm = { us: 279.4, metric: 297 } as const

export function stockOf({ labelSizes, units }: Pick<Vessel, 'labelSizes' | 'units'>, known: readonly LabelSize[]): Stock {
  const resolved = labelSizes.map(entry => resolve(entry, known))
  const own = resolved.flatMap(({ size }) => (size === null ? [] : [size]))
  const usual = known.filter(({ pageHeightMm, key }) => pageHeightMm === paperHeightMm[units] && own.every(size => size.key !== key))
  const sizesFor = (use: LabelUse): readonly LabelSize[] => {
    const chosen = own.filter(({ uses }) => uses.includes(use))
    return chosen.length > 0 ? chosen : usual.filter(({ uses }) => uses.includes(use))
  }
  return {
    byUse: { cables: sizesFor('cables'), ways: sizesFor('ways'), equipment: sizesFor('equipment'), danger: sizesFor('danger') },
    findings: resolved.flatMap(({ findings }) => findings),
  }
}

interface Resolved { readonly size: LabelSize | null; readonly findings: readonly Finding[] }

/** With the key of a size that is known and no use of its own, an entry stands in for that size. */
function resolve(entry: LabelSizeEntry, known: readonly LabelSize[]): Resolved {
  const alike = known.find(({ key }) => key === entry.key)
  const about = { subject: { kind: 'label size', id: entry.key }, field: null, evidence: {}, limit: null }
  if (entry.form === null) {
    if (alike === undefined) return { size: null, findings: [find(labelSizeUnknown, { ...about, context: { known: known.map(({ key }) => key).join(', ') } })] }
    return entry.uses.length === 0 ? { size: null, findings: [find(labelSizeNotUsed, about)] } : { size: { ...alike, uses: entry.uses }, findings: [] }
  }
  const faults = labelFaults(entry)
  if (faults.length > 0) return { size: null, findings: faults.map(fault => findingOf(entry.key, fault)) }
  const uses = entry.uses.length > 0 ? entry.uses : alike?.uses ?? []
  return uses.length === 0 ? { size: null, findings: [find(labelSizeNotUsed, about)] } : { size: { ...entry, uses }, findings: [] }
}

function findingOf(id: string, fault: LabelFault): Finding {
  const about = { subject: { kind: 'label size', id }, field: fault.field }
  const across = fault.field === 'columnsCount' || fault.field === 'stepAcrossMm'
  const context = { of: across ? 'column' : 'row' }
  switch (fault.is) {
    case 'off the sheet': return find(labelsOffSheet, { ...about, evidence: { reachMm: fault.reachMm }, limit: atMost(fault.pageMm, entered), context })
    case 'overlap': return find(labelsOverlap, { ...about, evidence: { stepMm: fault.stepMm }, limit: atLeast(fault.labelMm, entered), context })
    case 'no tail': return find(wrapWithoutTail, { ...about, evidence: {}, limit: null })
  }
}
