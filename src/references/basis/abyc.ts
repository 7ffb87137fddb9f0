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
  },
  dropMethod: 'voltage-drop-by-abyc-constant',
  ampacity: cfrTable5,
  bundle: { requiredFromV: 50, ...cfrBundleFactors },
  protection: {
    citation: { source: '33-cfr-183', place: '183.455(c)' },
    permitted: { shareOfCapacity: 1.5, anyRatingBelowV: 50, citation: { source: '33-cfr-183', place: '183.455(c)' } },
    exempt: [{ reason: 'engine starting', citation: { source: 'abyc-e11', place: 'overcurrent protection: cranking-motor conductors' } }],
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
  ],
  citations: [
    { source: 'abyc-e11', place: '' },
    { source: '33-cfr-183', place: '' },
  ],
}
