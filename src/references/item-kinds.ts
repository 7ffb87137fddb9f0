/** Kinds of items by which general text names them: those of equipment, and of items that are entered in lists of their own. */
import { equipmentKinds, isEquipmentKind } from './equipment-kinds.js'

const otherKinds: Readonly<Record<string, string>> = {
  'battery': 'Battery', 'lithium battery': 'Lithium battery', 'lead-acid battery': 'Lead-acid battery', 'busbar': 'Busbar', 'panel': 'Panel',
}

/** Null: there is no such kind. */
export const itemKindTitle = (kind: string): string | null =>
  (isEquipmentKind(kind) ? equipmentKinds[kind].title : Object.hasOwn(otherKinds, kind) ? otherKinds[kind]! : null)
