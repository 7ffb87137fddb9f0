/** What on board has maintenance: items and residual-current breakers, each with the words by which tasks name it. */
import { isOnBoard, type Item, lookup } from '../../model/lookup.js'
import type { SpaceKind, Tag, TaskFacts, Vessel } from '../../model/vessel.js'
import { mmsiForms } from '../../references/tables/mmsi-forms.js'

export interface Maintained {
  readonly tag: Tag
  readonly kinds: readonly string[]
  readonly space: SpaceKind | null
  readonly fittedOn: string | null
  readonly madeOn: string | null
  readonly expiresOn: string | null
  readonly model: string | null
  readonly ofModel: readonly TaskFacts[]
}

export function maintainedOf(vessel: Vessel): readonly Maintained[] {
  const { items, zones } = lookup(vessel)
  const spaceOf = (zoneTag: Tag | null): SpaceKind | null => zones.get(zoneTag ?? '')?.space ?? null
  return [
    ...[...items.values()].filter(isOnBoard).map((item): Maintained => ({
      tag: item.tag, kinds: kindsOf(item), space: spaceOf(item.zoneTag), fittedOn: item.fittedOn, madeOn: item.madeOn, expiresOn: item.expiresOn,
      model: item.model, ofModel: 'maintenance' in item ? item.maintenance : [],
    })),
    // A breaker with residual-current protection is no item of its own.
    ...vessel.circuits.filter(({ protection }) => protection?.residualCurrentA != null).map((circuit): Maintained => ({
      tag: circuit.tag, kinds: ['residual-current device'], space: spaceOf(circuit.zoneTag), fittedOn: null, madeOn: null, expiresOn: null, model: null, ofModel: [],
    })),
  ]
}

function kindsOf(item: Item): readonly string[] {
  if ('chemistry' in item) {
    const sort = item.chemistry === null ? [] : item.chemistry === 'lfp' ? ['lithium battery'] : ['lead-acid battery', `${item.chemistry} battery`]
    return ['battery', ...sort]
  }
  if ('polarity' in item) return ['busbar']
  if ('ways' in item) return ['panel', item.kind]
  if (item.kind === 'safety beacon') return [item.kind, item.beaconIdentity === null ? 'rescue transmitter' : 'distress beacon']
  return item.kind === 'vhf transceiver' && item.mmsi?.startsWith(mmsiForms.handheld.prefix) ? ['handheld vhf transceiver'] : [item.kind]
}
