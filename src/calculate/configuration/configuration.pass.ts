/** Configuration record: software and settings to restore after a replacement. */
import { grouped, isThere, lookup } from '../../model/lookup.js'
import type { ConfigurationResults, Restore, RestoreFact, SoftwareVersion } from '../../model/results/configuration.js'
import type { Setting, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { runsSoftware } from '../../references/configured-kinds.js'
import type { Upstream } from '../upstream.js'
import { factsOf, moduleFacts } from './facts.js'
import { recordFindings, settingFindings } from './record-findings.js'
import { secretFindings } from './secret-findings.js'

export function configurationPass(vessel: Vessel, _basis: Basis, _before: Upstream): ConfigurationResults {
  const byItem = restoreLists(vessel)
  const software = vessel.equipment.filter(({ status, kind, software: version }) => status !== 'removed' && (runsSoftware.has(kind) || version !== null))
    .map(({ tag, software: version, softwareDate }): SoftwareVersion => ({ itemTag: tag, version, readOn: softwareDate }))
  return { software, byItem, notAssessed: [], findings: [...settingFindings(vessel, byItem), ...recordFindings(vessel, byItem, software), ...secretFindings(vessel)] }
}

function restoreLists(vessel: Vessel): ReadonlyMap<Tag, Restore> {
  const { items, equipment, panels } = lookup(vessel)
  const ofItem = grouped(vessel.settings, ({ itemTag }) => [itemTag])
  const lists = [...items.values()].filter(isThere).map(({ tag }): [Tag, Restore] => {
    const [device, panel] = [equipment.get(tag), panels.get(tag)]
    const facts = device !== undefined ? factsOf(vessel, device) : panel !== undefined ? moduleFacts(vessel, panel) : []
    const settings = latest(ofItem.get(tag) ?? [])
    return [tag, { facts: facts.filter(fact => !settings.some(setting => saysTheSame(setting, fact))), settings }]
  })
  return new Map(lists.filter(([, { facts, settings }]) => facts.length > 0 || settings.length > 0))
}

/** Of several with one name those of the last day; in the order of the files. */
function latest(settings: readonly Setting[]): readonly Setting[] {
  const lastDay = new Map<string, string>()
  for (const { name, date } of settings) if ((date ?? '') > (lastDay.get(name) ?? '')) lastDay.set(name, date!)
  return settings.filter(({ name, date }) => (date ?? '') === (lastDay.get(name) ?? ''))
}

/** The setting says where in the menus, and when. */
const saysTheSame = (setting: Setting, { name, value }: RestoreFact): boolean =>
  typeof value === 'string' && withoutBlanks(setting.name) === withoutBlanks(name) && withoutBlanks(setting.value) === withoutBlanks(value)
const withoutBlanks = (text: string): string => text.replace(/\s/g, '').toLowerCase()
