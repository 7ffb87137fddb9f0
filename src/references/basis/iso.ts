import { isoAnnexA, isoBundleFactors } from '../tables/iso-13297-annex-a.js'
import type { Basis } from './basis.js'
import { commonReadings } from './readings.js'

export const iso: Basis = {
  id: 'iso',
  title: 'ISO 13297',
  voltageDropPercent: {
    critical: { relation: 'at most', value: 3, citation: { source: 'iso-10133', place: 'navigation lights, bilge pumps, bilge blowers, vital equipment' } },
    general: { relation: 'at most', value: 10, citation: { source: 'iso-13297', place: 'general limit at full load' } },
    feeder: { relation: 'at most', value: 3, citation: { source: 'iso-10133', place: 'main conductors of panels and switchboards' } },
    ac: { relation: 'at most', value: 5, citation: { source: 'iec-60364-5-52', place: 'table G.52.1, other uses than lighting' } },
  },
  dropMethod: 'voltage-drop-by-iso-constant',
  ampacity: isoAnnexA,
  bundle: { requiredFromV: 0, ...isoBundleFactors },
  protection: {
    citation: { source: 'iso-13297', place: 'overcurrent protection: rating at most the current of table A.1', standing: 'from memory' },
    permitted: null,
    exempt: [{ reason: 'engine starting', citation: { source: 'iso-13297', place: 'overcurrent protection: battery to starter', standing: 'from memory' } }],
  },
  devices: {
    distance: {
      normal: { relation: 'at most', value: 200, citation: { source: 'iso-13297', place: 'overcurrent protection: within 200 mm of the source', standing: 'from memory' } },
      enclosed: null,
      atBattery: null,
    },
    interruptingCapacity: { byClass: false, citation: { source: 'iso-13297', place: 'interrupting capacity at least the prospective short-circuit current', standing: 'from memory' } },
    voltageRating: { citation: { source: 'iso-13297', place: 'voltage rating of overcurrent protection', standing: 'from memory' } },
    panel: { citation: { source: 'iso-13297', place: 'panel-boards: protected at not more than their rating', standing: 'from memory' } },
  },
  minimumSize: {
    inSheath: { system: 'mm2', designation: '0.75', crossSectionMm2: 0.75 },
    separate: { system: 'mm2', designation: '1', crossSectionMm2: 1 },
    citation: { source: 'iso-10133', place: '7.7' },
  },
  readings: [
    ...commonReadings,
    'The constant 0.0164 Ω·mm²/m is below the resistivity of copper at 20 °C, so it understates the drop; the physical value stands beside it.',
    'The bundle factor applies at every voltage, from four loaded conductors on.',
    'The distance of 200 mm from source to device is from memory, and one published page gives 300 mm for ISO 13297: record the distance that holds for the vessel under conditions.',
  ],
  citations: [
    { source: 'iso-13297', place: '' },
    { source: 'iso-10133', place: '' },
  ],
}
