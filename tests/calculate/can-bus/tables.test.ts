/** Our tables of bus cable, frames and parameter groups against published ones and against the open dataset's package. */
import { getAllPGNs } from '@canboat/ts-pgns'
import { describe, expect, it } from 'vitest'
import { frameBits, headBitCount } from '../../../src/calculate/can-bus/frame-bits.calc.js'
import { fastPacketFrames } from '../../../src/calculate/can-bus/message-frames.calc.js'
import { framingOf, networkManagementPgns, parameterGroups } from '../../../src/references/tables/can-parameter-groups.js'
import { busCables } from '../../../src/references/tables/can-rules.js'
import type { BusCable } from '../../../src/model/vessel.js'
import { referenceTable } from '../../support/reference-table.js'

describe('frames (Davis et al. 2007, Linux can/length.h)', () => {
  it.each(referenceTable('can-frame-bits').map(row => [Number(row['data_bytes']), row] as const))('%i bytes', (dataByteCount, row) => {
    const extended = frameBits({ dataByteCount, headBitCount: headBitCount.extended })
    const standard = frameBits({ dataByteCount, headBitCount: headBitCount.standard })
    expect([extended.nominalBitCount, extended.worstBitCount, standard.nominalBitCount, standard.worstBitCount])
      .toEqual(['ext29_nominal_bits_incl_ifs', 'ext29_worst_bits_incl_ifs', 'std11_nominal_bits', 'std11_worst_bits'].map(column => Number(row[column])))
    // 4 µs a bit at 250 kbit/s.
    expect(4 * extended.worstBitCount).toBe(Number(row['ext29_worst_us_250k']))
  })
  it.each(referenceTable('can-fast-packet-frames').map(row => [Number(row['payload_bytes']), row] as const))('a fast packet of %i bytes', (payloadByteCount, row) => {
    const { frameCount } = fastPacketFrames({ payloadByteCount })
    expect(frameCount).toBe(Number(row['frames']))
    expect(frameCount * 160 * 0.004).toBeCloseTo(Number(row['worst_case_ms_250k']), 9)
  })
})

describe('bus cable (installation guides)', () => {
  it.each(referenceTable('can-cable').map(row => [row['cable']! as BusCable, row] as const))('%s', (cable, row) => {
    const { resistanceOhmPerKm, currentA, backboneM } = busCables[cable]
    expect([resistanceOhmPerKm / 1000, currentA, backboneM]).toEqual([expect.closeTo(Number(row['r_ohm_per_m_per_conductor']), 9), Number(row['segment_current_A']), Number(row['max_backbone_m'])])
  })
})

/** Where ours is another value on purpose. */
const ownBytes: Readonly<Record<number, string>> = {
  129540: 'the least is 3 bytes; ours are those with twelve satellites in view',
}

describe('parameter groups (open dataset, as extracted)', () => {
  it.each(referenceTable('can-pgn').map(row => [Number(row['pgn']), row] as const))('%i', (pgnNumber, row) => {
    const group = parameterGroups.get(pgnNumber)!
    const bytes = row['length_bytes'] || row['min_length_bytes']
    expect([group.name, group.priorityNumber, group.framing, group.interval]).toEqual([
      row['description'], Number(row['default_priority']), row['framing']!.toLowerCase(), row['on_event_or_request'] === 'yes' ? 'on event' : Number(row['interval_ms']),
    ])
    if (ownBytes[pgnNumber] === undefined) expect(group.payloadByteCount).toBe(Number(bytes))
    if (row['frames_per_s'] === '' || ownBytes[pgnNumber] !== undefined) return
    const frames = group.framing === 'single' ? 1 : fastPacketFrames(group).frameCount
    expect((1000 * frames) / Number(group.interval)).toBeCloseTo(Number(row['frames_per_s']), 2)
    // The dataset's extract rounds the share to four digits.
    expect((1000 * frames * 160 * 100) / Number(group.interval) / 250_000).toBeCloseTo(Number(row['worst_case_load_pct_250k']), 3)
  })
})

const dataset = getAllPGNs()

/** Differences between the version that our table is from and that of the package. */
const changedSince: Readonly<Record<number, { readonly what: readonly string[]; readonly why: string }>> = {
  59392: { what: ['name', 'priority'], why: 'the package names the range of numbers that it falls in' },
  126208: { what: ['name', 'priority', 'bytes'], why: 'the package names the range of numbers that it falls in, with the longest packet' },
  126464: { what: ['priority'], why: 'the package gives none' },
  129540: { what: ['bytes'], why: ownBytes[129540]! },
  129794: { what: ['bytes'], why: '76 bytes with the spare bits of the later version, 75 in the package' },
}

describe('parameter groups (package of the open dataset)', () => {
  const marine = [...parameterGroups.values()].filter(({ citation }) => citation.source === 'open-pgn-dataset')
  it('has them all', () => {
    expect(marine.length).toBeGreaterThan(70)
    const known = new Set(dataset.map(({ PGN }) => PGN))
    expect(marine.filter(({ pgnNumber }) => !known.has(pgnNumber))).toEqual([])
  })
  it.each(marine.map(group => [group.pgnNumber, group] as const))('%i', (pgnNumber, group) => {
    const published = dataset.find(({ PGN }) => PGN === pgnNumber)!
    const interval = published.TransmissionInterval ?? (published.TransmissionIrregular === true || group.interval === 'on event' ? 'on event' : null)
    const same: Readonly<Record<string, boolean>> = {
      name: published.Description === group.name,
      priority: (published.Priority ?? null) === group.priorityNumber,
      framing: published.Type.toLowerCase() === group.framing,
      bytes: (published.Length ?? published.MinLength) === group.payloadByteCount,
      interval: interval === group.interval,
      instance: (published.Fields ?? []).some(({ Name, PartOfPrimaryKey }) => Name === 'Instance' && PartOfPrimaryKey === true) === group.hasInstance,
    }
    expect(Object.keys(same).filter(key => !same[key])).toEqual(changedSince[pgnNumber]?.what ?? [])
  })
  it('says of the makers’ groups how they go', () => {
    for (const { PGN, Type, Fallback } of dataset) {
      // The commanded address goes by the transport protocol.
      if (Fallback === true || PGN === 65240 || PGN < 61184 || (PGN > 65535 && PGN < 126720) || (PGN > 126720 && PGN < 130816)) continue
      expect(framingOf(PGN, 8, 'nmea 2000'), String(PGN)).toBe(Type.toLowerCase())
    }
  })
  it('knows what every device sends for the bus itself', () => {
    for (const pgnNumber of [59392, 59904, 60928, 126208, 126464, 126993, 126996, 126998]) expect(networkManagementPgns.has(pgnNumber)).toBe(true)
    expect(networkManagementPgns.has(129025)).toBe(false)
  })
})
