/** The front: home, finding a thing fast, the vessel and its document control, the electrical overview. */
import { acceptedPart, isAccepted } from '../../findings/finding.js'
import { editionTitles } from '../../model/edition.js'
import type { Circuit } from '../../model/vessel.js'
import { equipmentKind } from '../../references/equipment-kinds.js'
import { say, sayBoth } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { byTag, compareTags, tableOf } from '../tables.js'
import { counted, dash, joined, linkTo, orDash, orNotRecorded, pageNumber } from '../text.js'
import type { Block, Diagram, Page, PageKey, Table, Text } from '../view-model.js'
import { circuitPlace, protectionText } from '../parts/circuit-parts.js'
import { circuitTable } from './circuits/circuits.view.js'
import { equipmentTable } from './equipment/equipment.view.js'
import { placeText } from '../parts/item-parts.js'
import { emergencyCards } from './emergency/emergency.view.js'
import { panelsTable } from './panels.view.js'
import { distressLink, hasDistressCard } from './record/distress-card.view.js'

type Card = readonly [title: string, key: PageKey, words: string]

/** In the order in which a person comes to need them: trouble first, then the boat, then work on her. */
function cardGroups(context: ViewContext): readonly (readonly [string, readonly Card[]])[] {
  const { findings } = context
  const errors = findings.filter(({ severity }) => severity === 'error').length
  const accepted = findings.filter(isAccepted).length
  return [
    ['In trouble', [
      ...emergencyCards(context).map(({ title, to, text: [words] }): Card => [title, to, words]),
      ['Find by tag or name', fixedPages.find, 'Which fuse, where it is, which cable. Start here when something is dead.'],
      ['Fault tracing', fixedPages.faultTracing, 'Something is dead: what to look at first, then step by step back to the battery.'],
      ['Safety', fixedPages.safety, 'Read before you open a panel.'],
    ]],
    ['Day by day', [
      ['Living with the boat', fixedPages.owner, 'Finding your way on board, shore power, a night at anchor, leaving her.'],
      ['Operating the equipment', fixedPages.operating, 'How each kind of equipment is used, and what it depends on.'],
      ['Maintenance', fixedPages.maintenance, 'What is due, checklists, parts, and sheets to write on.'],
    ]],
    ['What is on board', [
      ['The vessel and this document', fixedPages.vessel, 'Her data, who built and fitted her, and what changed in each issue.'],
      ['Systems', fixedPages.systems, 'Navigation, communication, power: what belongs together.'],
      ['Location plan', fixedPages.location, 'Plan and profile of the boat, and where on it everything is.'],
      ['Photographs', fixedPages.photographs, 'What to see where, with numbers.'],
      ['Zones', fixedPages.zones, 'Stand in a place and see what is there.'],
      ['Equipment list', fixedPages.equipment, 'Every item, with its place, fuse, cables and settings.'],
      ['Identifiers', fixedPages.identifiers, 'MMSI, call sign, hull identification, beacons.'],
    ]],
    ['Power', [
      ['Panels and modules', fixedPages.panels, 'Way by way: what each fuse and breaker feeds, and what is spare.'],
      ['Mains and shore power', fixedPages.acSupply, 'Connecting, what may run at once, residual-current protection.'],
      ['Load analysis and energy', fixedPages.energy, 'How long the batteries last, and what charges them.'],
      ['One-line diagrams', fixedPages.electrical, 'From the batteries to every circuit.'],
      ['Circuit schedule', fixedPages.circuits, 'Every circuit with its working.'],
      ['Protection and short circuit', fixedPages.protectiveDevices, 'What each device must break, where it sits, which one trips first.'],
    ]],
    ['Electronics and radio', [
      ['Data networks', fixedPages.networks, 'CAN buses, Ethernet and serial links, port by port.'],
      ['Wireless and outside links', fixedPages.outsideLinks, 'Networks on board, and the ways to the shore.'],
      ['Radio and antennas', fixedPages.radio, 'How far it carries, and where nobody may be while it transmits.'],
      ['Placement', fixedPages.placement, 'Compasses, navigation lights, radar, depth, and mass.'],
    ]],
    ['Before you add, replace or repair', [
      ['Spare capacity', fixedPages.spareCapacity, 'Spare ways, current left, free ports and tees.'],
      ['Configuration record', fixedPages.configuration, 'Before a device is replaced: its software, and what to set on the new one.'],
      ['Logging in', fixedPages.credentials, 'What asks for a password, and where that is kept.'],
      ['Cables and labels', fixedPages.cables, 'Any label to both of its ends.'],
      ['Wireways', fixedPages.wireways, 'Where cables run, and where one more fits.'],
      ['Commissioning', fixedPages.commissioning, 'What was measured, held against what was calculated.'],
      ['Workshop documents', fixedPages.workshop, 'Wire lists by zone, bill of cable, panel legends, test sheets.'],
    ]],
    ['How she stands, and on what basis', [
      ['Findings', fixedPages.findings, `${counted(findings.length, 'finding')}${acceptedPart(findings.length, accepted)}, ${counted(errors, 'error')}.`],
      ['Readiness for delivery', fixedPages.readiness, 'What stands against handing her over, and what is still to be tested.'],
      ['Completeness', fixedPages.completeness, 'What law and standards ask of an owner’s manual, and where it is.'],
      ['Sign-off', fixedPages.signOff, 'One sheet, to be signed when she changes hands.'],
      ['Not assessed', fixedPages.notAssessed, 'What could not be calculated, and what is missing for it.'],
      ['Basis of calculation', fixedPages.basis, 'Rules, limits, formulas and sources.'],
      ['How to read this manual', fixedPages.howToRead, 'Tags, verdicts, and what the manual does not cover.'],
    ]],
  ]
}

/** `there`: the pages that this pack has. */
export function homePage(context: ViewContext, there: ReadonlySet<PageKey>): Page {
  const { identity } = context.vessel
  const groups = cardGroups(context).map(([title, cards]) => ({ title, cards: cards.filter(([, key]) => there.has(key)) })).filter(({ cards }) => cards.length > 0)
  return {
    key: fixedPages.home,
    title: identity.name,
    kicker: 'Handover pack: electrical and electronic systems, as fitted',
    lead: identity.description === null ? null : [identity.description],
    printed: null,
    trail: [],
    blocks: [
      ...(hasDistressCard(context) ? [{ is: 'paragraph', text: distressLink } as const] : []),
      ...groups.flatMap(({ title, cards }): readonly Block[] => [
        { is: 'heading', text: title, anchor: null },
        { is: 'cards', cards: cards.map(([name, to, words]) => ({ title: name, to, text: [words] })) },
      ]),
    ],
  }
}

/** Everything with a tag in one list, each with its fuse and the fuse's place: readable with no script, searchable with one. */
export function findPage(context: ViewContext): Page {
  const { vessel, lookup } = context
  interface Found { readonly tag: string; readonly name: string; readonly kind: string; readonly where: Text; readonly fuse: Text }
  const fuseOf = (circuits: readonly Circuit[]): Text =>
    circuits.length === 0 ? dash : joined(circuits.map(circuit => [context.tag(circuit.tag), ` ${protectionText(circuit)}, `, ...circuitPlace(context, circuit)]), { is: 'break' })
  const found: Found[] = [
    ...[...lookup.items.values()].map(item => ({ tag: item.tag, name: item.name, kind: 'equipment', where: placeText(context, item), fuse: fuseOf(context.circuitsOf(item.tag)) })),
    ...vessel.circuits.map(circuit => ({ tag: circuit.tag, name: circuit.name, kind: 'circuit', where: circuitPlace(context, circuit), fuse: [protectionText(circuit)] })),
    ...vessel.cables.map(cable => ({ tag: cable.tag, name: cable.name ?? 'cable', kind: 'cable', where: [context.tag(cable.from.tag), ' to ', context.tag(cable.to.tag)] as Text, fuse: dash })),
  ]
  const indexed = found.filter(({ kind }) => kind !== 'cable').toSorted((a, b) => compareTags(a.name, b.name) || compareTags(a.tag, b.tag))
  return {
    key: fixedPages.find,
    title: 'Find by tag or name',
    kicker: null,
    lead: ['Everything that carries a tag, by name.'],
    printed: [tableOf(indexed, {
      id: 'index',
      caption: 'Equipment and circuits by name; cables are in the cable index',
      empty: 'Nothing is recorded.',
      columns: [
        { title: 'Name', width: 'text', cell: thing => [thing.name] },
        { title: 'Tag', width: 'tag', cell: thing => [context.tag(thing.tag)] },
        { title: 'Fuse or breaker', width: 'text', cell: thing => (thing.kind === 'circuit' ? thing.fuse : joined(context.circuitsOf(thing.tag).map(circuit => [context.tag(circuit.tag), ` ${protectionText(circuit)}`]), ', ')) },
        { title: 'Sheet', width: 'number', cell: thing => [pageNumber(context.addressOf(thing.tag)!)] },
      ],
    })],
    trail: [],
    blocks: [tableOf(found.toSorted((a, b) => compareTags(a.name, b.name) || compareTags(a.tag, b.tag)), {
      id: 'find-list',
      caption: 'Equipment, circuits and cables',
      empty: 'Nothing is recorded.',
      columns: [
        { title: 'Name', width: 'text', cell: thing => [thing.name] },
        { title: 'Tag', width: 'tag', cell: thing => [context.tag(thing.tag)] },
        { title: 'Fuse or breaker', width: 'text', cell: thing => thing.fuse },
        { title: 'Where', width: 'text', cell: thing => thing.where },
      ],
    })],
  }
}

export function vesselPage({ vessel, basis, edition }: ViewContext): Page {
  const { identity, document } = vessel
  const quantity = (name: string, value: number | null): Text => orNotRecorded(value === null ? null : sayBoth(name, value, vessel))
  return {
    key: fixedPages.vessel,
    title: 'The vessel and this document',
    kicker: null,
    lead: identity.description === null ? null : [identity.description],
    printed: null,
    trail: [],
    blocks: [
      {
        is: 'facts', caption: 'Vessel', entries: [
          { label: 'Name', value: [identity.name] },
          { label: 'Model', value: orNotRecorded(identity.model) },
          { label: 'Builder', value: orNotRecorded(identity.builder) },
          { label: 'Hull number', value: orNotRecorded(identity.hullNumber) },
          { label: 'Craft identification', value: orNotRecorded(identity.hullIdentification) },
          { label: 'Design category', value: orNotRecorded(identity.designCategory) },
          { label: 'Year of build', value: orNotRecorded(identity.yearBuilt === null ? null : String(identity.yearBuilt)) },
          { label: 'Flag and home port', value: [[identity.flag, identity.homePort].filter(word => word !== null).join(', ') || 'not recorded'] },
          { label: 'Call sign', value: orNotRecorded(identity.callSign) },
          { label: 'MMSI', value: orNotRecorded(identity.mmsi) },
          { label: 'Length of hull', value: quantity('lengthM', identity.lengthM) },
          { label: 'Beam', value: quantity('beamM', identity.beamM) },
          { label: 'Draught', value: quantity('draughtM', identity.draughtM) },
          { label: 'Displacement, light', value: quantity('displacementKg', identity.displacementKg) },
          { label: 'Persons, at most', value: orNotRecorded(identity.maximumPersons === null ? null : String(identity.maximumPersons)) },
        ],
      },
      {
        is: 'facts', caption: 'Document control', entries: [
          { label: 'Document number', value: orNotRecorded(document.number) },
          { label: 'Edition', value: [editionTitles[edition]] },
          { label: 'Issue', value: orNotRecorded(document.issue) },
          { label: 'Date of issue', value: orNotRecorded(document.issuedOn) },
          { label: 'Prepared by', value: orNotRecorded(document.preparedBy) },
          { label: 'Checked by', value: orNotRecorded(document.checkedBy) },
          { label: 'Approved by', value: orNotRecorded(document.approvedBy) },
          { label: 'Installer', value: orNotRecorded(document.installer) },
          { label: 'Contact', value: orNotRecorded(document.contact) },
          { label: 'Held against', value: [linkTo(fixedPages.basis, basis.title)] },
        ],
      },
      tableOf(vessel.changes, {
        id: 'changes',
        caption: 'Change record',
        empty: 'No change is recorded.',
        columns: [
          { title: 'Issue', width: 'tag', cell: change => [change.issue] },
          { title: 'Date', width: 'short', cell: change => [change.date] },
          { title: 'By', width: 'short', cell: change => orDash(change.by) },
          { title: 'What changed', width: 'text', cell: change => [change.what] },
          { title: 'Why', width: 'text', cell: change => orDash(change.why) },
        ],
      }),
    ],
  }
}

export function electricalPage(context: ViewContext, diagrams: readonly Diagram[], legend: Diagram | null): Page {
  const { vessel } = context
  const feeders = vessel.circuits.filter(circuit => !context.lookup.panels.has(circuit.fedFromTag))
  const drawings = [...diagrams, ...(legend === null ? [] : [legend])]
  const tables = [
    batteryTable(context),
    equipmentTable(context, vessel.busbars.toSorted(byTag), 'busbars', 'Busbars'),
    chargingTable(context),
    panelsTable(context, vessel.panels.toSorted(byTag)),
    circuitTable(context, feeders, { id: 'feeders', caption: 'Circuits fed from batteries and busbars' }),
  ]
  return {
    key: fixedPages.electrical,
    title: 'Power: one-line diagrams',
    kicker: null,
    lead: ['From the batteries and other sources through fuses, isolators and busbars to the panels. Positive conductors are drawn, of a.c. circuits the live ones; every box leads to its page.'],
    // On paper a drawing takes a sheet of its own, so the tables come first.
    printed: [...tables.slice(0, -1), ...drawings],
    trail: [],
    blocks: [...drawings, ...tables],
  }
}

function batteryTable(context: ViewContext): Table {
  return tableOf(context.vessel.batteries.toSorted(byTag), {
    id: 'batteries',
    caption: 'Battery banks',
    empty: 'No battery is recorded.',
    columns: [
      { title: 'Tag', width: 'tag', cell: battery => [context.tag(battery.tag)] },
      { title: 'Name', width: 'text', cell: battery => [battery.name] },
      { title: 'Chemistry', width: 'short', cell: battery => orNotRecorded(battery.chemistry) },
      { title: 'Nominal voltage', width: 'number', cell: battery => [say('nominalVoltageV', battery.nominalVoltageV)] },
      { title: 'Capacity', width: 'number', cell: battery => { const capacityAh = context.results.sources.byBattery.get(battery.tag)?.capacityAh ?? null; return orNotRecorded(capacityAh === null ? null : say('capacityAh', capacityAh)) } },
      { title: 'Where', width: 'text', cell: battery => placeText(context, battery) },
    ],
  })
}

function chargingTable(context: ViewContext): Table {
  return equipmentTable(context, context.vessel.equipment.filter(({ kind, outputs }) => outputs.length > 0 || equipmentKind(kind).draw === 'source').toSorted(byTag), 'charging', 'Charging and conversion')
}

