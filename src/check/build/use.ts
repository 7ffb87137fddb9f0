/** What was measured → records of the vessel. */
import type { Measurement } from '../../model/vessel.js'
import type { Entry } from '../schema/kinds.js'

export const measurementOf = (reading: Entry<'measurements'>): Measurement => ({
  number: reading.number,
  subjectTag: reading.subject,
  atTag: reading.at ?? null,
  date: reading.date ?? null,
  by: reading.by ?? null,
  instrument: reading.instrument ?? null,
  voltageV: reading.voltage ?? null,
  sourceVoltageV: reading['source-voltage'] ?? null,
  voltageDropV: reading['voltage-drop'] ?? null,
  currentA: reading.current ?? null,
  insulationMOhm: reading.insulation ?? null,
  polarity: reading.polarity ?? null,
  residualCurrentA: reading['residual-current'] ?? null,
  tripTimeMs: reading['trip-time'] ?? null,
  internalResistanceMilliOhm: reading['internal-resistance'] ?? null,
  resistanceOhm: reading.resistance ?? null,
  busLoadPercent: reading['bus-load'] ?? null,
  vswrFactor: reading.vswr ?? null,
  notes: reading.notes ?? null,
})
