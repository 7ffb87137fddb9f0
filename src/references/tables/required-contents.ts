/**
 * What law and standards ask of the owner's manual of a recreational craft, each content once, with all that ask for it. Whether
 * this pack holds it is decided by the rule of the same key in `calculate/completeness/`.
 */
import type { Citation, Standing } from '../bibliography.js'

export interface RequiredContent {
  readonly title: string
  /** `recommended`: good practice, or asked of something else than the manual. */
  readonly need: 'required' | 'recommended'
  readonly askedBy: readonly [Citation, ...Citation[]]
}

/** Point of annex I, part A. Headings are law; what the point asks of the manual is from memory where nothing else is said. */
const directive = (point: string, standing: Standing = 'from memory'): Citation => ({ source: '2013-53-eu', place: `annex I A, ${point}`, standing })
/** Clauses of the edition of 2004, by the order of its list of contents. */
const ownersManual = (place: string): Citation => ({ source: 'iso-10240', place })
const edition2022 = (place: string): Citation => ({ source: 'iso-10240', place: `2022 edition, ${place}` })
/** The electrical chapter as common practice draws it from ISO 10133, annex B, and the like annex of ISO 13297. */
const electrical = (place: string): Citation => ({ source: 'iso-10133', place: `annex B, ${place}`, standing: 'from memory' })

const required = (title: string, ...askedBy: readonly [Citation, ...Citation[]]): RequiredContent => ({ title, need: 'required', askedBy })
const recommended = (title: string, ...askedBy: readonly [Citation, ...Citation[]]): RequiredContent => ({ title, need: 'recommended', askedBy })

export const requiredContents = {
  // the boat
  'design-category': required('Design category', directive('1')),
  'craft-identification': required('Craft identification number', directive('2.1'), { source: 'iso-10087', place: '' }),
  'builders-plate': required('What the builder’s plate says', directive('2.2'), directive('2.5')),
  'craft-data': required('General information and craft data', ownersManual('5.3')),
  'unladen-mass': required('Unladen mass', directive('2.5')),
  'maximum-persons': required('Number of persons', ownersManual('5.4')),
  'maximum-load': required('Loading and maximum load', directive('2.5'), directive('3.6'), ownersManual('5.5'), { source: 'iso-14946', place: '' }),
  'stability': required('Stability and buoyancy', directive('3.2'), directive('3.3'), ownersManual('5.7'), { source: 'iso-12217', place: '' }),
  'openings-and-flooding': required('Openings, seacocks and bilge pumping', directive('3.4'), directive('3.5'), ownersManual('5.7')),
  'windows-and-hatches': required('Windows, hatches and doors', { source: 'iso-12216', place: '' }),
  'visibility': required('Visibility from the steering position', directive('2.4'), { source: 'iso-11591', place: '' }),
  'handling': required('Handling', directive('2.5'), directive('4'), ownersManual('5.10')),
  'engines': required('Engines: power, ventilation, exposed parts', directive('5.1.1'), directive('5.1.2'), directive('5.1.3'), ownersManual('5.6')),
  'fuel': required('Fuel: shutting off, taking on', directive('5.2')),
  'steering': required('Steering, and steering in an emergency', directive('5.4')),
  'gas': required('Gas installation', directive('5.5'), { source: 'iso-10239', place: '' }),
  'navigation-lights': required('Navigation lights, shapes and sound signals', directive('5.7')),
  'discharge': required('Prevention of discharge', directive('5.8')),
  'anchoring-mooring-towing': required('Anchoring, mooring and towing', directive('3.9'), { source: 'iso-15084', place: '' }),

  // what can go wrong
  'fire-and-flooding-risks': required('Attention drawn to the risks of fire and flooding', directive('2.5')),
  'reboarding': required('Protection from falling overboard, and getting back aboard', directive('2.3'), { source: 'iso-15085', place: '' }),
  'liferaft-stowage': required('Where the liferaft is stowed', directive('3.7')),
  'escape': required('Ways of escape', directive('3.8')),
  'fire-protection': required('Fire protection: what there is, where, and what can burn', directive('5.6'), ownersManual('5.8'), { source: 'iso-9094', place: '' }),
  'ignition-protection': required('Spaces that need ignition protection', { source: 'iso-8846', place: '' }),

  // the manual
  'scope-and-identity': required('Which boat, which document, which issue', ownersManual('general requirements, information required'), ownersManual('5.1')),
  'introduction': required('Introduction text', ownersManual('5.2'), ownersManual('annex A')),
  'standards-with-text': recommended('The standards that ask for text and labels', ownersManual('annex B')),
  'proper-operation': required('Proper operation, other recommendations', ownersManual('5.11')),
  'other-information': recommended('Other information: documents, addresses', ownersManual('other information')),
  'language': required('The language of the country of use', directive('2.5'), edition2022('language')),
  'printable': required('An electronic manual can be printed', ownersManual('general requirements, format'), edition2022('printable')),
  'index': required('Index or table of contents', edition2022('index or contents')),
  'units': required('Units, SI first', ownersManual('general requirements, units and definitions'), edition2022('SI units first')),
  'definitions': required('Definitions', ownersManual('general requirements, units and definitions')),
  'illustrations': required('Illustrations', ownersManual('general requirements, illustrations')),
  'graphical-symbols': required('Graphical symbols by ISO 8999 and ISO 11192', edition2022('graphical symbols')),
  'signal-words': required('Danger, warning, caution and notice explained', edition2022('signal words'), { source: 'signal-words', place: '' }),

  // the electrical chapter
  'electrical-risks': required('Electrical systems: risks of fire, explosion and shock', directive('5.3', 'public law'), ownersManual('5.9'), { source: 'iso-13297', place: 'owner’s manual', standing: 'from memory' }),
  'system-description': required('Description of the system', electrical('system description')),
  'batteries': required('Types and voltages of the batteries', electrical('battery types and voltages')),
  'circuit-diagram': required('Circuit diagram', electrical('circuit diagram')),
  'circuit-list': required('List of circuits with rating and label', electrical('list of circuits with protection rating and label')),
  'switch-plan': required('Plan of switches and breakers', electrical('switch and breaker location plan')),
  'charging-sources': required('Charging sources', electrical('charging sources')),
  'shore-connection': required('Connecting shore power', electrical('shore supply connection procedure')),
  'residual-current-test': required('Testing the residual-current device', electrical('RCD test')),
  'warning-live-system': required('Warning: do not work on a live system', electrical('warning: do not work on a live system')),
  'warning-ratings': required('Warning: do not raise ratings', electrical('warning: do not raise ratings')),
  'warning-alterations': required('Warning: do not alter the system', electrical('warning: do not alter the system')),
  'switching-off-on-leaving': required('Order of switching when leaving the boat', electrical('warning: switch order when leaving')),
  'voltage-drop-class': required('Class of voltage drop', electrical('nominal drop class')),
  'electrical-maintenance': required('Maintenance of the electrical system', electrical('maintenance')),
  'spare-fuses': required('Spare fuses', electrical('spare fuses')),
  'who-may-modify': required('Who may change the system', electrical('who may modify')),
  'electronic-equipment': recommended('Makers’ manuals of the electronics', { source: 'iec-60945', place: '' }),
} as const satisfies Record<string, RequiredContent>

export type ContentKey = keyof typeof requiredContents
export const contentKeys = Object.keys(requiredContents) as readonly ContentKey[]
export const isContentKey = (key: string): key is ContentKey => Object.hasOwn(requiredContents, key)

/** Points of the directive that ask something of the build and no text of the manual; from memory. */
export const outsideManual: readonly { readonly citation: Citation; readonly title: string }[] = [
  { citation: directive('3.1'), title: 'Structure' },
  { citation: directive('5.1.4'), title: 'Outboard starting' },
  { citation: directive('5.1.5'), title: 'Personal watercraft' },
  { citation: directive('5.1.6'), title: 'Tiller-controlled emergency stop' },
]
