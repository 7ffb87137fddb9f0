/** The electrical chapter: what ISO 10133 and ISO 13297 ask of it. */
import { inWords } from '../../../findings/words.js'
import { isThere } from '../../../model/lookup.js'
import type { ContentKey } from '../../../references/tables/required-contents.js'
import type { EquipmentKindKey } from '../../../references/equipment-kinds.js'
import { always, gear, held, itemPages, notApplicable, placesLacking, type Rule, type RuleFacts, tagsOf } from '../rule.js'
import { electronicsRule } from './manual.js'

const chargers: readonly EquipmentKindKey[] = ['alternator', 'generator', 'solar panel', 'solar charge controller', 'charger', 'dc-dc converter', 'inverter charger', 'charge splitter']
/** Whose terminals give what charges; the others only stand on its way. */
const givers: ReadonlySet<string> = new Set<EquipmentKindKey>(['alternator', 'solar panel', 'charger', 'inverter charger'])

export const electricalRules = {
  'electrical-risks': ({ vessel: { circuits } }) => held(['safety', 'electrical'], [circuits.length === 0 ? 'the circuits, of which none is recorded' : null]),
  'system-description': ({ vessel: { systems } }) => {
    if (systems.length === 0) return held([], ['the systems, of which none is recorded'])
    const silent = systems.filter(({ purpose }) => purpose === null)
    return held(['systems', 'electrical'], [silent.length === 0 ? null : `what is the purpose of ${inWords(silent.map(({ name }) => name))}`])
  },
  'batteries': ({ vessel: { batteries }, before }) => {
    if (batteries.length === 0) return held([], ['batteries, of which none is recorded'])
    const bare = batteries.filter(({ tag, chemistry }) => chemistry === null || (before.sources.byBattery.get(tag)?.capacityAh ?? null) === null)
    return held(['electrical'], [bare.length === 0 ? null : `chemistry or capacity of ${tagsOf(bare)}`])
  },
  'circuit-diagram': ({ vessel: { circuits } }) => held(circuits.length === 0 ? [] : ['electrical'], [circuits.length === 0 ? 'the circuits, of which none is recorded' : null]),
  'circuit-list': ({ vessel: { circuits } }) => {
    if (circuits.length === 0) return held([], ['the circuits, of which none is recorded'])
    const unrated = circuits.filter(({ protection, unprotectedReason }) => protection === null && unprotectedReason === null)
    return held(['circuits'], [unrated.length === 0 ? null : `the protective device of ${tagsOf(unrated)}`])
  },
  'switch-plan': facts => {
    const switches = [...facts.of('battery isolator', 'source selector'), ...facts.vessel.panels.filter(isThere)]
    return switches.length === 0 ? held([], ['panels and isolators, of which none is recorded']) : held(['location', 'panels'], [placesLacking(switches)])
  },
  'charging-sources': facts => {
    const sources = facts.of(...chargers)
    if (sources.length === 0) return notApplicable('no charging source is recorded')
    const silent = sources.filter(({ kind, outputs }) => givers.has(kind) && outputs.length === 0)
    return held(['electrical'], [silent.length === 0 ? null : `the output of ${tagsOf(silent)}`])
  },
  'shore-connection': facts => gear(facts, ['shore inlet'], ['owner/shore-power-connect', 'owner/shore-power-disconnect', 'mains'], notApplicable),
  'residual-current-test': facts => {
    if (facts.before.commissioning.coverage.residualDevices.length > 0) return held(['mains', 'commissioning'])
    return hasMains(facts) ? held([], ['residual-current protection of the mains supply, of which none is recorded']) : notApplicable('no mains supply is recorded')
  },
  'warning-live-system': always('safety'),
  'warning-ratings': always('safety'),
  'warning-alterations': always('safety'),
  'switching-off-on-leaving': always('owner/leaving-the-boat'),
  'voltage-drop-class': ({ vessel: { circuits } }) => held(circuits.length === 0 ? [] : ['circuits', 'basis'], [circuits.length === 0 ? 'the circuits, of which none is recorded' : null]),
  'electrical-maintenance': always('maintenance'),
  'spare-fuses': facts => gear(facts, ['tools and spares'], itemPages(facts.of('tools and spares')), reason => held([], [`where the spare fuses are kept: ${reason}`])),
  'who-may-modify': ({ vessel: { document } }) => held(['safety', 'vessel'], [document.installer === null && document.contact === null ? 'who is to be asked' : null]),
  'electronic-equipment': electronicsRule,
} as const satisfies Partial<Record<ContentKey, Rule>>

const hasMains = (facts: RuleFacts): boolean => facts.of('shore inlet').length > 0 || facts.before.acSupply.sources.length > 0
