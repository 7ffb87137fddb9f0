/** Settings as read on a device against what other entries say of the same. */
import type { Equipment, Setting, Vessel } from '../../model/vessel.js'
import { sendsIdentity } from '../../references/configured-kinds.js'
import { say } from '../../units/format.js'
import { parseQuantity } from '../../units/parse-quantity.js'

export interface Contradiction { readonly field: string; readonly name: string; readonly set: string; readonly entered: string }

/** What a setting is about (an MMSI is looked at with the identifiers), by its name, and how to tell that its value is another than the one entered. */
interface Meaning {
  readonly named: RegExp
  readonly field: string
  entered(vessel: Vessel, item: Equipment): string | null
  differs(set: string, entered: string, item: Equipment): boolean
}

const digits = (text: string): string => text.replace(/\D/g, '')

const meanings: readonly Meaning[] = [
  {
    named: /^(ip |network |static )*address$/i, field: 'address',
    entered: (_, { address }) => address,
    // Without something that looks like an address in it the setting says how it is come by.
    differs: (set, entered) => { const written = /\d+\.\d+\.\d+\.\d+/.exec(set)?.[0]; return written !== undefined && written !== entered },
  },
  {
    named: /^(nmea 2000 |can bus |bus )?device instance$/i, field: 'deviceInstanceNumber',
    entered: (_, { deviceInstanceNumber }) => (deviceInstanceNumber === null ? null : String(deviceInstanceNumber)),
    differs: (set, entered) => digits(set) !== '' && Number(digits(set)) !== Number(entered),
  },
  {
    named: /^(depth|keel|waterline|transducer) offset$/i, field: 'depthOffset.offsetM',
    entered: (_, { transducer }) => (transducer?.depthOffset == null ? null : say('offsetM', transducer.depthOffset.offsetM)),
    differs: (set, _, { transducer }) => {
      const parsed = parseQuantity(set.replace(/^[+−-]\s*/, ''), 'length')
      // Which sign a device wants is its maker's choice; the amount is not.
      return parsed.ok && Math.abs(parsed.value - Math.abs(transducer!.depthOffset!.offsetM)) > offsetToleranceM
    },
  },
  {
    named: /^(own |vessel )?call sign$/i, field: 'callSign',
    entered: ({ identity }, { kind }) => (sendsIdentity.has(kind) ? identity.callSign : null),
    differs: (set, entered) => set.replace(/\s/g, '').toUpperCase() !== entered.replace(/\s/g, '').toUpperCase(),
  },
]
/** Devices take offsets in steps of 0.1 m or of 0.1 ft. */
const offsetToleranceM = 0.05

export const contradictions = (vessel: Vessel, item: Equipment, settings: readonly Setting[]): readonly Contradiction[] =>
  settings.flatMap(({ name, value }) => meanings.flatMap(({ named, field, entered, differs }) => {
    const recorded = named.test(name.trim()) ? entered(vessel, item) : null
    return recorded !== null && differs(value, recorded, item) ? [{ field, name, set: value, entered: recorded }] : []
  }))
