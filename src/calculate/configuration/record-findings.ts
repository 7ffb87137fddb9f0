/** What the configuration record lacks or contradicts. What it lacks is told once for a system or for the vessel. */
import { find, type Finding } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { grouped, lookup } from '../../model/lookup.js'
import type { Restore, SoftwareVersion } from '../../model/results/configuration.js'
import type { Equipment, Tag, Vessel } from '../../model/vessel.js'
import { isLoggedInTo, isSetUp } from '../../references/configured-kinds.js'
import { contradictions } from './contradictions.js'
import { loginNotRecorded, settingContradictsEntry, settingsNotRecorded, settingTwice, settingWithoutDate, softwareNotRecorded } from './findings.js'

export function settingFindings(vessel: Vessel, byItem: ReadonlyMap<Tag, Restore>): readonly Finding[] {
  const { equipment } = lookup(vessel)
  return [...byItem].flatMap(([tag, { settings }]) => {
    const item = equipment.get(tag)
    const about = { evidence: {}, limit: null }
    const twice = [...grouped(settings, ({ name }) => [name])].map(([name, alike]) => ({ name, values: [...new Set(alike.map(({ value }) => value))] }))
    return [
      ...(item === undefined ? [] : contradictions(vessel, item, settings).map(({ field, name, set, entered }) => find(settingContradictsEntry, { ...about, subject: { kind: 'equipment', id: tag }, field, context: { name, set, entered } }))),
      ...twice.filter(({ values }) => values.length > 1).map(({ name, values }) => find(settingTwice, { ...about, subject: { kind: 'setting', id: tag }, field: null, context: { name, values: inWords(values) } })),
    ]
  })
}

/**
 * A record that nobody has begun is no fault of a boat under construction: what is missing counts for what is commissioned,
 * and for everything from the first entry of its kind.
 */
export function recordFindings(vessel: Vessel, byItem: ReadonlyMap<Tag, Restore>, software: readonly SoftwareVersion[]): readonly Finding[] {
  const undated = grouped(vessel.settings.filter(({ date }) => date === null), ({ itemTag }) => [itemTag])
  const setUp = vessel.equipment.filter(item => isSetUp.has(item.kind) && !byItem.has(item.tag) && isDue(item, vessel.settings.length > 0))
  return [
    ...softwareMissing(vessel, software),
    ...aboutVessel(vessel, settingsNotRecorded, 'itemCount', setUp.map(({ tag }) => tag)),
    ...aboutVessel(vessel, settingWithoutDate, 'settingCount', [...undated.keys()]),
    ...aboutVessel(vessel, loginNotRecorded, 'itemCount', withoutLogin(vessel)),
  ]
}

const isDue = ({ status }: Pick<Equipment, 'status'>, isBegun: boolean): boolean => status === 'commissioned' || (isBegun && status !== 'planned' && status !== 'removed')

function aboutVessel({ identity }: Vessel, kind: Parameters<typeof find>[0], counted: string, tags: readonly Tag[]): readonly Finding[] {
  return tags.length === 0 ? [] : [find(kind, {
    subject: { kind: 'vessel', id: identity.name }, field: null, evidence: { [counted]: tags.length }, limit: null, context: { items: inWords(tags) },
  })]
}

function softwareMissing(vessel: Vessel, software: readonly SoftwareVersion[]): readonly Finding[] {
  const { equipment, systems } = lookup(vessel)
  const isBegun = software.some(({ version }) => version !== null)
  const missing = software.filter(({ version }) => version === null).map(({ itemTag }) => equipment.get(itemTag)!).filter(item => isDue(item, isBegun))
  return [...grouped(missing, ({ systemTag }) => [systemTag !== null && systems.has(systemTag) ? systemTag : null])].map(([systemTag, items]) => find(softwareNotRecorded, {
    subject: systemTag === null ? { kind: 'vessel', id: vessel.identity.name } : { kind: 'system', id: systemTag }, field: null,
    evidence: { itemCount: items.length }, limit: null, context: { what: systemTag === null ? 'Vessel' : 'System', items: inWords(items.map(({ tag }) => tag)) },
  }))
}

/** What can be opened, by itself or by the network or link that it makes. */
function withoutLogin(vessel: Vessel): readonly Tag[] {
  const { equipment, wirelessNetworks, outsideLinks } = lookup(vessel)
  const opened = new Set(vessel.credentials.flatMap(({ itemTag }) =>
    [itemTag, wirelessNetworks.get(itemTag)?.accessPointTag ?? null, outsideLinks.get(itemTag)?.equipmentTag ?? null]))
  const isBegun = vessel.credentials.length > 0
  const devices = vessel.equipment.filter(item => isLoggedInTo.has(item.kind) && isDue(item, isBegun))
  const links = vessel.outsideLinks.filter(({ equipmentTag }) => {
    const maker = equipment.get(equipmentTag ?? '')
    // The device that makes the link is named by itself.
    return maker === undefined ? isBegun : !isLoggedInTo.has(maker.kind) && isDue(maker, isBegun) && !opened.has(maker.tag)
  })
  return [...devices, ...links].map(({ tag }) => tag).filter(tag => !opened.has(tag))
}
