/** Identifiers: MMSI, call sign, hull identification, beacons. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { grouped, isThere } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { IdentifiersResults, IdentityCheck } from '../../model/results/identifiers.js'
import type { Equipment, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { knowsSeriesOf } from '../../references/tables/call-sign-series.js'
import { countryOf } from '../../references/tables/countries.js'
import type { Upstream } from '../upstream.js'
import { checkBeacon } from './check-beacon.js'
import { checkItemMmsi, checkSetting, checkVesselMmsi, isOwnMmsiSetting, isRadio } from './check-mmsi.js'
import { checkCallSign, checkHullIdentification } from './check-vessel.js'
import { beaconIdentityMissing, identityUsedTwice, radioIdentityMissing } from './findings.js'
import { holderOf, type Judged } from './judged.js'
import { readMmsi } from './mmsi.js'

export function identifiersPass(vessel: Vessel, _basis: Basis, _before: Upstream): IdentifiersResults {
  const { mmsi, callSign, hullIdentification, flag } = vessel.identity
  const flagCountry = flag === null ? null : countryOf(flag)
  const items = vessel.equipment.filter(isThere)
  const judgements: readonly Judged[] = [
    ...(mmsi === null ? [] : [checkVesselMmsi(vessel, mmsi, flagCountry)]),
    ...(callSign === null ? [] : [checkCallSign(vessel, callSign, flagCountry)]),
    ...(hullIdentification === null ? [] : [checkHullIdentification(vessel, hullIdentification)]),
    ...items.flatMap(item => [
      ...(item.mmsi === null ? [] : [checkItemMmsi(vessel, item, item.mmsi)]),
      ...settingsOf(vessel, item),
      ...(item.beaconIdentity === null ? [] : [checkBeacon(vessel, item, item.beaconIdentity, flagCountry)]),
    ]),
  ]
  const twice = usedTwice(vessel, items)
  const identities = judgements.map(({ check }) => twice.reduce(sharedWith, check))
  return {
    identities,
    notAssessed: [...flagGaps(vessel, flagCountry), ...oldHullGaps(vessel, identities), ...hullGaps(vessel), ...settingGaps(vessel, items, identities)],
    findings: [
      ...judgements.flatMap(({ findings }) => findings), ...twice.map(foundTwice),
      ...missingOfRadio(vessel, items), ...missingOfBeacons(items),
    ],
  }
}

const settingsOf = (vessel: Vessel, item: Equipment): readonly Judged[] =>
  vessel.settings.filter(setting => setting.itemTag === item.tag && isOwnMmsiSetting(setting))
    .flatMap(setting => checkSetting(vessel, setting, item) ?? [])

/** What is not known about the flag leaves MMSI and call sign without a verdict on it. */
function flagGaps(vessel: Vessel, flagCountry: string | null): readonly Gap[] {
  const { mmsi, callSign, flag, name } = vessel.identity
  if (mmsi === null && callSign === null) return []
  const gap = (reason: string): Gap => ({ subjectTag: name, reason })
  if (flag === null) return [gap('whether MMSI and call sign are of her flag: the flag is not recorded')]
  if (flagCountry === null) return [gap(`whether MMSI and call sign are of her flag: “${flag}” names no country of ISO 3166-1`)]
  const reading = mmsi === null ? null : readMmsi(mmsi)
  return [
    ...(reading?.midNumber != null && reading.country === null ? [gap(`whether the MMSI is of her flag: the digits ${reading.midNumber} are not in the table`)] : []),
    ...(callSign !== null && !knowsSeriesOf(flagCountry) ? [gap(`whether the call sign is of her flag: the series of ${flag} are not in the table`)] : []),
  ]
}

const oldHullGaps = ({ identity }: Vessel, identities: readonly IdentityCheck[]): readonly Gap[] =>
  identities.flatMap(({ what, verdict, reasons }) =>
    (verdict === 'not assessed' ? reasons.map(reason => ({ subjectTag: identity.name, reason: `the ${what} is not read: ${reason}` })) : []))

const hullGaps = ({ identity: { name, hullIdentification, yearBuilt } }: Vessel): readonly Gap[] =>
  (hullIdentification === null || yearBuilt !== null ? [] : [{ subjectTag: name, reason: 'whether the years of the hull identification are hers: the year of build is not recorded' }])

/** What is set in a radio is what it sends, whatever the licence says. */
const settingGaps = ({ identity: { mmsi } }: Vessel, items: readonly Equipment[], identities: readonly IdentityCheck[]): readonly Gap[] =>
  (mmsi === null ? [] : items.filter(item => isRadio(item) && item.mmsi === null && !identities.some(({ what, holderTag }) => what === 'MMSI setting' && holderTag === item.tag))
    .map(({ tag }) => ({ subjectTag: tag, reason: 'whether it sends her MMSI: the one that is set in it is not recorded' })))

/** The ship's own number stands on each of her radios; any other is one item's alone. */
function usedTwice(vessel: Vessel, items: readonly Equipment[]): readonly Shared[] {
  const shared = (field: Shared['field'], what: IdentityCheck['what']) =>
    [...grouped(items, item => (item[field] === null || item[field] === vessel.identity.mmsi ? [] : [item[field]]))]
      .filter(([, sharing]) => sharing.length > 1)
      .map(([value, sharing]): Shared => ({ field, what, value, tags: sharing.map(({ tag }) => tag) }))
  return [...shared('mmsi', 'MMSI'), ...shared('beaconIdentity', 'beacon identity')]
}
interface Shared { readonly field: 'mmsi' | 'beaconIdentity'; readonly what: IdentityCheck['what']; readonly value: string; readonly tags: readonly Tag[] }

const sharedWith = (check: IdentityCheck, { what, value, tags }: Shared): IdentityCheck =>
  (check.what === what && check.value === value ? { ...check, verdict: 'not in order', reasons: [...check.reasons, `on ${inWords(tags)} alike`] } : check)

const foundTwice = ({ field, what, value, tags }: Shared): Finding => find(identityUsedTwice, {
  subject: { kind: 'equipment', id: tags[0]! }, field, evidence: {}, limit: null, context: { what, value, items: inWords(tags) },
})

function missingOfRadio(vessel: Vessel, items: readonly Equipment[]): readonly Finding[] {
  const { mmsi, callSign } = vessel.identity
  const radios = items.filter(isRadio)
  const missing = [...(mmsi === null ? ['MMSI'] : []), ...(callSign === null ? ['call sign'] : [])]
  if (radios.length === 0 || missing.length === 0) return []
  const { subject, holder } = holderOf(vessel, null)
  return [find(radioIdentityMissing, {
    subject, field: null, evidence: {}, limit: null, context: { holder, words: missing.join(' and no '), items: inWords(radios.map(({ tag }) => tag)) },
  })]
}

/** The AIS transmitter of a 406 MHz beacon has a number of its own, beside the beacon's identity. */
const lacksIdentity = ({ mmsi, beaconIdentity }: Equipment): boolean => beaconIdentity === null && (mmsi === null || readMmsi(mmsi).form === 'beacon')

function missingOfBeacons(items: readonly Equipment[]): readonly Finding[] {
  const without = items.filter(item => item.kind === 'safety beacon' && lacksIdentity(item)).map(({ tag }) => tag)
  return without.length === 0 ? [] : [find(beaconIdentityMissing, {
    subject: { kind: 'equipment', id: without[0]! }, field: 'beaconIdentity', evidence: {}, limit: null, context: { items: inWords(without) },
  })]
}
