/** From zones and places to what the drawings of the boat are made of. */
import type { ArrangementView, Tag, Vessel, Zone } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import type { LocationPlan, PlanImage, PlanMark, PlanZone } from '../../drawings/location-plan.js'
import { seen, type SeenBox } from '../../drawings/location-side.js'
import { compareTags } from '../../tables.js'
import { counted } from '../../text.js'

export type BoxedZone = Zone & { readonly box: NonNullable<Zone['box']> }
export const isBoxed = (zone: Zone): zone is BoxedZone => zone.box !== null
export const hasPlan = ({ vessel }: Pick<ViewContext, 'vessel'>): boolean => vessel.zones.some(isBoxed)

/** What is there in a zone, in the order of the numbers. */
export const numberedIn = ({ results }: ViewContext, zoneTag: Tag): readonly Tag[] =>
  [...results.location.byItem].filter(([, place]) => place.zoneTag === zoneTag).toSorted(([, a], [, b]) => a.placeNumber! - b.placeNumber!).map(([tag]) => tag)

export const boxSeen = (view: ArrangementView, { box }: BoxedZone): SeenBox => ({ from: seen(view, box.fromM), upTo: seen(view, box.toM) })

export const planZone = (context: ViewContext, view: ArrangementView, zone: BoxedZone, is: PlanZone['is']): PlanZone =>
  ({ ...boxSeen(view, zone), name: zone.name, below: counted(numberedIn(context, zone.tag).length, 'item'), to: context.addressOf(zone.tag), is })

/** Of those that have a place, in the order of their tags. */
export const planMarks = ({ results, addressOf }: ViewContext, view: ArrangementView, tags: readonly Tag[]): readonly PlanMark[] =>
  [...new Set(tags)].toSorted(compareTags).flatMap(tag => {
    const place = results.location.byItem.get(tag)
    return place === undefined || place.drawnAtM === null ? [] : [{ tag, to: addressOf(tag), place: seen(view, place.drawnAtM), exact: place.positionM !== null }]
  })

export const planImages = ({ arrangementDrawings }: Vessel, view: ArrangementView): readonly PlanImage[] =>
  arrangementDrawings.filter(drawing => drawing.view === view).map(({ file, lowerLeftM, upperRightM }) => ({ file, from: seen(view, lowerLeftM), upTo: seen(view, upperRightM) }))

/** What a drawing of the boat has whatever it shows. */
export const planBasis = ({ identity, units }: Vessel): Pick<LocationPlan, 'hull' | 'units'> => ({
  units,
  hull: { lengthM: identity.lengthM, beamM: identity.beamM, draughtM: identity.draughtM, gunwaleHeightM: identity.stability.gunwaleHeightM },
})

/** What the marks mean, under a drawing that has both kinds. */
export const marksMean = 'A filled mark: the position is recorded. A dashed mark: only the zone is, and it is somewhere in there.'
