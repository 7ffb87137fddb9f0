/** Configuration record: software, and what to restore after a replacement, device by device. */
import type { SoftwareVersion } from '../../../model/results/configuration.js'
import type { Item } from '../../../model/lookup.js'
import { slug } from '../../../model/address.js'
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { byTag, compareTags, tableOf } from '../../tables.js'
import { counted, dash, linkTo, notRecorded, orDash, orNotRecorded } from '../../text.js'
import type { Block, Page, Schedule, Table, Text } from '../../view-model.js'
import { makerAndModel, placeText } from '../../parts/item-parts.js'
import { credentialPages } from './credentials.view.js'
import { nameOf, restoreRows, restoreTable, valueText } from './restore-table.js'

export const configurationPages = (context: ViewContext): readonly Page[] => [...recordPages(context), ...credentialPages(context)]

function recordPages(context: ViewContext): readonly Page[] {
  const { software, byItem } = context.results.configuration
  const devices = [...byItem.keys()].map(tag => context.lookup.items.get(tag)!).toSorted(byTag)
  if (software.length === 0 && devices.length === 0 && context.vessel.credentials.length === 0) return []
  return [{
    key: fixedPages.configuration,
    title: 'Configuration record',
    kicker: null,
    lead: ['For whoever replaces a device: which software was on it, and how it was set. Read both on the old device first, as long as it still answers: what is read today is worth more than what is printed here.'],
    printed: null,
    trail: [],
    blocks: [
      softwareTable(context),
      { is: 'heading', text: 'Settings to restore after a replacement', anchor: null },
      { is: 'paragraph', text: [`${counted(devices.length, 'device')}. Under "as of" stands when a setting was read on the device and by whom, or which entry of this record gives it. Try every function after a replacement, and record what was changed.`] },
      ...devices.map(item => deviceTable(context, item)),
    ],
  }]
}

function deviceTable(context: ViewContext, item: Item): Table {
  const caption = [`${item.tag} ${item.name}`, makerAndModel(item)].filter(word => word !== null).join(', ')
  const table = restoreTable(context, item.tag, { id: `settings-${slug(item.tag)}`, caption })
  return { ...table, note: [context.tag(item.tag), ': ', ...placeText(context, item, { withAccess: false }), '. ', ...loginText(context, item.tag)] }
}

/** Whether something opens it, and where that is. */
function loginText({ vessel }: ViewContext, tag: Tag): Text {
  return vessel.credentials.some(({ itemTag }) => itemTag === tag) ? ['How to log in is under ', linkTo(fixedPages.credentials, 'Logging in'), '.'] : []
}

/** On the page of a device: the same list, with the way to the whole record. */
export function restoreBlocks(context: ViewContext, tag: Tag): readonly Block[] {
  if (!context.results.configuration.byItem.has(tag)) return []
  const table = restoreTable(context, tag, { id: 'restore', caption: 'Settings to restore after a replacement' })
  return [{ ...table, note: ['All devices are in the ', linkTo(fixedPages.configuration, 'configuration record'), '. ', ...loginText(context, tag)] }]
}

export function softwareTable(context: ViewContext): Table {
  const systemOf = ({ itemTag }: SoftwareVersion): Tag | null => context.lookup.equipment.get(itemTag)!.systemTag
  const name = (version: SoftwareVersion): string => context.nameOf(systemOf(version) ?? '') ?? ''
  const rows = context.results.configuration.software.toSorted((a, b) => compareTags(name(a), name(b)) || compareTags(a.itemTag, b.itemTag))
  return tableOf(rows, {
    id: 'software',
    caption: 'Software by system',
    empty: 'Nothing on board is known to run software.',
    level: ({ version }) => (version === null ? 'not assessed' : null),
    columns: [
      { title: 'Item', width: 'text', cell: ({ itemTag }) => context.named(itemTag) },
      { title: 'System', width: 'short', cell: row => (systemOf(row) === null ? dash : context.named(systemOf(row)!)) },
      { title: 'Model', width: 'text', cell: ({ itemTag }) => orDash(makerAndModel(context.lookup.equipment.get(itemTag)!)) },
      { title: 'Software', width: 'short', cell: ({ version }) => orNotRecorded(version) },
      { title: 'Read on', width: 'short', cell: ({ version, readOn }) => (readOn !== null ? [readOn] : version === null ? dash : [notRecorded]) },
    ],
  })
}

/** Every setting as a table for machines. */
export function settingsSchedule(context: ViewContext): Schedule {
  const tags = [...context.results.configuration.byItem.keys()].toSorted(compareTags)
  return {
    file: 'settings.csv',
    columns: ['Item', 'Name', 'Setting', 'Value', 'Where in its menus', 'Read on', 'By', 'From', 'Remarks'],
    rows: tags.flatMap(tag => restoreRows(context, tag).map(row => {
      const [menu, date, by, from, remark] = row.is === 'fact' ? [null, null, null, row.fact.from, row.fact.remark]
        : [row.setting.menu, row.setting.date, row.setting.by, 'read on the device', row.setting.notes]
      return [tag, context.nameOf(tag) ?? '', nameOf(row), valueText(context, row), menu ?? '', date ?? '', by ?? '', from, remark ?? '']
    })),
  }
}
