/**
 * Parameter groups: how long their data are, and how often they are usually sent. Community findings, not the standard's
 * text: a device may send faster, slower or not at all, and what is recorded of it goes first.
 */
import type { Citation } from '../bibliography.js'

/** `single`: one frame. `fast`: fast packet. `transport`: single up to 8 bytes, else the transport protocol. */
export type Framing = 'single' | 'fast' | 'transport'

export interface ParameterGroup {
  readonly pgnNumber: number
  readonly name: string
  readonly priorityNumber: number | null
  readonly framing: Framing
  /** Of a group of no fixed length the usual or the least number. */
  readonly payloadByteCount: number
  /** `on event`: when something happens or is asked for. Null: no usual interval is known. */
  readonly interval: number | 'on event' | null
  /** Whether the data say which engine, tank or battery they are about. */
  readonly hasInstance: boolean
  readonly citation: Citation
}

type Row = readonly [pgnNumber: number, name: string, priorityNumber: number | null, framing: Framing, payloadByteCount: number, intervalMs: number | 'on event' | null, instance: 'instance' | null]

const dataset: Citation = { source: 'open-pgn-dataset', place: 'list of parameter groups' }
const engineBus: Citation = { source: 'sae-j1939', place: 'part 71, usual repetition rates', standing: 'from memory' }

const marineRows: readonly Row[] = [
  [59392, 'ISO Acknowledgement', 6, 'single', 8, 'on event', null],
  [59904, 'ISO Request', 6, 'single', 3, 'on event', null],
  [60928, 'ISO Address Claim', 6, 'single', 8, 'on event', null],
  [126208, 'NMEA Group Function (request/command/ack)', 3, 'fast', 6, 'on event', null],
  [126464, 'PGN List (Transmit and Receive)', 6, 'fast', 1, 'on event', null],
  [126992, 'System Time', 3, 'single', 8, 1000, null],
  [126993, 'Heartbeat', 7, 'single', 8, 60000, null],
  [126996, 'Product Information', 6, 'fast', 134, 'on event', null],
  [126998, 'Configuration Information', 6, 'fast', 0, 'on event', null],
  [127237, 'Heading/Track control', 2, 'fast', 21, 250, null],
  [127245, 'Rudder', 2, 'single', 8, 100, 'instance'],
  [127250, 'Vessel Heading', 2, 'single', 8, 100, null],
  [127251, 'Rate of Turn', 2, 'single', 8, 100, null],
  [127252, 'Heave', 3, 'single', 8, null, null],
  [127257, 'Attitude', 3, 'single', 8, 1000, null],
  [127258, 'Magnetic Variation', 7, 'single', 8, 1000, null],
  [127488, 'Engine Parameters, Rapid Update', 2, 'single', 8, 100, 'instance'],
  [127489, 'Engine Parameters, Dynamic', 2, 'fast', 26, 500, 'instance'],
  [127493, 'Transmission Parameters, Dynamic', 2, 'single', 8, 100, 'instance'],
  [127496, 'Trip Parameters, Vessel', 5, 'fast', 14, 1000, null],
  [127497, 'Trip Parameters, Engine', 5, 'fast', 9, 1000, 'instance'],
  [127498, 'Engine Parameters, Static', 5, 'fast', 3, 'on event', 'instance'],
  [127501, 'Binary Switch Bank Status', 3, 'single', 8, null, 'instance'],
  [127502, 'Switch Bank Control', 3, 'single', 8, null, 'instance'],
  [127503, 'AC Input Status', 6, 'fast', 2, 1500, 'instance'],
  [127504, 'AC Output Status', 6, 'fast', 2, 1500, 'instance'],
  [127505, 'Fluid Level', 6, 'single', 8, 2500, 'instance'],
  [127506, 'DC Detailed Status', 6, 'fast', 11, 1500, 'instance'],
  [127507, 'Charger Status', 6, 'fast', 6, 1500, 'instance'],
  [127508, 'Battery Status', 6, 'single', 8, 1500, 'instance'],
  [127509, 'Inverter Status', 6, 'fast', 4, 1500, 'instance'],
  [127510, 'Charger Configuration Status', 6, 'fast', 8, 'on event', 'instance'],
  [127513, 'Battery Configuration Status', 6, 'fast', 8, 'on event', 'instance'],
  [127514, 'AGS Status', 6, 'fast', 5, 1500, 'instance'],
  [127751, 'DC Voltage/Current', null, 'single', 8, null, null],
  [128000, 'Leeway Angle', null, 'single', 8, null, null],
  [128259, 'Speed', 2, 'single', 8, 1000, null],
  [128267, 'Water Depth', 3, 'single', 8, 1000, null],
  [128275, 'Distance Log', 6, 'fast', 14, 1000, null],
  [128777, 'Anchor Windlass Operating Status', null, 'single', 8, null, null],
  [129025, 'Position, Rapid Update', 2, 'single', 8, 100, null],
  [129026, 'COG & SOG, Rapid Update', 2, 'single', 8, 250, null],
  [129029, 'GNSS Position Data', 3, 'fast', 43, 1000, null],
  [129033, 'Time & Date', 3, 'single', 8, 1000, null],
  [129038, 'AIS Class A Position Report', 4, 'fast', 28, 'on event', null],
  [129039, 'AIS Class B Position Report', 4, 'fast', 27, 'on event', null],
  [129040, 'AIS Class B Extended Position Report', 4, 'fast', 54, 'on event', null],
  [129041, 'AIS Aids to Navigation (AtoN) Report', 4, 'fast', 26, 'on event', null],
  [129044, 'Datum', 6, 'fast', 20, 10000, null],
  [129283, 'Cross Track Error', 3, 'single', 8, 1000, null],
  [129284, 'Navigation Data', 3, 'fast', 34, 1000, null],
  [129285, 'Navigation - Route/WP Information', 6, 'fast', 10, 'on event', null],
  [129291, 'Set & Drift, Rapid Update', 3, 'single', 8, 1000, null],
  [129301, 'Navigation - Route / Time to+from Mark', 3, 'fast', 10, 1000, null],
  [129539, 'GNSS DOPs', 6, 'single', 8, 1000, null],
  // 3 bytes and 12 for each of twelve satellites.
  [129540, 'GNSS Sats in View', 6, 'fast', 147, 1000, null],
  [129793, 'AIS UTC and Date Report', 7, 'fast', 24, 'on event', null],
  [129794, 'AIS Class A Static and Voyage Related Data', 6, 'fast', 76, 'on event', null],
  [129798, 'AIS SAR Aircraft Position Report', 4, 'fast', 27, 'on event', null],
  [129802, 'AIS Safety Related Broadcast Message', 5, 'fast', 6, 'on event', null],
  [129808, 'DSC Distress Call Information', 4, 'fast', 60, 'on event', null],
  [129809, 'AIS Class B static data (msg 24 Part A)', 6, 'fast', 27, 'on event', null],
  [129810, 'AIS Class B static data (msg 24 Part B)', 6, 'fast', 35, 'on event', null],
  [130306, 'Wind Data', 2, 'single', 8, 100, null],
  [130310, 'Environmental Parameters (obsolete)', 5, 'single', 8, 500, null],
  [130311, 'Environmental Parameters', 5, 'single', 8, 500, null],
  [130312, 'Temperature', 5, 'single', 8, 2000, 'instance'],
  [130313, 'Humidity', 5, 'single', 8, 2000, 'instance'],
  [130314, 'Actual Pressure', 5, 'single', 8, 2000, 'instance'],
  [130316, 'Temperature Extended Range', 5, 'single', 8, 2000, 'instance'],
  [130329, 'HVAC Status', 6, 'fast', 28, 5000, null],
  [130567, 'Watermaker Input Setting and Status', null, 'fast', 24, null, null],
  [130576, 'Small Craft Status', 2, 'single', 8, 200, null],
  [130577, 'Direction Data', 3, 'fast', 14, 1000, null],
  [130578, 'Vessel Speed Components', 2, 'fast', 12, 250, null],
]

const engineRows: readonly Row[] = [
  [61443, 'Electronic engine controller 2', 3, 'transport', 8, 50, null],
  [61444, 'Electronic engine controller 1', 3, 'transport', 8, 20, null],
  [61445, 'Electronic transmission controller 2', 6, 'transport', 8, 100, null],
  [65226, 'Active diagnostic trouble codes', 6, 'transport', 8, 1000, null],
  [65253, 'Engine hours, revolutions', 6, 'transport', 8, 'on event', null],
  [65262, 'Engine temperature 1', 6, 'transport', 8, 1000, null],
  [65263, 'Engine fluid level and pressure 1', 6, 'transport', 8, 500, null],
  [65266, 'Fuel economy', 6, 'transport', 8, 100, null],
  [65270, 'Intake and exhaust conditions 1', 6, 'transport', 8, 500, null],
  [65271, 'Vehicle electrical power 1', 6, 'transport', 8, 1000, null],
  [65272, 'Transmission fluids 1', 6, 'transport', 8, 1000, null],
  [65276, 'Dash display', 6, 'transport', 8, 1000, null],
]

const groupsOf = (rows: readonly Row[], citation: Citation): readonly ParameterGroup[] =>
  rows.map(([pgnNumber, name, priorityNumber, framing, payloadByteCount, interval, instance]) =>
    ({ pgnNumber, name, priorityNumber, framing, payloadByteCount, interval, hasInstance: instance !== null, citation }))

export const parameterGroups: ReadonlyMap<number, ParameterGroup> =
  new Map([...groupsOf(marineRows, dataset), ...groupsOf(engineRows, engineBus)].map(group => [group.pgnNumber, group]))

/** Housekeeping of the bus itself: every device sends these, and two that do are no duplicates. */
export const networkManagementPgns: ReadonlySet<number> = new Set([59392, 59904, 60160, 60416, 60928, 65240, 126208, 126464, 126993, 126996, 126998])

/** Groups of makers that go as fast packets. */
const isMakersFastPacket = (pgnNumber: number): boolean => pgnNumber === 126720 || (pgnNumber >= 130816 && pgnNumber <= 131071)

/** Of a group that is in no list, from its number and length. */
export const framingOf = (pgnNumber: number, payloadByteCount: number, protocol: 'nmea 2000' | 'j1939'): Framing =>
  protocol === 'j1939' ? 'transport' : parameterGroups.get(pgnNumber)?.framing ?? (isMakersFastPacket(pgnNumber) || payloadByteCount > 8 ? 'fast' : 'single')
