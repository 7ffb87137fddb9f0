import { awgSize } from '../tables/astm-b258-awg.js'
import { cfrBundleFactors, cfrTable5 } from '../tables/cfr-33-183-table-5.js'
import type { Basis } from './basis.js'
import { commonReadings } from './readings.js'

export const abyc: Basis = {
  id: 'abyc',
  title: 'ABYC E-11 with 33 CFR 183',
  voltageDropPercent: {
    critical: { relation: 'at most', value: 3, citation: { source: 'abyc-e11', place: 'voltage drop: navigation lights, bilge blowers, electronic equipment' } },
    general: { relation: 'at most', value: 10, citation: { source: 'abyc-e11', place: 'voltage drop: circuits where it is not critical' } },
    feeder: { relation: 'at most', value: 3, citation: { source: 'abyc-e11', place: 'voltage drop: main feeders of panelboards and switchboards' } },
    ac: { relation: 'at most', value: 5, citation: { source: 'nec-210', place: '210.19(A), informational note: feeder and branch together' } },
  },
  dropMethod: 'voltage-drop-by-abyc-constant',
  ampacity: cfrTable5,
  bundle: { requiredFromV: 50, ...cfrBundleFactors },
  protection: {
    citation: { source: '33-cfr-183', place: '183.455(c)' },
    permitted: { shareOfCapacity: 1.5, anyRatingBelowV: 50, citation: { source: '33-cfr-183', place: '183.455(c)' } },
    exempt: [{ reason: 'engine starting', citation: { source: 'abyc-e11', place: 'overcurrent protection: cranking-motor conductors' } }],
  },
  devices: {
    distance: {
      // 7, 40 and 72 inches
      normal: { relation: 'at most', value: 177.8, citation: { source: '33-cfr-183', place: '183.455(b)(1), 7 in' } },
      enclosed: { relation: 'at most', value: 1016, citation: { source: '33-cfr-183', place: '183.455(b)(2), 40 in in a sheath or enclosure' } },
      atBattery: { relation: 'at most', value: 1828.8, citation: { source: 'abyc-e11', place: 'conductor joined directly to a battery terminal, 72 in' } },
    },
    interruptingCapacity: { byClass: true, citation: { source: 'abyc-e11', place: 'interrupting capacity of overcurrent protection' } },
    voltageRating: { citation: { source: '33-cfr-183', place: '183.455(d)', standing: 'from memory' } },
    panel: { citation: { source: 'abyc-e11', place: 'panelboards: protected at not more than their rating', standing: 'from memory' } },
  },
  minimumSize: {
    inSheath: awgSize('18')!,
    separate: awgSize('16')!,
    citation: { source: '33-cfr-183', place: '183.425(d), (e)' },
  },
  readings: [
    ...commonReadings,
    'The bundle factor is required from 50 V on (33 CFR 183.435(b)); below that the value with it is shown as advice.',
    'A rating above the capacity of the conductor is pointed out, and is held against the limit of 150 %.',
    'The first device behind a source is a main device, those behind it are branch devices (ABYC E-11 tables V.A and V.B).',
    'A conductor joined directly to a battery terminal may be 72 in long up to its device; whether a sheath is asked for there as well was not read, so lay it in one.',
  ],
  citations: [
    { source: 'abyc-e11', place: '' },
    { source: '33-cfr-183', place: '' },
  ],
}
