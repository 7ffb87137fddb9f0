/** How much of a bus is in use, and which of its devices cannot be told apart by what they send. */
import { inWords } from '../../findings/words.js'
import type { AlikeSenders, Backbone, BusLoad, DeviceLoad, MessageLoad } from '../../model/results/can-bus.js'
import type { CanBus, Tag } from '../../model/vessel.js'
import { networkManagementPgns, parameterGroups } from '../../references/tables/can-parameter-groups.js'
import { bitRateBitPerS, plannedLoadLimit } from '../../references/tables/can-rules.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { devicesOf } from './backbone.js'
import { busLoadMethod } from './bus-load.calc.js'
import type { Traffic } from './messages.js'

export function busLoadOf(bus: CanBus, backbone: Backbone, { messages, missing }: Traffic): BusLoad {
  const devices = byDevice(messages)
  const sum = (key: 'nominalBitPerS' | 'worstBitPerS'): number => devices.reduce((total, device) => total + device[key], 0)
  const silentTags = [...new Set(devicesOf(backbone).filter(({ sends }) => sends.length === 0).map(({ tag }) => tag))]
  const total = runMethod(busLoadMethod, { nominalBitPerS: sum('nominalBitPerS'), worstBitPerS: sum('worstBitPerS'), capacityBitPerS: bitRateBitPerS })
  const unknown = messages.filter(({ rate, load }) => rate !== 'on event' && load.status === 'not computed')
  return {
    messages, devices, total, silentTags,
    comparison: compare('worstLoadPercent', total.status === 'computed' ? total.output.worstLoadPercent : 0, plannedLoadLimit),
    missing: [
      ...missing,
      ...unknown.map(({ senderTag, load }) => `message of ${senderTag}: ${load.status === 'not computed' ? load.reason : ''}`),
      ...(silentTags.length === 0 ? [] : [`what ${inWords(silentTags)} ${silentTags.length === 1 ? 'sends' : 'send'} is not recorded, so the load of ${bus.tag} is the least that it can be`]),
    ],
  }
}

function byDevice(messages: readonly MessageLoad[]): readonly DeviceLoad[] {
  const devices = new Map<string, DeviceLoad>()
  for (const { senderTag, throughTags, load } of messages) {
    const key = [senderTag, ...throughTags].join('\n')
    const known = devices.get(key) ?? { tag: senderTag, throughTags, framesPerS: 0, nominalBitPerS: 0, worstBitPerS: 0 }
    const { framesPerS, nominalBitPerS, worstBitPerS } = load.status === 'computed' ? load.output : { framesPerS: 0, nominalBitPerS: 0, worstBitPerS: 0 }
    devices.set(key, { ...known, framesPerS: known.framesPerS + framesPerS, nominalBitPerS: known.nominalBitPerS + nominalBitPerS, worstBitPerS: known.worstBitPerS + worstBitPerS })
  }
  return [...devices.values()]
}

/** Pairs of devices with the groups that both send under one instance. On an engine bus the address alone tells one engine from the other. */
export function alikeSenders({ protocol }: CanBus, messages: readonly MessageLoad[]): readonly AlikeSenders[] {
  if (protocol === 'j1939') return []
  const counted = messages.filter(({ pgnNumber }) => !networkManagementPgns.has(pgnNumber))
  const pairs = new Map<string, AlikeSenders>()
  counted.forEach((one, i) => {
    for (const other of counted.slice(i + 1)) {
      if (one.senderTag === other.senderTag || one.pgnNumber !== other.pgnNumber) continue
      const inData = parameterGroups.get(one.pgnNumber)?.hasInstance ?? false
      const instanceNumber = sharedInstance(one, other, inData)
      if (instanceNumber === null) continue
      const tags: readonly [Tag, Tag] = [one.senderTag, other.senderTag]
      const key = [...tags.toSorted(), inData].join('\n')
      const known = pairs.get(key)
      if (known === undefined) pairs.set(key, { tags, instanceNumber, pgnNumbers: [one.pgnNumber], inData })
      else if (!known.pgnNumbers.includes(one.pgnNumber)) pairs.set(key, { ...known, pgnNumbers: [...known.pgnNumbers, one.pgnNumber] })
    }
  })
  return [...pairs.values()]
}

/** One message for each of several engines counts its instances up. */
function sharedInstance(one: MessageLoad, other: MessageLoad, inData: boolean): number | null {
  const last = ({ instanceNumber, timesCount }: MessageLoad) => instanceNumber + (inData ? timesCount - 1 : 0)
  const first = Math.max(one.instanceNumber, other.instanceNumber)
  return first <= Math.min(last(one), last(other)) ? first : null
}
