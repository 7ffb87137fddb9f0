/** What every label says, and whether it can be read at its size. */
import { find, type Finding } from '../../findings/finding.js'
import { isThere, lookup } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { Label, LabelsResults, LabelWords } from '../../model/results/labels.js'
import type { LabelSize, LabelUse, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Occasion } from '../occasion.js'
import type { Upstream } from '../upstream.js'
import { labelTextFindings } from './alike.js'
import { dangerLabels, type DangerSources } from './danger-labels.js'
import { lettersTooSmall } from './findings.js'
import { layOut, readability } from './layout.js'
import { inOrder } from './order.js'
import { stockOf } from './sizes.js'
import { cableLabels, equipmentLabels, wayLabels } from './words.js'
import { wrapOn, wrapSizes } from './wrap-size.js'

/** Without any label sizes nothing is laid out: the occasion then has none of the manual's general data. */
export function labelsPass(vessel: Vessel, _basis: Basis, before: Upstream & DangerSources, { labelSizes, dangerTexts }: Occasion): LabelsResults {
  const stock = stockOf(vessel, labelSizes)
  const words = [...cableLabels(vessel), ...wayLabels(vessel), ...equipmentLabels(vessel), ...dangerLabels(vessel, before, dangerTexts)]
  const made = words.map(each => labelOf(vessel, each, stock.byUse[each.use])).filter(each => each !== null)
  const labels = inOrder(vessel, made.map(({ label }) => label))
  const used = new Map(made.map(({ size }) => [size.key, size]))
  return {
    sizes: [...used.values()],
    labels,
    notAssessed: labelSizes.length === 0 ? [] : [...unknownDiameters(vessel, stock.byUse.cables), ...unknownBatteries(vessel)],
    findings: [...stock.findings, ...once(made.flatMap(({ findings }) => findings)), ...labelTextFindings(vessel)],
  }
}

interface Made { readonly label: Label; readonly size: LabelSize; readonly findings: readonly Finding[] }

/** The first size on which it can be read, else the one on which it can be read best. */
function labelOf(vessel: Vessel, words: LabelWords, sizes: readonly LabelSize[]): Made | null {
  const diameterMm = words.use === 'cables' ? outerDiameterMm(vessel, words.aboutTag) : null
  const fitting = words.use === 'cables' ? wrapSizes(words.aboutTag, diameterMm, sizes) : { sizes, finding: null }
  const tried = fitting.sizes.map(size => ({ size, ...layOut(words, size) }))
  const chosen = tried.find(({ comparison }) => comparison.within) ?? tried.toSorted((a, b) => readability(b) - readability(a))[0]
  if (chosen === undefined) return null
  const { size, layout, comparison } = chosen
  const label: Label = { ...words, sizeKey: size.key, layout, comparison, wrap: size.form === 'wrap' && diameterMm !== null ? wrapOn(diameterMm, size) : null }
  return { label, size, findings: [...(comparison.within ? [] : [tooSmall(label)]), ...(fitting.finding === null ? [] : [fitting.finding])] }
}

const subjectsOfUse: Readonly<Record<LabelUse, { readonly kind: string; readonly what: string; readonly shorten: string }>> = {
  cables: { kind: 'cable', what: 'Cable', shorten: '"label-from" and "label-to", or the terminals at its ends' },
  ways: { kind: 'circuit', what: 'Circuit', shorten: 'its name' },
  equipment: { kind: 'equipment', what: 'Item', shorten: 'its name' },
  danger: { kind: 'equipment', what: 'Danger label of', shorten: 'the names that it lists' },
}

function tooSmall({ use, aboutTag, end, sizeKey, comparison }: Label): Finding {
  const { kind, what, shorten } = subjectsOfUse[use]
  return find(lettersTooSmall, {
    subject: { kind, id: aboutTag }, field: end === null ? 'name' : end === 'from' ? 'labelFrom' : 'labelTo',
    evidence: { letterHeightMm: comparison.value }, limit: comparison.limit, context: { what, size: sizeKey, use, shorten },
  })
}

/** The two ends of a cable often have the same fault: it is told once. */
function once(findings: readonly Finding[]): readonly Finding[] {
  const told = new Map(findings.toReversed().map(finding => [`${finding.id} ${finding.subject.id}`, finding]))
  return findings.filter(finding => told.get(`${finding.id} ${finding.subject.id}`) === finding)
}

function outerDiameterMm(vessel: Vessel, cableTag: Tag): number | null {
  const { cables, cableTypes } = lookup(vessel)
  return cableTypes.get(cables.get(cableTag)?.typeTag ?? '')?.outerDiameterMm ?? null
}

function unknownDiameters(vessel: Vessel, sizes: readonly LabelSize[]): readonly Gap[] {
  if (!sizes.some(({ form }) => form === 'wrap')) return []
  return vessel.cables.filter(cable => isThere(cable) && outerDiameterMm(vessel, cable.tag) === null)
    .map(({ tag, typeTag }) => ({ subjectTag: tag, reason: typeTag === null ? 'its type is not recorded, so its label has the usual size' : `the outside diameter of type ${typeTag} is not recorded, so its label has the usual size` }))
}

const unknownBatteries = ({ batteries }: Vessel): readonly Gap[] => batteries.filter(battery => isThere(battery) && battery.chemistry === null)
  .map(({ tag }) => ({ subjectTag: tag, reason: 'its chemistry is not recorded, so there is no danger label for it' }))
