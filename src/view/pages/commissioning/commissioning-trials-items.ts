/** What single items must do: each tried in the way of the trade; what is expected is as recorded, or said to be not known. */
import { isThere } from '../../../model/lookup.js'
import type { TransducerPlacement } from '../../../model/results/placement.js'
import type { Equipment, Tag } from '../../../model/vessel.js'
import type { EquipmentKindKey } from '../../../references/equipment-kinds.js'
import { lightTypes } from '../../../references/tables/navigation-lights.js'
import { depthTolerance } from '../../../references/tables/placement-practice.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { byTag } from '../../tables.js'
import { muted } from '../../text.js'
import { box } from './commissioning-sheet-parts.js'
import type { Trial } from './commissioning-trials.js'
import { sectorText } from '../placement/bearings.js'

export function itemTrials(context: ViewContext): readonly Trial[] {
  const of = (kind: EquipmentKindKey, make: (context: ViewContext, item: Equipment) => Trial): readonly Trial[] =>
    fitted(context).filter(item => item.kind === kind).map(item => make(context, item))
  return [
    ...of('gnss receiver', positionTrial),
    ...context.results.placement.compasses.toSorted(byTag).map(({ tag }) => compassTrial(context, tag)),
    ...depthSounders(context).toSorted(byTag).map(sounder => depthTrial(context, sounder)),
    ...fitted(context).filter(({ kind, navigationLight }) => navigationLight !== null || kind === ('navigation light' satisfies EquipmentKindKey)).map(item => lightTrial(context, item)),
    ...of('ais transceiver', aisTrial),
    ...of('vhf transceiver', callTrial),
    ...of('safety beacon', beaconTrial),
  ]
}

const fitted = ({ vessel }: ViewContext): readonly Equipment[] => vessel.equipment.filter(isThere).toSorted(byTag)
const ownMmsi = ({ vessel }: ViewContext, { mmsi }: Equipment): string | null => mmsi ?? vessel.identity.mmsi
const orNotRecorded = (label: string, value: string | null): string => (value === null ? `${label} (not recorded)` : `${label} ${value}`)

function positionTrial(context: ViewContext, { tag }: Equipment): Trial {
  const blocked = context.results.radio.skies.find(sky => sky.tag === tag)?.blockedPercent ?? null
  return {
    what: context.named(tag),
    expected: ['A fix; the position on the chart is the berth where she lies.', ...(blocked === null ? [] : [` Of the sky ${say('blockedPercent', blocked)} is hidden.`])],
    found: box('satellites', 'off by'),
  }
}

function compassTrial(context: ViewContext, tag: Tag): Trial {
  const isCard = context.lookup.equipment.get(tag)?.kind === ('compass' satisfies EquipmentKindKey)
  return {
    what: context.named(tag),
    expected: [isCard ? 'Swung with all that is near it in place and switched on; the deviation card is dated and at the helm.' : 'Calibrated by its maker’s manual, then held against a transit or a compass with a card.'],
    found: isCard ? box('card dated', 'at most') : box('calibrated', 'off by'),
  }
}

/** Where one gives the depth, the others are taken to look elsewhere. */
function depthSounders({ results }: ViewContext): readonly TransducerPlacement[] {
  const { transducers } = results.placement
  const set = transducers.filter(({ configured }) => configured !== null)
  return set.length > 0 ? set : transducers
}

function depthTrial(context: ViewContext, { tag, configured, expected }: TransducerPlacement): Trial {
  const found = box('lead line', 'shown')
  if (configured === null) return { what: context.named(tag), expected: [muted('Lead line in still water; from where it measures is not recorded: find out and write it down.')], found }
  const { reads } = configured
  const offset = expected.find(each => each.reads === reads)?.offset
  const less = offset?.status === 'computed' ? offset.input.referenceDepthM : null
  const off = say('depthErrorM', depthTolerance.valueM, context.vessel)
  return {
    what: context.named(tag),
    expected: [`Lead line in still water. Shown ${reads}: `, less === null ? muted('how much less than the lead line is not known')
      : less === 0 ? `as the lead line, within ${off}.` : `${say('referenceDepthM', less, context.vessel)} less than the lead line, within ${off}.`],
    found,
  }
}

function lightTrial(context: ViewContext, { tag, navigationLight }: Equipment): Trial {
  if (navigationLight === null) return { what: context.named(tag), expected: [muted('which light it is is not recorded')], found: box('seen from', 'to') }
  const { title, colours, sector } = lightTypes[navigationLight.kind]
  return {
    what: context.named(tag),
    expected: [`${title}${colours.some(colour => title.includes(colour)) ? '' : `, ${colours.join(', ')}`}: seen ${sector.widthDeg >= 360 ? 'all round' : `from ${sectorText(sector)}, and not beyond`}.`],
    found: sector.widthDeg >= 360 ? box('all round') : box('seen from', 'to'),
  }
}

function aisTrial(context: ViewContext, item: Equipment): Trial {
  const { name, callSign, lengthM, beamM } = context.vessel.identity
  const size = lengthM === null || beamM === null ? 'length and beam (not recorded)' : `${say('lengthM', lengthM, context.vessel)} by ${say('beamM', beamM, context.vessel)}`
  return {
    what: context.named(item.tag),
    expected: [`As another boat receives it: ${orNotRecorded('MMSI', ownMmsi(context, item))}, ${name}, ${orNotRecorded('call sign', callSign)}, ${size}.`],
    found: box('MMSI', 'name', 'length, beam'),
  }
}

function callTrial(context: ViewContext, item: Equipment): Trial {
  return {
    what: context.named(item.tag),
    expected: [`A voice call answered. Digital selective calling, where it has it: a test or routine call, to a coast station or a boat that expects it, from ${orNotRecorded('MMSI', ownMmsi(context, item))}. Never a distress alert.`],
    found: box('voice: by', 'call: by'),
  }
}

function beaconTrial(context: ViewContext, { tag, mmsi, beaconIdentity }: Equipment): Trial {
  const identity = beaconIdentity ?? mmsi
  return {
    what: context.named(tag),
    expected: [`Self-test by its maker’s manual and nothing else. ${identity === null ? 'The identity on its label is not recorded: write it down.' : `On its label: ${identity}.`}`],
    found: box('self-test', 'battery until'),
  }
}
