/** What is recorded of an item that sends, radiates or lies on the way to an antenna, as facts on its page. */
import type { Antenna, Equipment, Radar, Transmitter } from '../../../model/vessel.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { joined } from '../../text.js'
import type { Text } from '../../view-model.js'

interface Fact { readonly label: string; readonly value: Text }

const fact = (label: string, parts: readonly (string | null)[]): readonly Fact[] => {
  const there = parts.filter(part => part !== null)
  return there.length === 0 ? [] : [{ label, value: [there.join(', ')] }]
}
const quantity = (name: string, value: number | null, after = ''): string | null => (value === null ? null : sayForWorking(name, value) + after)

export const radioFacts = (context: ViewContext, { transmitters, antenna, radar, portLosses }: Equipment): readonly Fact[] => [
  ...(transmitters.length === 0 ? [] : [{ label: 'Sends', value: joined(transmitters.map(transmitter => [sendsText(transmitter)]), { is: 'break' }) }]),
  ...(antenna === null ? [] : fact('Antenna', antennaParts(context, antenna))),
  ...(radar === null ? [] : radarFacts(context, radar)),
  ...(portLosses.length === 0 ? [] : fact('Loss between connectors', portLosses.map(({ fromTerminal, toTerminal, lossDb }) => `${fromTerminal} and ${toTerminal} ${say('lossDb', lossDb)}`))),
]

const sendsText = ({ service, powerW, frequencyMHz, dutyPercent, terminal }: Transmitter): string =>
  [`${service} ${sayForWorking('powerW', powerW)}`, sayForWorking('frequencyMHz', frequencyMHz), quantity('dutyPercent', dutyPercent, ' of the time'), terminal === null ? 'antenna built in' : `at connector ${terminal}`]
    .filter(part => part !== null).join(', ')

function antennaParts({ vessel }: ViewContext, { gainDbi, fromMHz, toMHz, lengthM, vswrFactor, clearanceM }: Antenna): readonly (string | null)[] {
  const [from, to] = [fromMHz, toMHz].map(value => (value === null ? '–' : sayForWorking('frequencyMHz', value)))
  return [
    quantity('gainDbi', gainDbi, ' gain'), fromMHz === null && toMHz === null ? null : `${from} to ${to}`,
    lengthM === null ? null : `${say('lengthM', lengthM, vessel)} long above its position`, vswrFactor === null ? null : `standing wave ratio at most ${say('vswrFactor', vswrFactor)}`,
    clearanceM === null ? null : `${say('distanceM', clearanceM, vessel)} from other antennas asked for`,
  ]
}

const radarFacts = ({ vessel }: ViewContext, radar: Radar): readonly Fact[] => [
  ...fact('Radar', [
    quantity('frequencyMHz', radar.frequencyMHz), quantity('powerW', radar.peakPowerW, ' peak'), quantity('pulseUs', radar.pulseUs, ' pulse'), quantity('repetitionHz', radar.repetitionHz, ' repetition'),
    quantity('powerW', radar.meanPowerW, ' mean'), quantity('gainDbi', radar.gainDbi, ' gain'),
  ]),
  ...fact('Its beam', [quantity('beamDeg', radar.horizontalBeamDeg, ' wide'), quantity('beamDeg', radar.verticalBeamDeg, ' high')]),
  ...fact('People keep', [radar.safeDistanceM === null ? null : `${say('distanceM', radar.safeDistanceM, vessel)} by its maker`]),
]
