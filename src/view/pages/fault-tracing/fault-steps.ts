/** "P1 does not work": what to look at, what to measure, and what it means, from the thing back to its source. */
import { slug } from '../../../model/address.js'
import type { CableEndRef, FaultLine, FaultPoint } from '../../../model/results/fault-tracing.js'
import { isDistributionPoint } from '../../../model/lookup.js'
import type { Tag } from '../../../model/vessel.js'
import { equipmentKind } from '../../../references/equipment-kinds.js'
import { restVoltages } from '../../../references/tables/battery-rest-voltage.js'
import { say } from '../../../units/format.js'
import { cautionsFor } from '../../cautions/cautions.js'
import type { ViewContext } from '../../context.js'
import { joined, muted, strong } from '../../text.js'
import type { Block, Step, Steps, Text } from '../../view-model.js'
import { labelText } from '../../../model/cable-label.js'
import { protectionText, zoneOfCircuit } from '../../parts/circuit-parts.js'
import { treeLink } from './fault-tree-links.js'
import { closedBy, leastVoltage, spareStores, thingPlace } from './fault-words.js'

/** The steps of each way by which it is supplied; a second way without what the first has already. */
export function supplySteps(context: ViewContext, tag: Tag): readonly Block[] {
  const lines = context.results.faultTracing.byTag.get(tag) ?? []
  const walked = lines.filter(({ open }) => !open)
  const [first, ...further] = walked
  if (first === undefined) return []
  const seen = new Set(first.points.map(pointKey))
  const note = mainsOf(lines) ? mainsNote : null
  return [
    ...firstCheck(context, tag, first),
    stepsOf(context, tag, first.points, { caption: `Where its supply is lost${walked.length > 1 && first.circuitTag !== null ? `, by ${first.circuitTag}` : ''}`, note: note ?? measuringNote(context, tag, first), id: 'steps' }),
    ...further.flatMap((line): readonly Block[] => {
      const points = line.points.filter(point => point.what === 'item' || !seen.has(pointKey(point)))
      for (const point of points) seen.add(pointKey(point))
      const id = `steps-${slug(line.circuitTag ?? 'network')}`
      return [stepsOf(context, tag, points, { caption: `It has a second supply${line.circuitTag === null ? '' : `, by ${line.circuitTag}`}: only when both are lost is it dead`, note: mainsOf([line]) ? mainsNote : null, id })]
    }),
    ...openLines(context, lines.filter(({ open }) => open)),
  ]
}

const pointKey = ({ what, tag }: FaultPoint): string => `${what} ${tag}`
const mainsOf = (lines: readonly FaultLine[]): boolean => lines.some(({ points }) => points.some(({ reading }) => reading.is === 'mains'))

const mainsNote: Text = [strong('Mains voltage. Look and switch only, and open nothing: pull the shore plug, stop the generator and the inverter before anybody does. Measuring and work are for a qualified person.')]

/** Under which conditions the figures hold. */
function measuringNote(context: ViewContext, tag: Tag, { points }: FaultLine): Text {
  const last = points.flatMap(({ reading }) => (reading.is === 'voltage' && reading.expected.status === 'computed' ? [{ sourceTag: reading.sourceTag, volts: reading.expected.input.sourceVoltageV }] : [])).at(-1)
  const starts = cautionsFor(context, { kinds: kindsOf(context, tag) }).some(({ key }) => key === 'rotating-machinery')
  const touch: Text = [...(starts ? [strong('It can start at any moment: keep hands, hair and cords clear. ')] : []), 'Look and switch first. Draw the fuse or switch the breaker off before you loosen a wire, and short nothing with the meter’s tips. ']
  if (last === undefined || last.sourceTag === null) return touch
  const float = points.find(point => context.lookup.equipment.get(point.tag)?.kind === 'float switch')
  const isPanel = context.lookup.equipment.get(last.sourceTag)?.kind === 'solar panel'
  return [
    ...touch, 'Measure with ', tag, ' switched on', ...(float === undefined ? [] : [' and the float of ', context.tag(float.tag), ' held up']), ': a bad contact shows only under load. The figures hold with ', say('nominalVoltageV', last.volts), ' at ', context.tag(last.sourceTag),
    isPanel ? ', in full sun.' : ' and all else on; where it gives less, they are less by as much.',
  ]
}

const kindsOf = ({ lookup }: ViewContext, tag: Tag): readonly string[] => { const item = lookup.equipment.get(tag); return item === undefined ? [] : [item.kind] }

// --- the first question ----------------------------------------------------------------------------------------------
/** Whether anything else is dead tells at which step to begin. */
function firstCheck(context: ViewContext, tag: Tag, { points }: FaultLine): readonly Block[] {
  const seen = new Set<Tag>([tag])
  const entries: { label: string; value: Text }[] = [{ label: 'Step 1', value: ['only ', tag, ' is dead'] }]
  points.forEach(({ what, tag: pointTag, atTag }, i) => {
    if (!sharedPoints.has(what)) return
    const lost = context.results.dependency.losses.get(what === 'bus' ? atTag! : pointTag) ?? []
    const dead = lost.filter(effect => effect.how === 'dead' && !seen.has(effect.tag))
    for (const effect of dead) seen.add(effect.tag)
    const named = dead.filter(effect => isNoticed(context, effect.tag)).map(effect => context.named(effect.tag))
    // What hangs on the circuit itself is dead with it, and tells nothing.
    if (named.length === 0 || pointTag === tag) return
    const more = named.length - mostNamed
    entries.push({ label: `Step ${i + 1}`, value: [...joined(named.slice(0, mostNamed)), ...(more > 0 ? [` and ${more} more`] : []), named.length === 1 ? ' is dead too' : ' are dead too'] })
  })
  return entries.length === 1 ? [] : [{ is: 'facts', caption: 'First: is anything else dead? It tells at which step to begin', entries }]
}
/** Points that several things hang on. */
const sharedPoints: ReadonlySet<FaultPoint['what']> = new Set<FaultPoint['what']>(['device', 'battery', 'source', 'bus', 'network switch'])
/** Whether anybody sees that it is dead: a plug or a terminal block shows nothing. */
const isNoticed = ({ lookup }: ViewContext, tag: Tag): boolean => { const item = lookup.equipment.get(tag); return item !== undefined && equipmentKind(item.kind).draw !== 'junction' }
const mostNamed = 3

// --- steps -----------------------------------------------------------------------------------------------------------
function stepsOf(
  context: ViewContext, tag: Tag, points: readonly FaultPoint[], { caption, note, id }: { caption: string; note: Text | null; id: string },
): Steps {
  const zones = new Set<Tag>()
  return {
    is: 'steps', id, caption, note, steps: points.map((point, i) => {
      const zone = zoneOf(context, point)
      const withAccess = zone !== null && !zones.has(zone)
      if (zone !== null) zones.add(zone)
      return { number: String(i + 1), ...stepOf(context, tag, point, { goesOn: i + 1 < points.length, withAccess }) }
    }),
  }
}

/** How to get at a space is said once, at the first step that leads there. */
function zoneOf(context: ViewContext, { tag }: FaultPoint): Tag | null {
  const { lookup } = context
  const circuit = lookup.circuits.get(tag)
  return circuit === undefined ? lookup.items.get(tag)?.zoneTag ?? null : zoneOfCircuit(context, circuit)
}

function stepOf(context: ViewContext, tag: Tag, point: FaultPoint, { goesOn, withAccess }: { readonly goesOn: boolean; readonly withAccess: boolean }): Omit<Step, 'number'> {
  const { title, look, there, notThere } = wordsOf(context, tag, point)
  const measure = measureText(context, tag, point)
  const next = goesOn ? 'go on with the next step.' : 'the fault is here, or before it.'
  return {
    title,
    where: placeOf(context, point, withAccess),
    lines: [
      { label: 'Look', text: look },
      ...(measure === null ? [] : [{ label: 'Measure', text: measure }]),
      ...(measure === null || point.reading.is !== 'voltage' ? [] : [{ label: 'There', text: there }, { label: 'Not there', text: notThere ?? [next] }]),
    ],
  }
}

function placeOf(context: ViewContext, { tag, portName }: FaultPoint, withAccess: boolean): Text {
  const place = thingPlace(context, tag, { withAccess })
  return portName === null ? place : [`${/^port/i.test(portName) ? '' : 'port '}${portName}, `, ...place]
}

interface Words { readonly title: Text; readonly look: Text; readonly there: Text; readonly notThere?: Text }

function wordsOf(context: ViewContext, itemTag: Tag, point: FaultPoint): Words {
  const { tag, cableTags } = point
  const cables: Text = joined(cableTags.map(cable => [context.tag(cable)]))
  const beyond: Text = cableTags.length === 0 ? ['the fault lies further on, towards ', context.tag(itemTag), '.'] : ['the fault lies further on, in ', ...cables, ' or its ends.']
  switch (point.what) {
    case 'item': return {
      title: ['At ', ...context.named(tag), ' itself'],
      look: isDistributionPoint(context.vessel, tag) ? ['Loose, warm or green where the supply comes in?']
        : point.reading.is === 'data cable' ? ['Lamps at its plug? Plug seated, dry, not green? Cable ', ...cables, '.']
        : ['Switched on? Plug seated, dry, not green? A fuse of its own in its lead?'],
      there: isDistributionPoint(context.vessel, tag) ? ['it is fed; look at the circuits behind it.'] : (context.results.dependency.traces.get(tag)?.data ?? []).length > 0 ? ['it has its supply. Look at its data below; else the fault is in it.']
        : ['it has its supply: the fault is in it.'],
    }
    case 'switch': return {
      title: context.named(tag), there: beyond,
      look: [context.lookup.equipment.get(tag)?.kind === 'float switch' ? 'Lift it by hand: does it run? Weed or dirt under the float?' : 'Is it on? Contacts warm or loose?'],
    }
    case 'joint': return { title: context.named(tag), look: ['Loose, wet or green?'], there: beyond }
    case 'device': return deviceWords(context, point)
    case 'battery': return {
      title: context.named(tag), look: ['Posts tight and clean? Anything charging it?', ...restText(context, tag)],
      there: ['the battery is good; the fault lies in ', ...(cableTags.length === 0 ? ['its cables'] : cables), ' or at its posts.'],
      notThere: ['it is flat, cut off by its guard, or bad. ', ...treeLink(context, 'flat-battery')],
    }
    case 'source': return { title: context.named(tag), look: ['Does it run, and does it give? Its own lamps and messages?'], there: beyond }
    case 'bus': return {
      title: ['Tee ', { is: 'tag', text: tag }, ' of ', ...context.named(point.atTag!)], look: ['Plugs of the tee seated? Are the devices on the tees beside it dead too?'],
      there: beyond,
    }
    case 'bus supply': return {
      title: ['Where ', ...context.named(point.atTag!), ' is fed: ', { is: 'tag', text: tag }], look: ['Plugs seated? Is every device on the bus dead?'],
      there: ['the backbone between here and the tee is broken, or shorted by a device: unplug it stretch by stretch.'],
    }
    case 'network switch': return {
      title: [...context.named(tag)], look: ['Lamp of the port on? If not, try the cable on a port that works. Lamps of the other ports dead too: go on.'], there: [],
    }
  }
}

function deviceWords(context: ViewContext, { tag, atTag, cableTags, otherFeedTags }: FaultPoint): Words {
  const circuit = context.lookup.circuits.get(tag)!
  const channel = context.lookup.panels.get(atTag ?? '')?.kind === 'switching module'
  const others: Text = otherFeedTags.length === 0 ? [] : [' ', muted('Can also be fed by '), ...joined(otherFeedTags.map(other => closedBy(context, other))), '.']
  const stores = circuit.protection?.device.includes('fuse') === true ? spareStores(context) : []
  const spares: Text = stores.length === 0 ? [] : [' ', muted('Spare fuses: '), ...joined(stores.map(({ tag: store }) => [context.tag(store)])), '.']
  return {
    title: [...context.named(tag), `, ${protectionText(circuit)}`],
    look: [
      circuit.protection === null ? 'No device here that could have opened.' : channel ? 'Is the channel on, and does the display say why not?' : 'Tripped, blown or off? Put it right once.', ...spares,
      ...(circuit.manualBypass === null ? [] : [` By hand: ${circuit.manualBypass.replace(/\.?$/, '.')}`]), ...others,
    ],
    there: ['behind it: the fault lies further on', ...(cableTags.length === 0 ? [] : [', in ', ...joined(cableTags.map(cable => [context.tag(cable)]))]), '. ', circuit.protection === null ? '' : 'Only in front of it: it is open, or bad.'],
    notThere: ['on neither side: go on.'],
  }
}

/** A resting battery tells how full it is. */
function restText(context: ViewContext, tag: Tag): Text {
  const battery = context.lookup.batteries.get(tag)
  const rest = battery?.chemistry == null ? null : restVoltages(battery.chemistry, battery.nominalVoltageV)
  return rest === null ? [] : [` At rest for some hours: ${say('voltageV', rest.fullVoltageV)} full, ${say('voltageV', rest.halfVoltageV)} half, ${say('voltageV', rest.emptyVoltageV)} empty.`]
}

// --- measuring -------------------------------------------------------------------------------------------------------
function measureText(context: ViewContext, itemTag: Tag, point: FaultPoint): Text | null {
  const { reading } = point
  if (reading.is !== 'voltage') return null
  return [...between(context, reading.plus, reading.minus, point.what === 'battery' ? 'post' : 'terminal near it'), ': ', ...expectText(context, itemTag, point), ...(point.what === 'device' && context.lookup.circuits.get(point.tag)?.protection != null ? ['; the same in front of it.'] : ['.'])]
}

export const labelInline = (context: ViewContext, { tag, end }: CableEndRef): Text => [{ is: 'tag', text: labelText(context.lookup.cables.get(tag)!, end) }]

/** Between which conductors, by what their labels say. */
function between(context: ViewContext, plus: CableEndRef | null, minus: CableEndRef | null, otherwise: string): Text {
  if (plus !== null && plus.tag === minus?.tag && plus.end === minus.end) return ['between + and − of ', ...labelInline(context, plus)]
  return [
    'between + ', ...(plus === null ? [otherwise] : labelInline(context, plus)),
    ' and − ', ...(minus === null ? [otherwise] : labelInline(context, minus)),
  ]
}

function expectText(context: ViewContext, itemTag: Tag, { what, tag, reading }: FaultPoint): Text {
  if (reading.is !== 'voltage') return []
  const { expected } = reading
  if (expected.status === 'not computed') return [muted(`how much to expect is not assessed: ${expected.reason}`)]
  const item = what === 'item' && tag === itemTag ? context.lookup.equipment.get(tag) : undefined
  const needs = item?.supplyMinV == null ? '' : ` (it works from ${say('ratedSupplyV', item.supplyMinV)}${item.supplyMaxV === null ? '' : ` to ${say('ratedSupplyV', item.supplyMaxV)}`})`
  return ['at least ', strong(leastVoltage(context, { what, tag }, expected.output.leastVoltageV)), needs]
}

/** What can be closed to feed it another way. */
function openLines(context: ViewContext, lines: readonly FaultLine[]): readonly Block[] {
  const circuits = lines.flatMap(({ circuitTag }) => circuitTag ?? [])
  if (circuits.length === 0) return []
  return [{ is: 'paragraph', text: [strong('Another way to feed it: '), 'close ', ...joined(circuits.map(circuit => closedBy(context, circuit)), ' or '), '. Find the fault first, or that feeds it as well.'] }]
}
