/** What a hand does with things of a kind in an emergency, in a word or two. Common practice, no source. */
import type { EquipmentKindKey } from './equipment-kinds.js'

const actions: Readonly<Partial<Record<EquipmentKindKey, string>>> = {
  'fuel shut-off valve': 'Shut',
  'gas shut-off valve': 'Shut',
  'seacock': 'Shut',
  'engine stop': 'Stop',
  'engine control': 'Lever',
  'battery isolator': 'Turn off',
  'source selector': 'Turn off',
  'shore inlet': 'Unplug',
  'inverter': 'Switch off',
  'inverter charger': 'Switch off',
  'generator': 'Stop',
  'bilge blower': 'Switch off',
  'fire extinguisher': 'Take',
  'fixed fire extinguisher': 'Release last',
  'fire blanket': 'Cover',
  'escape hatch': 'Way out',
  'bilge pump': 'Switch on',
  'windlass': 'Let go',
  'manual bilge pump': 'Pump',
  'emergency tiller': 'Fit',
  'liferaft': 'Make ready',
  'lifejackets': 'Put on',
  'lifebuoy': 'Throw',
  'boarding ladder': 'Let down',
  'distress signals': 'Show',
  'safety beacon': 'Switch on',
  'vhf transceiver': 'Call',
  'vhf handset': 'Speak',
  'display': 'Mark',
  'first-aid kit': 'Take',
  'torch': 'Take',
  'tools and spares': 'Take',
}

/** Null: the kind has no usual one. */
export const handAction = (kind: string): string | null => (Object.hasOwn(actions, kind) ? actions[kind as EquipmentKindKey]! : null)
