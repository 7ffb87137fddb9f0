/**
 * The closed list of kinds of equipment: what a kind is called, which class letter it has, what it does to a circuit
 * that comes to it, and how a diagram draws it. The key is what the author writes.
 */

/**
 * Class letters of IEC 81346-2 used here, with the class's purpose in plain words. From memory: the letters agree
 * between the 2009 and 2019 editions for the classes listed; the wording is ours.
 */
export const classLetters = {
  B: 'sensing',
  C: 'storing energy or matter',
  E: 'giving light, heat or cold',
  F: 'protecting',
  G: 'starting a flow of energy or matter: sources, pumps, fans',
  K: 'processing signals',
  M: 'driving',
  P: 'presenting information: display, lamp, sound',
  Q: 'switching',
  R: 'restricting',
  S: 'turning a movement of the hand into a signal',
  T: 'converting energy or signals',
  X: 'connecting',
} as const
export type ClassLetter = keyof typeof classLetters

/**
 * What a kind does to the power conductors on its terminals.
 * `nothing`: the circuit ends here. `all terminals`: every cable on it is joined. `same terminal`: only cables that name
 * the same terminal are joined. `to out`: what comes in on any terminal goes on from the terminal `out`, and nowhere else.
 */
export type Joins = 'nothing' | 'all terminals' | 'same terminal' | 'to out'
export type DrawAs = 'nothing' | 'load' | 'switch' | 'protection' | 'junction' | 'source'

export interface EquipmentKind {
  readonly title: string
  readonly classLetter: ClassLetter
  readonly joins: Joins
  readonly draw: DrawAs
}

const load = (classLetter: ClassLetter, title: string): EquipmentKind => ({ title, classLetter, joins: 'nothing', draw: 'load' })
/** Not wired at all. */
const gear = (classLetter: ClassLetter, title: string): EquipmentKind => ({ title, classLetter, joins: 'nothing', draw: 'nothing' })
const source = (classLetter: ClassLetter, title: string): EquipmentKind => ({ title, classLetter, joins: 'nothing', draw: 'source' })
const through = (classLetter: ClassLetter, draw: DrawAs, title: string): EquipmentKind => ({ title, classLetter, joins: 'all terminals', draw })

/** Class letters by IEC 81346-2, from memory; where an item serves two purposes the one it is bought for decides. */
export const equipmentKinds = {
  // helm and presentation
  'display': load('P', 'Display'),
  'instrument': load('P', 'Instrument'),
  'alarm panel': load('P', 'Alarm panel'),
  'joystick control': load('S', 'Joystick control'),
  'keypad': load('S', 'Keypad'),
  'remote control': load('S', 'Remote control'),
  'engine control': load('S', 'Engine control lever'),
  'computer': load('K', 'Computer'),

  // sensing
  'radar scanner': load('B', 'Radar scanner'),
  'radar power unit': load('T', 'Radar power unit'),
  'thermal camera': load('B', 'Thermal camera'),
  'camera': load('B', 'Camera'),
  'temperature monitor': load('K', 'Temperature monitor'),
  'temperature sensor': load('B', 'Temperature sensor'),
  'pressure sensor': load('B', 'Pressure sensor'),
  'tank sensor': load('B', 'Tank level sensor'),
  'sonar module': load('K', 'Sonar module'),
  'transducer': load('B', 'Transducer'),
  'attitude and heading sensor': load('B', 'Attitude and heading sensor'),
  'heading sensor': load('B', 'Heading sensor'),
  'compass': load('B', 'Compass'),
  'wind sensor': load('B', 'Wind sensor'),
  'rudder sensor': load('B', 'Rudder angle sensor'),
  'smoke alarm': load('B', 'Smoke alarm'),
  'gas detector': load('B', 'Gas detector'),
  'bilge alarm sensor': load('B', 'Bilge alarm sensor'),

  // radio and position
  'gnss receiver': load('B', 'GNSS receiver'),
  'gnss antenna': load('T', 'GNSS antenna'),
  'vhf transceiver': load('T', 'VHF transceiver'),
  'vhf handset': load('P', 'VHF handset'),
  'vhf antenna': load('T', 'VHF antenna'),
  'ais transceiver': load('T', 'AIS transceiver'),
  'antenna splitter': load('X', 'Antenna splitter'),
  'broadcast antenna': load('T', 'Broadcast antenna'),
  'satellite antenna': load('T', 'Satellite antenna'),
  'mobile-data router': load('K', 'Mobile-data router'),
  'mobile-data antenna': load('T', 'Mobile-data antenna'),
  'wireless access point': load('K', 'Wireless access point'),
  'safety beacon': load('P', 'Safety beacon'),
  'audio unit': load('T', 'Audio unit'),
  'loudspeaker': load('P', 'Loudspeaker'),
  'microphone': load('B', 'Microphone'),

  // data
  'network switch': load('K', 'Network switch'),
  'gateway': load('K', 'Gateway'),
  'engine gateway': load('K', 'Engine gateway'),
  'serial multiplexer': load('K', 'Serial multiplexer'),
  // The cores in a tee are the bus's: a supply cable that comes to it ends there, as at a load.
  'can bus tee': { title: 'CAN bus tee', classLetter: 'X', joins: 'nothing', draw: 'junction' },
  'can bus terminator': { title: 'CAN bus terminator', classLetter: 'R', joins: 'nothing', draw: 'junction' },

  // steering, propulsion, deck
  'engine': load('M', 'Engine'),
  'starter motor': load('M', 'Starter motor'),
  'thruster': load('M', 'Thruster'),
  'gyro stabiliser': load('M', 'Gyro stabiliser'),
  'autopilot computer': load('K', 'Autopilot computer'),
  'autopilot drive': load('M', 'Autopilot drive'),
  'trim tab': load('M', 'Trim tab'),
  'windlass': load('M', 'Windlass'),
  'winch': load('M', 'Winch'),
  'wiper': load('M', 'Wiper'),
  'horn': load('P', 'Horn'),

  // lights and comfort
  'navigation light': load('E', 'Navigation light'),
  'light': load('E', 'Light'),
  'searchlight': load('E', 'Searchlight'),
  'refrigerator': load('E', 'Refrigerator'),
  'air conditioner': load('E', 'Air conditioner'),
  'heater': load('E', 'Heater'),
  'toilet': load('M', 'Toilet'),
  'bilge pump': load('G', 'Bilge pump'),
  'bilge blower': load('G', 'Bilge blower'),
  'steering pump': load('M', 'Steering pump'),
  'polarity indicator': load('P', 'Polarity indicator'),
  'pump': load('G', 'Pump'),
  'fan': load('G', 'Fan'),
  'socket': load('X', 'Socket'),

  // sources and conversion
  'alternator': source('G', 'Alternator'),
  'generator': source('G', 'Generator'),
  'solar panel': source('G', 'Solar panel'),
  'solar charge controller': source('T', 'Solar charge controller'),
  'charger': source('T', 'Charger'),
  'dc-dc converter': source('T', 'DC-DC converter'),
  'shore inlet': source('X', 'Shore inlet'),
  // Seen from the DC side an inverter is a load; what it feeds is AC.
  'inverter': load('T', 'Inverter'),
  'inverter charger': load('T', 'Inverter and charger'),
  'isolation transformer': source('T', 'Isolation transformer'),
  'charge splitter': source('T', 'Charge splitter'),
  'battery monitor': load('P', 'Battery monitor'),

  // on the way of a circuit
  'switch': through('Q', 'switch', 'Switch'),
  'battery isolator': through('Q', 'switch', 'Battery isolator'),
  'float switch': through('B', 'switch', 'Float switch'),
  'fuse holder': through('F', 'protection', 'Fuse holder'),
  'residual-current device': through('F', 'protection', 'Residual-current device'),
  'galvanic isolator': through('R', 'junction', 'Galvanic isolator'),
  // One of several supplies is led to the terminal "out"; they are never joined to one another.
  'source selector': { title: 'Source selector', classLetter: 'Q', joins: 'to out', draw: 'switch' },
  'shunt': through('B', 'junction', 'Shunt'),
  'junction box': through('X', 'junction', 'Junction box'),
  'connector': through('X', 'junction', 'Connector'),
  'terminal block': { title: 'Terminal block', classLetter: 'X', joins: 'same terminal', draw: 'junction' },

  // no part of a circuit: shut-offs, and what is reached for in an emergency
  'fuel shut-off valve': gear('Q', 'Fuel shut-off valve'),
  'gas shut-off valve': gear('Q', 'Gas shut-off valve'),
  'gas cylinder': gear('C', 'Gas cylinder'),
  'gas appliance': gear('E', 'Gas appliance'),
  'seacock': gear('Q', 'Seacock'),
  'engine stop': gear('S', 'Engine stop'),
  'fire extinguisher': gear('F', 'Fire extinguisher'),
  'fixed fire extinguisher': gear('F', 'Fixed fire extinguisher'),
  'fire blanket': gear('F', 'Fire blanket'),
  'escape hatch': gear('Q', 'Escape hatch'),
  'manual bilge pump': gear('G', 'Manual bilge pump'),
  'emergency tiller': gear('S', 'Emergency tiller'),
  'liferaft': gear('F', 'Liferaft'),
  'hydrostatic release': gear('F', 'Hydrostatic release'),
  'lifejackets': gear('F', 'Lifejackets'),
  'lifebuoy': gear('F', 'Lifebuoy'),
  'boarding ladder': gear('F', 'Boarding ladder'),
  'distress signals': gear('P', 'Distress signals'),
  'first-aid kit': gear('F', 'First-aid kit'),
  'torch': gear('E', 'Torch'),
  'tools and spares': gear('C', 'Tools and spares'),
  'anode': gear('F', 'Anode'),

  'other': load('K', 'Other equipment'),
} as const satisfies Record<string, EquipmentKind>

export type EquipmentKindKey = keyof typeof equipmentKinds
/** Every key, in the order of the list. */
export const equipmentKindKeys = Object.keys(equipmentKinds) as [EquipmentKindKey, ...EquipmentKindKey[]]

/** Whether `key` is one of the kinds. */
export function isEquipmentKind(key: string): key is EquipmentKindKey {
  return Object.hasOwn(equipmentKinds, key)
}

/** The kind with this key. Throws for a key that is not in the list: the check stage lets none through. */
export function equipmentKind(key: string): EquipmentKind {
  if (!isEquipmentKind(key)) throw new Error(`no equipment kind "${key}"`)
  return equipmentKinds[key]
}

/**
 * Kinds whose circuits are critical unless the author says otherwise: what ISO 10133 and ABYC E-11 name with a 3 % drop,
 * and the radio by which help is called.
 */
export const criticalKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['navigation light', 'bilge pump', 'bilge blower', 'vhf transceiver'])
