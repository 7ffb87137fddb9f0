/** When a bank is gone: what lives on, which link brings back what, what to switch off first. */
import type { Loss } from '../../../model/results/emergency.js'
import { serviceDefinitions } from '../../../references/safety-services.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { closedBy, linkCaution } from '../../pages/fault-tracing/fault-words.js'
import { placeText } from '../../parts/item-parts.js'
import { joined, strong } from '../../text.js'
import type { Block, Text } from '../../view-model.js'
import { endsText } from './isolation.js'
import { inSentence } from '../kinds.js'
import { circuitWhat, circuitWhere, openingAct, reach } from './reach.js'

export function bankReach(context: ViewContext): readonly Block[] {
  return reach('If this bank is dead', context.results.emergency.banks.map(bank => ({
    act: null, what: context.named(bank.tag), where: placeText(context, context.lookup.items.get(bank.tag)!, { withAccess: false }),
    remark: [...endsText(context, bank), ' ', ...livesOn(context, bank), ...backBy(context, bank), ...isolatedBy(context, bank)],
  })))
}

/** Services that lose nothing; what is left of the others stands with what ends. */
function livesOn(context: ViewContext, bank: Loss): Text {
  const whole = context.results.dependency.services.filter(({ service, itemTags }) => itemTags.length > 0 && !bank.services.some(lost => lost.service === service))
  return whole.length === 0 ? [] : ['Lives on: ', ...joined(whole.map(({ service }) => [inSentence(serviceDefinitions[service].title)])), '. ']
}

/** A link that ends at the bank itself gives nothing back where the bank is faulty, and may start an engine where it is only flat. */
function backBy(context: ViewContext, { tag, linkTags }: Loss): Text {
  if (linkTags.length > 0) return ['Part of it back by ', ...joined(linkTags.map(link => closedBy(context, link))), '.']
  const atIt = context.results.emergency.links.filter(({ fromBatteryTag, ontoBatteryTags }) => fromBatteryTag === tag || ontoBatteryTags.includes(tag))
  return atIt.length === 0 ? ['No link brings it back.'] : ['Only flat: ', ...joined(atIt.map(({ circuitTag }) => closedBy(context, circuitTag))), ' can start an engine, isolators closed. Faulty: no link brings it back.']
}

/** What parts it where it is faulty. */
function isolatedBy(context: ViewContext, { tag }: Loss): Text {
  const isolators = context.results.emergency.isolators.filter(({ inLink, batteryTags }) => !inLink && batteryTags.includes(tag)).flatMap(isolator => context.lookup.equipment.get(isolator.tag) ?? [])
  return isolators.length === 0 ? [] : [' If faulty, isolate by ', ...joined(isolators.map((item): Text => [context.tag(item.tag), ' (', ...placeText(context, item, { withAccess: false }), ')'])), '.']
}

export function linkReach(context: ViewContext): readonly Block[] {
  const { links } = context.results.emergency
  if (links.length === 0) return []
  const entries = links.map(({ circuitTag, switchTags, fromBatteryTag, ontoTag, ontoBatteryTags }) => {
    const { equipment, circuits } = context.lookup
    const [first] = switchTags.flatMap(tag => equipment.get(tag) ?? [])
    const circuit = circuits.get(circuitTag)!
    const notes = switchTags.flatMap(tag => equipment.get(tag)?.notes ?? [])
    return {
      act: 'Close in need', what: first === undefined ? circuitWhat(context, circuit) : [...context.named(first.tag), ' (link ', context.tag(circuitTag), ')'],
      where: first === undefined ? circuitWhere(context, circuit) : placeText(context, first, { withAccess: false }),
      remark: ['Joins ', ...context.named(fromBatteryTag), ' to ', ...context.named(ontoTag), ...(ontoBatteryTags.length === 0 ? [] : [', the side of ', ...joined(ontoBatteryTags.map(tag => [context.tag(tag)]))]), '. ', ...notes.flatMap(note => [note, ' '])],
    }
  })
  return [...reach('The link', entries), { is: 'paragraph', text: [strong(linkCaution)] }]
}

const mostToShed = 6

export function sheddingReach(context: ViewContext): readonly Block[] {
  return reach('Switch off first, the heaviest on top', context.results.emergency.shedding.slice(0, mostToShed).map(({ circuitTag, meanCurrentA }) => {
    const circuit = context.lookup.circuits.get(circuitTag)!
    const saves = `Saves about ${say('meanCurrentA', meanCurrentA)}.`
    const act = openingAct(circuit)
    const [item, ...others] = circuit.loadTags.flatMap(tag => context.lookup.equipment.get(tag) ?? [])
    // Nobody unscrews a fuse under load to save current, and a wheel that turns needs its supply to slow down.
    return act === 'Take out' && item !== undefined && others.length === 0
      ? { act: 'Switch off', what: context.named(item.tag), where: ['at its own switch or panel'], remark: [`${saves} Leave its fuse `, context.tag(circuitTag), ' in.'] }
      : { act, what: circuitWhat(context, circuit), where: circuitWhere(context, circuit), remark: [saves] }
  }))
}
