/**
 * Column of the load calculation (abyc-e11, from memory) by kind of equipment. Column A: loads that must be able to run
 * together; column B: loads that run now and then. What the rule does not name is placed by its use, and said to be.
 */
import type { LoadColumn } from '../../model/vessel.js'
import type { Citation } from '../bibliography.js'
import { type EquipmentKindKey, isEquipmentKind } from '../equipment-kinds.js'

export const loadColumnCitation: Citation = { source: 'abyc-e11', place: 'd.c. load calculation', standing: 'from memory' }

export interface LoadColumnRow {
  /** `none`: left out of the calculation. `largest in a`: the largest of them in A, the others in B. */
  readonly column: LoadColumn | 'largest in a' | 'none'
  readonly reason: string
}

const listed = (column: LoadColumnRow['column'], as: string): LoadColumnRow => ({ column, reason: `listed: ${as}` })
const byUse = (column: LoadColumnRow['column'], use: string): LoadColumnRow => ({ column, reason: `not listed: ${use}` })

const byKind: Partial<Record<EquipmentKindKey, LoadColumnRow>> = {
  'navigation light': listed('a', 'navigation lights'),
  'bilge blower': listed('a', 'bilge blowers'),
  'bilge pump': listed('a', 'bilge pumps'),
  'wiper': listed('a', 'windscreen wipers'),
  'vhf transceiver': listed('largest in a', 'largest radio in transmit'),
  'sonar module': listed('a', 'depth sounder'),
  'transducer': listed('a', 'depth sounder'),
  'radar scanner': listed('a', 'radar'),
  'radar power unit': listed('a', 'radar'),
  'searchlight': listed('a', 'searchlight'),
  'instrument': listed('a', 'instruments'),
  'display': listed('a', 'instruments'),
  'alarm panel': listed('a', 'alarm systems'),
  'smoke alarm': listed('a', 'alarm systems'),
  'gas detector': listed('a', 'alarm systems'),
  'bilge alarm sensor': listed('a', 'alarm systems'),
  'refrigerator': listed('a', 'refrigerator'),
  'engine': listed('a', 'engine electronics'),
  'engine control': listed('a', 'engine electronics'),
  'engine gateway': listed('a', 'engine electronics'),

  'ais transceiver': byUse('a', 'in use all the time under way'),
  'gnss receiver': byUse('a', 'in use all the time under way'),
  'heading sensor': byUse('a', 'in use all the time under way'),
  'attitude and heading sensor': byUse('a', 'in use all the time under way'),
  'autopilot computer': byUse('a', 'steering'),
  'autopilot drive': byUse('a', 'steering'),
  'steering pump': byUse('a', 'steering'),
  'network switch': byUse('a', 'instruments depend on it'),
  'gateway': byUse('a', 'instruments depend on it'),
  'can bus tee': byUse('a', 'instruments live on it'),
  'gyro stabiliser': byUse('a', 'in use all the time under way'),

  'socket': listed('b', 'outlets'),
  'light': listed('b', 'cabin lights'),
  'horn': listed('b', 'horn'),
  'trim tab': listed('b', 'trim tabs'),
  'toilet': listed('b', 'toilets'),
  'windlass': listed('b', 'anchor windlass'),
  'winch': listed('b', 'winches'),
  'pump': listed('b', 'fresh-water pumps'),

  'starter motor': byUse('none', 'engine starting is short and no part of the sum'),
}
const other: LoadColumnRow = listed('b', 'additional electronics and whatever else')

export function loadColumnOf(kind: string): LoadColumnRow {
  return (isEquipmentKind(kind) ? byKind[kind] : undefined) ?? other
}
