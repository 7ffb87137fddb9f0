/** The small vessel with each fault: not only that it is found, but by which figures. Sums by hand. */
import { describe, expect, it } from 'vitest'
import { examineCase } from '../../vessels/cases.js'

const examination = await examineCase('ethernet')
if (examination.status !== 'examined') throw new Error('the case cannot be read')
const { findings, results: { ethernet } } = examination

describe('the evidence', () => {
  it.each([
    ['ETH101', { channelLengthM: 101 }, 100],
    ['ETH102', { offeredPowerW: 12.95, askedPowerW: 25.5 }, 25.5],
    // 15.4 + 7 + 7
    ['ETH103', { reservedPowerW: expect.closeTo(29.4, 9) }, 20],
    ['ETH107', { streamsMbitPerS: 3 * 40 }, 100],
    ['ETH108', { linkCount: 2 }, null],
    ['ETH109', { cableCount: 2 }, null],
    ['ETH201', { itemCount: 1 }, null],
    ['ETH303', { loadPercent: 80, streamsMbitPerS: 80 }, 70],
    ['ETH305', { timesCount: 2 }, null],
    ['ETH306', { networkPowerW: 8 }, 6.49],
    ['ETH307', { speedMbitPerS: 100, devicesMbitPerS: 1000 }, null],
    ['ETH308', { powerVoltageV: 46 }, 50],
  ])('of %s', (id, evidence, limit) => {
    const [finding] = findings.filter(each => each.id === id)
    expect([finding?.evidence, finding?.limit?.value ?? null]).toEqual([evidence, limit])
  })
  // Each over 2 Ω (10 m of type 1) at 50 V: loss about R · (P / U)² = 2 · 0.25² = 0.125 W, 2 · 0.16² = 0.051 W twice.
  it('of ETH104 has the loss in it: 12.5 + 8 + 8 W and 0.23 W', () => expect(findings.find(({ id }) => id === 'ETH104')?.evidence['drawnPowerW']).toBeCloseTo(28.73, 2))
})

it('what cannot be reached is not assessed', () => {
  expect(ethernet.notAssessed.map(({ subjectTag, reason }) => `${subjectTag} ${reason}`)).toEqual([expect.stringMatching(/^B6 load of its stream "Radar picture": no way over the network to P9/), 'LAN1 load of the links: the streams of B1, B2, B3, B4 and B5 are not recorded'])
})
