/** The kinds of entry by the key that holds them in a file: what one entry is called and which field names it. */

/** `single`: one map for the whole folder. `list`: a list, which may be spread over files. */
interface KindName { readonly shape: 'single' | 'list'; readonly entry: string; readonly nameField: string }

const list = (entry: string, nameField = 'tag') => ({ shape: 'list', entry, nameField }) as const

export const kindNames = {
  'vessel': { shape: 'single', entry: 'vessel', nameField: 'name' },
  'changes': list('change', 'issue'),
  'systems': list('system'),
  'zones': list('zone'),
  'wireway-points': list('wireway point'),
  'wireways': list('wireway'),
  'models': list('model', 'model'),
  'cable-types': list('cable type'),
  'equipment': list('equipment'),
  'batteries': list('battery'),
  'busbars': list('busbar'),
  'panels': list('panel'),
  'circuits': list('circuit'),
  'cables': list('cable'),
  'can-buses': list('CAN bus'),
  'serial-links': list('serial link'),
  'ethernet-networks': list('Ethernet network'),
  'wireless-networks': list('wireless network'),
  'outside-links': list('outside link'),
  'structures': list('structure'),
  'standing-places': list('standing place'),
  'settings': list('setting', 'item'),
  'credentials': list('credential', 'item'),
  'operating-modes': list('operating mode'),
  'duties': list('duty', 'item'),
  'measurements': list('measurement', 'number'),
  'photographs': list('photograph', 'file'),
  'arrangement-drawings': list('arrangement drawing', 'file'),
  'procedures': list('procedure', 'title'),
  'absences': list('absence', 'what'),
  'maintenance-tasks': list('maintenance task', 'task'),
  'maintenance-records': list('maintenance record', 'task'),
  'running-hours': list('reading of running hours', 'item'),
  'manual-contents': list('entry of the contents', 'content'),
  'accepted-deviations': list('accepted deviation', 'finding'),
  'label-sizes': list('label size', 'size'),
} as const satisfies Record<string, KindName>

export type KindKey = keyof typeof kindNames
export const kindKeys = Object.keys(kindNames) as readonly KindKey[]
export const isKindKey = (key: string): key is KindKey => Object.hasOwn(kindNames, key)

/** What a catalogue may hold: only what is true of every unit of a model, for any vessel. */
export const catalogueKinds: readonly KindKey[] = ['models', 'cable-types']

/** Whether the names of this kind's entries are tags, which are unique in the vessel whatever they name. */
export const isTagged = (kind: KindKey): boolean => kindNames[kind].nameField === 'tag'

/**
 * Kind named by a file name: `cables.csv` and `cables-helm.csv` hold cables. Null when it names none.
 */
export function kindOfFileName(name: string): KindKey | null {
  const base = (name.split('/').at(-1) ?? '').replace(/\.[^.]*$/, '').toLowerCase()
  return kindKeys.find(kind => base === kind || base.startsWith(`${kind}-`)) ?? null
}
