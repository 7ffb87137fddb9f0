/** The boat's own facts in the texts on faults: batteries, what is opened first, charging, networks, antennas. */
import { isThere } from '../../../model/lookup.js'
import type { Circuit } from '../../../model/vessel.js'
import { cite } from '../../../references/bibliography.js'
import { restVoltageCitation, restVoltages } from '../../../references/tables/battery-rest-voltage.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { circuitPlace, protectionText } from '../../parts/circuit-parts.js'
import { placeText } from '../../parts/item-parts.js'
import { terminationText } from '../../pages/fault-tracing/fault-data-steps.js'
import { thingPlace } from '../../pages/fault-tracing/fault-words.js'
import { byTag, tableOf } from '../../tables.js'
import { joined, lineBreak, muted, notRecorded } from '../../text.js'
import type { Table, Text } from '../../view-model.js'

const chemistryTitles = { flooded: 'flooded lead-acid', agm: 'AGM', gel: 'gel', lfp: 'lithium iron phosphate' } as const

/** Where each battery is, and what it reads when nothing flows. */
export const batteryTable = (context: ViewContext): Table => tableOf(context.vessel.batteries.filter(isThere).toSorted(byTag), {
  id: 'batteries',
  caption: 'Batteries, and their voltage at rest',
  empty: 'No battery is recorded.',
  note: [`At rest: neither charged nor drawn from for some hours, at about 20 °C (${cite(restVoltageCitation)}). A lithium battery reads nearly the same from full to nearly empty: its monitor tells more.`],
  columns: [
    { title: 'Battery', width: 'text', cell: battery => [...context.named(battery.tag), lineBreak, ...placeText(context, battery, { withAccess: false })] },
    { title: 'Kind', width: 'short', cell: ({ chemistry, nominalVoltageV }) => [say('nominalVoltageV', nominalVoltageV), ', ', chemistry === null ? notRecorded : chemistryTitles[chemistry]] },
    { title: 'Full, half, empty', width: 'short', cell: ({ chemistry, nominalVoltageV }) => {
      if (chemistry === null) return [muted('not assessed: its kind is not recorded')]
      const { fullVoltageV, halfVoltageV, emptyVoltageV } = restVoltages(chemistry, nominalVoltageV)
      return [[fullVoltageV, halfVoltageV, emptyVoltageV].map(volts => say('voltageV', volts)).join(', ')]
    } },
  ],
})

const deviceColumns = (context: ViewContext) => [
  { title: 'Device', width: 'text' as const, cell: (circuit: Circuit): Text => [...context.named(circuit.tag), ', ', protectionText(circuit)] },
  { title: 'Where', width: 'text' as const, cell: (circuit: Circuit): Text => circuitPlace(context, circuit, { withAccess: true }) },
]

/** Whatever opens first behind each battery. */
export const mainDeviceTable = (context: ViewContext): Table => tableOf(
  context.vessel.circuits.filter(({ fedFromTag, protection }) => context.lookup.batteries.has(fedFromTag) && protection !== null).toSorted(byTag),
  { id: 'main-devices', caption: 'Fuses and breakers straight from the batteries', empty: 'None is recorded.', columns: deviceColumns(context) },
)

/** Circuits by which something puts current in, each with its device. */
export const chargingTable = (context: ViewContext): Table => tableOf(
  context.vessel.circuits.filter(({ tag }) => context.results.feeding.byCircuit.get(tag)?.infeed?.only === true).toSorted(byTag),
  {
    id: 'charging', caption: 'What charges, and its fuse', empty: 'No charging source is recorded.',
    columns: [
      { title: 'Source', width: 'text', cell: ({ loadTags }) => joined(loadTags.map(context.named), lineBreak) },
      { title: 'Charges', width: 'short', cell: ({ tag, fedFromTag }) => { const source = context.results.feeding.byCircuit.get(tag)?.sourceTag; return source == null ? context.named(fedFromTag) : context.named(source) } },
      ...deviceColumns(context),
    ],
  },
)

/** As it is written on the device. */
const milliamperes = (currentA: number): string => say('ratedMilliA', 1000 * currentA)

/** Where the residual-current devices are, those built into breakers included. */
export const residualDeviceTable = (context: ViewContext): Table => tableOf(context.results.commissioning.coverage.residualDevices.toSorted(byTag), {
  id: 'residual-devices', caption: 'Residual-current devices', empty: 'None is recorded.',
  columns: [
    { title: 'Device', width: 'text', cell: ({ tag }) => context.named(tag) },
    { title: 'Trips', width: 'short', cell: ({ tripCurrent }) => (tripCurrent === null ? [notRecorded] : [`between ${milliamperes(tripCurrent.leastTripCurrentA)} and ${milliamperes(tripCurrent.mostTripCurrentA)}`]) },
    { title: 'Where', width: 'text', cell: ({ tag }) => thingPlace(context, tag) },
  ],
})

/** Supply, ends and readings of each bus. */
export const canBusTable = (context: ViewContext): Table => tableOf([...context.results.canBus.byBus.values()].map(result => ({ tag: result.bus.tag, result })).toSorted(byTag), {
  id: 'can-buses', caption: 'The buses on board', empty: 'No CAN bus is recorded.',
  columns: [
    { title: 'Bus', width: 'text', cell: ({ tag }) => context.named(tag) },
    { title: 'Ends and supply', width: 'text', cell: ({ result: { bus } }) => joined(bus.backbone.flatMap((part): Text[] => {
      if (part.kind !== 'terminator' && part.kind !== 'power') return []
      const where: Text = part.zoneTag === null ? [] : [', ', ...context.named(part.zoneTag)]
      return [[part.kind === 'power' ? 'supply ' : 'terminator ', { is: 'tag', text: part.tag }, ...where, ...(part.kind === 'power' && part.circuitTag !== null ? [' by ', context.tag(part.circuitTag)] : [])]]
    }), lineBreak) },
    { title: 'Readings', width: 'text', cell: ({ result }) => [
      ...terminationText(result), ...result.supply.sections.flatMap(({ solved }): Text => {
        const volts = solved?.insertion.voltageV ?? null
        const lowest = solved?.tees.flatMap(({ tag, voltageV }) => (voltageV === null ? [] : [{ tag, voltageV }])).toSorted((a, b) => a.voltageV - b.voltageV)[0]
        return volts === null ? [] : [lineBreak, `+ to −: about ${say('voltageV', volts)} at ${solved!.insertion.tag}`, ...(lowest === undefined ? [] : [`, ${say('voltageV', lowest.voltageV)} at ${lowest.tag}, the lowest`]), '.']
      }),
    ] },
  ],
})

/** Switches with their places, and the address of each device: the router first, which is tried first. */
export const ethernetTable = (context: ViewContext): Table => tableOf(context.vessel.ethernetNetworks.toSorted(byTag), {
  id: 'ethernet-networks', caption: 'Networks on board', empty: 'No Ethernet network is recorded.',
  columns: [
    { title: 'Network', width: 'text', cell: ({ tag }) => context.named(tag) },
    { title: 'Switches', width: 'text', cell: ({ switchTags }) => joined(switchTags.map((tag): Text => { const item = context.lookup.items.get(tag); return [...context.named(tag), ...(item === undefined ? [] : [', ', ...placeText(context, item, { withAccess: false })])] }), lineBreak) },
    { title: 'Try', width: 'short', cell: ({ tag, gatewayAddress }) => [
      gatewayAddress === null ? muted('address of the router not recorded') : `router ${gatewayAddress}`,
      ...(context.results.ethernet.networks.get(tag)?.addresses.members ?? []).filter(({ address }) => address !== null && address !== gatewayAddress).toSorted(byTag).flatMap((member): Text => [lineBreak, `${member.tag} ${member.address}`]),
    ] },
  ],
})

export const serialTable = (context: ViewContext): Table => tableOf(context.vessel.serialLinks.filter(({ tag }) => context.results.serial.byLink.has(tag)).toSorted(byTag), {
  id: 'serial-links', caption: 'Serial links on board', empty: 'No serial link is recorded.',
  columns: [
    { title: 'Link', width: 'text', cell: ({ tag }) => context.named(tag) },
    { title: 'Rate', width: 'short', cell: ({ baudRateBaud }) => [baudRateBaud === null ? notRecorded : say('baudRateBaud', baudRateBaud)] },
    { title: 'From, to', width: 'text', cell: ({ talker, listeners }) => [...context.named(talker.tag), ' to ', ...joined(listeners.map(({ tag }) => context.named(tag)))] },
  ],
})

/** The way from each transmitter to its antenna, and the highest standing wave ratio that may be read at the transmitter. */
export const antennaTable = (context: ViewContext): Table => tableOf(context.results.radio.chains.filter(({ antennaTag }) => antennaTag !== null), {
  id: 'antennas', caption: 'Transmitters, antennas and the standing wave ratio', empty: 'No transmitter with a known antenna is recorded.',
  note: ['What may be read is behind the loss of cable and splitter, at the transmitter; the reckoning is with the test sheets.'],
  columns: [
    { title: 'Transmitter', width: 'text', cell: ({ itemTag, service }) => [...context.named(itemTag), lineBreak, muted(service)] },
    { title: 'Antenna, by', width: 'text', cell: ({ antennaTag, steps }) => [...context.named(antennaTag!), ...(steps.length === 0 ? [] : [lineBreak, ...joined(steps.map((step): Text => [context.tag(step.is === 'cable' ? step.cableTag : step.itemTag)]))])] },
    { title: 'May read at most', width: 'short', cell: ({ itemTag, antennaTag }) => {
      const standing = context.results.commissioning.coverage.transmitters.find(({ chain }) => chain.itemTag === itemTag && chain.antennaTag === antennaTag)
      return standing?.mayRead.status === 'computed' ? [say('vswrFactor', standing.mayRead.output.readVswrFactor)] : [muted('not assessed')]
    } },
  ],
})
