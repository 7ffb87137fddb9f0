/** Circuits of the sample vessel that were found to be reckoned wrongly once, against sums done by hand. */
import { fileURLToPath } from 'node:url'
import { beforeAll, expect, it } from 'vitest'
import { examine, type Examined } from '../../../src/build.js'

let sample: Examined
beforeAll(async () => {
  const examined = await examine(fileURLToPath(new URL('../../../sample-vessel', import.meta.url)))
  if (examined.status !== 'examined') throw new Error('the sample vessel has errors')
  sample = examined
})

it('has exactly the findings that its README explains', () => {
  expect(sample.findings.map(({ id, subject }) => `${id} ${subject.id}`).toSorted())
    .toEqual([
      'CMP201 Grey Quillet', 'COM101 C24', 'COM101 C29', 'COM302 C11', 'COM302 C13', 'DCD102 A5.3', 'DCD201 W208', 'DCD301 F32', 'DCD305 G2.1',
      'DCD306 G41.1', 'DCD306 G42.1', 'DEP301 F1', 'ENG301 G1', 'FED202 E18', 'MNT101 Grey Quillet', 'PLC303 B6', 'RAD301 T3', 'RAD303 B1',
      'WWY101 WW23',
    ])
})

it('takes for each starter only its own way back', () => {
  // 0.0164 · 380 / 150 = 0.0415467 V a metre; W9 1.3, W63 2.9, W64 2.9, W11 1.4: 8.5 m, not W62 of the other engine.
  const drop = sample.results.voltageDrop.byCircuit.get('G2.1')!.toLoads.find(({ loadTag }) => loadTag === 'M14')!
  expect(drop.steps.map(({ cableTag }) => cableTag)).toEqual(['W9', 'W63', 'W64', 'W11'])
  expect(drop.voltageDropV).toBeCloseTo(0.0164 * 380 * 8.5 / 150, 9)
})

it.each([
  ['W46', 80, 'both outputs of the shore charger, 60 A and 20 A'],
  ['W48', 36, 'the charger between the banks: it takes 36 A, and the 30 A that it gives flow the other way'],
])('a shared way back of charging circuits: %s carries %d A (%s)', (cable, currentA) => {
  expect(sample.results.currentCarryingCapacity.byCable.get(cable)!.comparison!.value).toBeCloseTo(currentA, 9)
})
