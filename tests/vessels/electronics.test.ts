/**
 * The faults of networks, radio and placement that cost most, each found in its small vessel with the evidence that a sum by
 * hand gives. `sum` is evaluated by mathjs; the data it takes stand in the case's folder, published figures are named.
 */
import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { type CaseName, examineCase } from './cases.js'

interface Fault {
  readonly what: string
  readonly vessel: CaseName
  readonly finding: string
  readonly subject: string
  /** Name of the evidence, and the sum that it comes to. */
  readonly evidence?: readonly [name: string, sum: string]
  readonly limit?: number
  /** What the sentence must name. */
  readonly names: readonly string[]
}

const faults: readonly Fault[] = [
  {
    // 900 frames a second of B61's own and three usual messages; a frame of 8 bytes has at most 160 bits (Davis et al. 2007), the bus 250 kbit/s.
    what: 'an overloaded bus', vessel: 'can-bus', finding: 'CAN116', subject: 'N6',
    evidence: ['worstLoadPercent', '100 * 160 * (9 * 100 + 10 + 10 + 1/1.5 + 1/1.5) / 250000'], limit: 50, names: ['N6'],
  },
  { what: 'a missing terminator', vessel: 'can-bus', finding: 'CAN105', subject: 'N1', evidence: ['terminatorCount', '1'], names: ['R1', 'last end'] },
  {
    // Class 4 leaves 25.5 W at the device, class 3 gives 12.95 W (IEEE 802.3 as printed in two tables).
    what: 'a port without enough power', vessel: 'ethernet', finding: 'ETH102', subject: 'B1', evidence: ['offeredPowerW', '12.95'], limit: 25.5, names: ['class 4', 'class 3', 'port 1', 'N1'],
  },
  { what: 'an address clash', vessel: 'ethernet', finding: 'ETH105', subject: 'P2', names: ['192.168.10.11', 'P1'] },
  { what: 'antennas too close', vessel: 'radio', finding: 'RAD104', subject: 'T12', evidence: ['distanceM', 'sqrt((4 - 4)^2 + (2.1 - 1.2)^2)'], limit: 1.2, names: ['T11'] },
  {
    what: 'a magnetic loudspeaker beside the compass', vessel: 'placement', finding: 'PLC101', subject: 'P1',
    evidence: ['distanceM', 'sqrt((8 - 8)^2 + (0.7 - 0.4)^2 + (4 - 4)^2)'], limit: 0.6, names: ['B1', 'steering compass'],
  },
  {
    // Keel 1.9 m, transducer 0.6 m below the waterline: −1.3 m to the keel, −1.0 m is set.
    what: 'a depth shown too deep', vessel: 'placement', finding: 'PLC103', subject: 'B4', evidence: ['depthErrorM', '-1.0 - (0.6 - 1.9)'], names: ['too deep'],
  },
]

describe.each(faults)('$what', ({ vessel, finding, subject, evidence, limit, names }) => {
  const found = async () => {
    const examination = await examineCase(vessel)
    if (examination.status !== 'examined') throw new Error(`${vessel} has errors`)
    return examination.findings.find(({ id, subject: about }) => id === finding && about.id === subject)
  }

  it('is found at its subject, with the evidence of the sum', async () => {
    const it = await found()
    expect(it).toBeDefined()
    if (evidence !== undefined) expect(it!.evidence[evidence[0]]).toBeCloseTo(Number(evaluate(evidence[1])), 9)
    if (limit !== undefined) expect(it!.limit!.value).toBe(limit)
  })

  it('is told by name, with its place in the files', async () => {
    const it = await found()
    for (const name of names) expect(it!.message).toContain(name)
    expect(it!.at?.line).toBeGreaterThan(0)
  })
})
