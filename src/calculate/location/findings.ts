/** Findings (LOC): where things are. */
import type { FindingKind } from '../../findings/finding.js'
import { say } from '../../units/format.js'

const since = '0.3.0'
const retired = null

export const zoneWithoutBox: FindingKind<{ itemCount: number }> = {
  id: 'LOC201', name: 'zone-without-box', since, retired, severity: 'note',
  meaning: 'A zone holds items and has no box, while other zones have one: the plan of the boat has a hole there.',
  message: ({ subject, evidence }) => `Zone ${subject.id}: has no box, so ${evidence.itemCount === 1 ? 'its one item is' : `its ${evidence.itemCount} items are`} on no plan`,
  remedy: () => 'Measure two opposite corners of the space and enter them as from and to.',
}

export const pictureFormatNotShown: FindingKind<{}> = {
  id: 'LOC202', name: 'picture-format-not-shown', since, retired, severity: 'warning',
  meaning: 'A picture is in a format that browsers or this program do not show. Its page says so, and the call-outs stand there without it.',
  message: ({ subject, context }) => `${context?.['what']} ${subject.id}: a file that ends in "${context?.['ending']}" is not shown, JPEG and PNG are`,
  remedy: () => 'Name a JPEG file, or of a drawing a PNG file, made from it.',
}

export const itemOutsideZone: FindingKind<{ distanceM: number }> = {
  id: 'LOC301', name: 'item-outside-zone-box', since, retired, severity: 'warning',
  meaning: 'The position of an item lies outside the box of the zone that it is entered in: its position, its zone or the box is wrong. The plan shows it at its position.',
  message: ({ subject, evidence, context }) => `Item ${subject.id}: its position is ${say('distanceM', evidence.distanceM)} outside the box of zone ${context?.['zone']}`,
  remedy: () => 'Correct the position, the zone of the item, or the corners of the zone.',
}

export const callOutOfAnotherZone: FindingKind<{}> = {
  id: 'LOC302', name: 'call-out-of-another-zone', since, retired, severity: 'note',
  meaning: 'A photograph is entered as one of a zone, and a call-out on it names an item of another zone: a wrong tag, a wrong zone, or a view from one space into the next.',
  message: ({ subject, context }) => `Photograph ${subject.id}: it shows zone ${context?.['zone']}, its call-out names ${context?.['item']} of zone ${context?.['found']}`,
  remedy: () => 'Correct the tag of the call-out or the zone; leave the zone out where the picture shows several.',
}

export const callOutOfRemovedItem: FindingKind<{}> = {
  id: 'LOC303', name: 'call-out-of-removed-item', since, retired, severity: 'note',
  meaning: 'A photograph points at an item that is no longer on board: it is older than the boat as she is.',
  message: ({ subject, context }) => `Photograph ${subject.id}: its call-out names ${context?.['item']}, which has been removed`,
  remedy: () => 'Take a new photograph, or take the call-out away.',
}

export const zonesInOneBox: FindingKind<{}> = {
  id: 'LOC304', name: 'zones-in-one-box', since, retired, severity: 'warning',
  meaning: 'Two zones have the same corners. A zone may lie inside another, such as a locker in a cabin, but two spaces are not in one place.',
  message: ({ subject, context }) => `Zone ${subject.id}: its box is that of zone ${context?.['other']}, corner for corner`,
  remedy: () => 'Measure the corners of both, and correct the one that was copied.',
}

export const findingKinds = [zoneWithoutBox, pictureFormatNotShown, itemOutsideZone, callOutOfAnotherZone, callOutOfRemovedItem, zonesInOneBox] as const
