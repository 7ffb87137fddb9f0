/** The card for a distress call: what to do and to say, with the vessel's own numbers, places and fuses. One sheet. */
import { isThere } from '../../../model/lookup.js'
import { mmsiForms } from '../../../references/tables/mmsi-forms.js'
import { spelled } from '../../../references/tables/spelling.js'
import type { IdentityCheck } from '../../../model/results/identifiers.js'
import type { Equipment, Tag } from '../../../model/vessel.js'
import { sayBoth } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { circuitPlace, protectionText } from '../../parts/circuit-parts.js'
import { placeText } from '../../parts/item-parts.js'
import { generalText } from '../front-matter.view.js'
import { fixedPages } from '../../site-map.js'
import { byTag } from '../../tables.js'
import { joined, lineBreak, linkTo, muted, notRecorded, strong, verdict } from '../../text.js'
import type { Block, Facts, Page, Spoken, Text } from '../../view-model.js'

const present = ({ vessel }: ViewContext): readonly Equipment[] => vessel.equipment.filter(isThere).toSorted(byTag)
const radiosOf = (context: ViewContext): readonly Equipment[] => present(context).filter(({ kind }) => kind === 'vhf transceiver')
const beaconsOf = (context: ViewContext): readonly Equipment[] => present(context).filter(({ kind }) => kind === 'safety beacon')

/** A vessel with neither radio nor beacon has nothing to call with. */
export const hasDistressCard = (context: ViewContext): boolean => radiosOf(context).length > 0 || beaconsOf(context).length > 0

export function distressCard(context: ViewContext): Page {
  const radios = radiosOf(context).toSorted((a, b) => Number(isHandheld(a)) - Number(isHandheld(b)))
  const beacons = beaconsOf(context)
  const blocks: readonly Block[] = [
    identityFacts(context),
    ...(radios.length === 0 ? [noRadio] : [...general(context, 'distress-alert'), spokenCall(context)]),
    { is: 'facts', caption: 'Where everything is', entries: [...radios.flatMap(radio => radioFacts(context, radio)), ...beacons.map(beacon => beaconFact(context, beacon))] },
    ...general(context, 'distress-beacons'),
    ...general(context, 'distress-other-calls'),
  ]
  return {
    key: fixedPages.distress,
    title: 'Distress call',
    kicker: null,
    lead: [strong('Grave and imminent danger to the vessel or to a life: call at once.')],
    // Closer together, to stay on one sheet.
    printed: blocks.map(block => (block.is === 'facts' && block.large !== true ? { ...block, dense: true } : block)),
    trail: [],
    blocks,
  }
}

/** The way to the card, for the pages that people open first. */
export const distressLink: Text = [strong('In distress: '), linkTo(fixedPages.distress, 'what to do and what to say'), '.']

const noRadio: Block = { is: 'paragraph', text: [strong('No VHF radio is recorded.'), ' Help is called by what is listed here.'] }

function general(context: ViewContext, name: string): readonly Block[] {
  const { title, markdown } = generalText(context, name)
  return [{ is: 'heading', text: title, anchor: name }, { is: 'markdown', source: markdown }]
}

/** "Mike Zulu Zulu Zulu nine" */
const inSpelling = (text: string): string => spelled(text).join(' ')
/** Nine figures in threes, as they are best read out. */
const inThrees = (digits: string): string => (digits.match(/.{1,3}/g) ?? []).map(inSpelling).join(', ')

function identityFacts({ vessel: { identity }, results }: ViewContext): Facts {
  // Whoever reads a number out that cannot be right should know it.
  const doubt = (what: IdentityCheck['what']): Text => {
    const stands = results.identifiers.identities.find(check => check.holderTag === null && check.what === what)?.verdict
    return stands === 'not in order' || stands === 'doubtful' ? [lineBreak, verdict('error', `${stands}, see`), ' ', linkTo(fixedPages.identifiers, 'Identifiers')] : []
  }
  const numbered = (what: IdentityCheck['what'], value: string | null, words: (value: string) => string): Text =>
    (value === null ? [notRecorded] : [strong(value), lineBreak, words(value), ...doubt(what)])
  return {
    is: 'facts', caption: null, large: true,
    entries: [
      { label: 'Name', value: [strong(identity.name), lineBreak, inSpelling(identity.name)] },
      { label: 'Call sign', value: numbered('call sign', identity.callSign, inSpelling) },
      { label: 'MMSI', value: numbered('MMSI', identity.mmsi, inThrees) },
    ],
  }
}

/** The order of ITU Radio Regulations, Nos. 32.13C and 32.13D. */
function spokenCall({ vessel }: ViewContext): Spoken {
  const { name, callSign, mmsi, maximumPersons, lengthM } = vessel.identity
  const own = name.toUpperCase()
  const line = (say: string, blank: string | null = null) => ({ say: [say], blank })
  const known = [...(callSign === null ? [] : [`CALL SIGN ${inSpelling(callSign)}`]), ...(mmsi === null ? [] : [`MMSI ${inThrees(mmsi)}`])].join(', ')
  const numbers = known === '' ? line('CALL SIGN', 'from the radio licence') : line(known)
  const persons = maximumPersons === null ? 'count them' : `count them; ${maximumPersons} at most are allowed`
  const length = lengthM === null ? '' : `; she is ${sayBoth('lengthM', lengthM, vessel)} long`
  return {
    is: 'spoken', id: 'spoken', caption: 'Say on channel 16, slowly',
    lines: [
      line('MAYDAY, MAYDAY, MAYDAY'),
      line(`THIS IS ${own}, ${own}, ${own}`),
      numbers,
      line(`MAYDAY ${own}`),
      numbers,
      line('MY POSITION IS', 'latitude and longitude, or bearing and distance from a known place'),
      line('I AM', 'what has happened: on fire, sinking, aground, someone overboard'),
      line('I NEED', 'what help: at once'),
      line('PERSONS ON BOARD', persons),
      line('ALSO', `anything else that helps: injured, liferaft, beacon on, colour${length}`),
      line('OVER'),
    ],
  }
}

/** Without the ways of access: nobody takes a console apart now. */
const place = (context: ViewContext, item: Equipment): Text => placeText(context, item, { withAccess: false })
const label = (context: ViewContext, item: Equipment): Text => [...context.named(item.tag), ', ', ...place(context, item)]

function radioFacts(context: ViewContext, radio: Equipment): Facts['entries'] {
  if (isHandheld(radio)) return [{ label: 'Handheld radio', value: label(context, radio) }]
  const circuits = context.circuitsOf(radio.tag)
  const handsets = present(context).filter(item => item.kind === 'vhf handset' && (item.dataFromTags.includes(radio.tag) || areJoined(context, item.tag, radio.tag)))
  const sources = radio.dataFromTags.flatMap(tag => context.lookup.equipment.get(tag) ?? []).filter(isThere)
  const displays = present(context).filter(({ kind, dataFromTags }) => kind === 'display' && sources.some(({ tag }) => dataFromTags.includes(tag)))
  return [
    { label: 'Radio', value: label(context, radio) },
    ...(handsets.length === 0 ? [] : [{ label: 'Spoken into', value: joined(handsets.map(handset => label(context, handset)), lineBreak) }]),
    {
      label: 'Its fuse', value: circuits.length === 0 ? [muted('no circuit is recorded')]
        : joined(circuits.map(circuit => [context.tag(circuit.tag), ` ${protectionText(circuit)}, `, ...circuitPlace(context, circuit)]), lineBreak),
    },
    { label: 'Its position', value: sources.length === 0 ? [muted('from nothing that is recorded: say the position')] : ['from ', ...joined(sources.map(source => label(context, source)), lineBreak)] },
    ...(displays.length === 0 ? [] : [{ label: 'Read it off', value: joined(displays.map(display => context.named(display.tag)), '; ') }]),
  ]
}

const isHandheld = ({ mmsi }: Equipment): boolean => mmsi?.startsWith(mmsiForms.handheld.prefix) ?? false

const areJoined = ({ lookup }: ViewContext, a: Tag, b: Tag): boolean =>
  (lookup.cablesAt.get(a) ?? []).some(({ from, to, status }) => status !== 'removed' && (from.tag === b || to.tag === b))

function beaconFact(context: ViewContext, beacon: Equipment): Facts['entries'][number] {
  const identities = [beacon.beaconIdentity, beacon.mmsi].filter(identity => identity !== null)
  return { label: 'Beacon', value: [...label(context, beacon), ...(identities.length === 0 ? [] : [lineBreak, muted(identities.join(', '))])] }
}
