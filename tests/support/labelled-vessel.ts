/** A vessel of cables, ways and items whose labels can be counted by hand, with the manual's own label stock. */
import { calculate } from '../../src/calculate/calculate.js'
import { noOccasion } from '../../src/calculate/occasion.js'
import { readContent } from '../../src/load/read-content.js'
import type { Results } from '../../src/model/results.js'
import type { LabelsResults } from '../../src/model/results/labels.js'
import type { LabelSize, Vessel } from '../../src/model/vessel.js'
import { bases } from '../../src/references/basis/bases.js'
import { aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, aZone } from './vessel-builder.js'

export const { labelSizes, dangerTexts } = await readContent()

export const resultsWithLabels = (vessel: Vessel): Results => calculate(vessel, bases[vessel.basis], { ...noOccasion, labelSizes, dangerTexts })
export const labelsOf = (vessel: Vessel): LabelsResults => resultsWithLabels(vessel).labels

export function knownSize(key: string): LabelSize {
  const size = labelSizes.find(each => each.key === key)
  if (size === undefined) throw new Error(`no label size ${key}`)
  return size
}

const numbers = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i + 1)

/** Ten cables of 6 mm, seven ways, 25 items: sheets that are neither full nor one. */
export const labelledVessel = (given: Partial<Vessel> = {}): Vessel => aVessel({
  zones: [aZone({ tag: 'saloon', name: 'Saloon' })],
  cableTypes: [aCableType({ tag: '6mm', use: 'signal', outerDiameterMm: 6 })],
  cables: numbers(10).map(i => aCable({ tag: `W${i}`, from: 'X1', to: 'X2', typeTag: '6mm' })),
  panels: [aPanel({ tag: 'A1', name: 'Panel', zoneTag: 'saloon' })],
  circuits: numbers(7).map(i => aCircuit({ tag: `A1.${i}`, fedFromTag: 'A1', way: i, name: 'Lights', protection: aProtection('magnetic breaker', 10) })),
  equipment: numbers(24).map(i => anEquipment({ tag: `X${i}`, name: `Junction box ${i}`, kind: 'junction box', zoneTag: 'saloon' })),
  ...given,
})
