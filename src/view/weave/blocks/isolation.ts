/** Cutting the power: isolators in their order, what stays live all the same, what else gives current. */
import { isDistributionPoint } from '../../../model/lookup.js'
import type { Isolator, Loss } from '../../../model/results/emergency.js'
import type { Circuit, Tag } from '../../../model/vessel.js'
import { serviceDefinitions } from '../../../references/safety-services.js'
import type { ViewContext } from '../../context.js'
import { joined, strong } from '../../text.js'
import type { Block, ReachEntry, Text } from '../../view-model.js'
import { captioned, circuitWhat, circuitWhere, entryOf, openingAct, reach, someNames } from './reach.js'
import { inSentence, itemsOfKinds } from '../kinds.js'

const tagsOf = (context: ViewContext, tags: readonly Tag[]): Text => joined(tags.map(tag => [context.tag(tag)]))

/** "Ends navigation lights; part of engine control (left M12); with 90 other things." */
export function endsText(context: ViewContext, { services, endedTags }: Loss): Text {
  const things = endedTags.filter(tag => !isDistributionPoint(context.vessel, tag))
  if (things.length === 0) return ['Ends nothing that is recorded.']
  if (services.length === 0) return ['Ends ', ...someNames(context, things, 4), '.']
  const others = things.length - services.flatMap(({ lostTags }) => lostTags).length
  const parts = services.toSorted((a, b) => Number(b.ended) - Number(a.ended)).map(({ service, ended, leftTags }): Text => {
    const title = strong(inSentence(serviceDefinitions[service].title))
    return [...(ended ? [] : ['part of ']), title, ...(leftTags.length === 0 ? [] : [ended ? ' (only ' : ' (left ', ...tagsOf(context, leftTags), ended ? ' left)' : ')'])]
  })
  return ['Ends ', ...joined(parts, '; '), ...(others > 0 ? [`; with ${others} other things`] : []), '.']
}

export function isolatorReach(context: ViewContext): readonly Block[] {
  const { isolators } = context.results.emergency
  if (isolators.length === 0) return reach('Battery isolators', [{ act: null, what: [strong('Battery isolator')], where: ['not recorded'], remark: null }])
  const numbered = isolators.filter(({ inLink }) => !inLink).length > 1
  return reach('Battery isolators, in this order', isolators.map((isolator, i) => {
    const entry = entryOf(context, [context.lookup.equipment.get(isolator.tag)!], isolatorRemark(context, isolator))
    const planned: Text = context.lookup.equipment.get(isolator.tag)!.status === 'planned' ? [' (planned, not yet on board)'] : []
    return { ...entry, what: [...entry.what, ...planned], act: isolator.inLink ? 'Leave open' : `${numbered ? `${i + 1} ` : ''}${entry.act ?? 'Turn off'}` }
  }))
}

function isolatorRemark(context: ViewContext, isolator: Isolator): Text {
  if (isolator.inLink) return ['Closed, it joins ', ...tagsOf(context, isolator.batteryTags), ' to the other side, and that stays live.']
  const { alternatorTags } = isolator
  return [
    ...endsText(context, isolator),
    ...(alternatorTags.length === 0 ? [] : [' Engine stopped first: ', ...tagsOf(context, alternatorTags), alternatorTags.length === 1 ? ' charges through it.' : ' charge through it.']),
  ]
}

/** Of what a circuit keeps alive, so many are named. */
export const mostAlive = 8
export const alwaysLiveCaption = 'Stays live with every isolator open'

export function alwaysLiveReach(context: ViewContext): readonly Block[] {
  const rows = context.results.emergency.alwaysLive.map(({ circuitTag, itemTags, assumed }): ReachEntry => {
    const circuit = context.lookup.circuits.get(circuitTag)!
    return {
      act: openingAct(circuit), what: circuitWhat(context, circuit), where: circuitWhere(context, circuit),
      remark: ['Keeps alive ', ...someNames(context, itemTags, mostAlive), '.', ...(assumed ? [' Its cables are not recorded: it may be behind an isolator.'] : [])],
    }
  })
  return reach(alwaysLiveCaption, rows)
}

/** Shore, generators, inverters and the sun, each with what to do. */
export function otherSourceReach(context: ViewContext): readonly Block[] {
  return reach('Other sources', [
    ...itemsOfKinds(context, ['shore inlet']).map(inlet => entryOf(context, [inlet], ['First switch off ', ...fedFrom(context, inlet.tag), '. Then pull the plug ashore, then on board.'])),
    ...itemsOfKinds(context, ['generator', 'inverter', 'inverter charger']).map(item => entryOf(context, [item])),
    ...solarEntries(context),
  ])
}

/** In haste: every source and every isolator by its place alone, links left out, and no note that keeps a hand back. */
export function currentOffReach(context: ViewContext, words: readonly string[]): readonly Block[] {
  const [caption] = captioned('current-off', words)
  const { isolators } = context.results.emergency
  const items = [...itemsOfKinds(context, ['shore inlet', 'inverter', 'inverter charger']), ...isolators.filter(({ inLink }) => !inLink).map(({ tag }) => context.lookup.equipment.get(tag)!)]
  return reach(caption, items.map(item => entryOf(context, [item], null)))
}

const fedFrom = (context: ViewContext, tag: Tag): Text => {
  const circuits = context.lookup.circuitsFedFrom.get(tag) ?? []
  return circuits.length === 0 ? ['its breaker'] : joined(circuits.map((circuit): Text => [...circuitWhat(context, circuit), ', ', ...circuitWhere(context, circuit)]), '; ')
}

/** Where the panels' current comes onto the boat's, and what takes it off. */
function solarEntries(context: ViewContext): readonly ReachEntry[] {
  const panels = itemsOfKinds(context, ['solar panel'])
  const { equipment, circuits } = context.lookup
  const into = context.results.emergency.feedBacks.filter(({ sourceTag }) => { const kind = equipment.get(sourceTag)?.kind; return kind === 'solar charge controller' || kind === 'solar panel' })
  if (panels.length === 0) return []
  const byCircuit = into.flatMap(({ circuitTag, ontoTag }): readonly Text[] => {
    const circuit: Circuit | undefined = circuits.get(circuitTag)
    return circuit === undefined ? [] : [['keep ', context.tag(ontoTag), ' live; ', ...circuitWhat(context, circuit), ', ', ...circuitWhere(context, circuit), ', parts them']]
  })
  return [{
    act: 'Cover', what: joined(panels.map(({ tag }) => context.named(tag))), where: null,
    remark: ['By day they ', ...(byCircuit.length === 0 ? ['give current'] : joined(byCircuit, '; ')), '.'],
  }]
}
