import { loopResistanceCitation, powerClassCitation, powerClasses, powerTypes } from '../../references/tables/poe-classes.js'
import type { CheckRow, Method } from '../method.js'

export type NetworkPowerInput = Readonly<{ devicePowerW: number; portVoltageV: number; channelLengthM: number; loopResistanceOhmPerM: number; pairSetCount: number }>
export type NetworkPowerOutput = Readonly<{ channelResistanceOhm: number; supplyCurrentA: number; lossPowerW: number; portPowerW: number; deviceVoltageV: number }>

/**
 * Current, loss and power at the port for what a device takes over its network cable. The device takes the same power at
 * whatever voltage arrives, so that the current follows from a quadratic equation; of its two roots the smaller is the one
 * at which the device works.
 *
 * Formula   R = L · r / n,   U · I − R · I² = P,   I = (U − √(U² − 4 · R · P)) / (2 · R),   P_v = R · I²,   P_s = P + P_v,   U_d = U − R · I
 * Units     P at the device [W], U at the port [V], L [m], r of a pair set out and back [Ω/m], n pair sets; R [Ω], I [A], P_v and P_s [W], U_d [V]
 * Source    circuit-theory; r from ieee-802-3
 * Assumes   both pair sets of four pairs carry half of the current
 */
export function networkPower(q: NetworkPowerInput): NetworkPowerOutput {
  const channelResistanceOhm = (q.channelLengthM * q.loopResistanceOhmPerM) / q.pairSetCount
  // The same root without a division by the resistance, which may be zero.
  const supplyCurrentA = (2 * q.devicePowerW) / (q.portVoltageV + Math.sqrt(discriminant(q, channelResistanceOhm)))
  const lossPowerW = channelResistanceOhm * supplyCurrentA ** 2
  return {
    channelResistanceOhm, supplyCurrentA, lossPowerW,
    portPowerW: q.devicePowerW + lossPowerW,
    deviceVoltageV: q.portVoltageV - channelResistanceOhm * supplyCurrentA,
  }
}

const discriminant = ({ portVoltageV, devicePowerW }: NetworkPowerInput, resistanceOhm: number): number =>
  portVoltageV ** 2 - 4 * resistanceOhm * devicePowerW

/** What the table prints is rounded: to tenths of a watt up to class 3, to whole watts above. */
const classRow = ({ classNumber, type, sourcePowerW: portPowerW, devicePowerW, pairCount }: (typeof powerClasses)[number]): CheckRow<NetworkPowerInput, NetworkPowerOutput> => ({
  origin: 'published',
  place: `IEEE 802.3, class ${classNumber}: ${devicePowerW} W at the device after 100 m, at the lowest voltage of type ${type}, are ${portPowerW} W at the port`,
  input: { devicePowerW, portVoltageV: powerTypes[type].sourceMinV, channelLengthM: 100, loopResistanceOhmPerM: powerTypes[type].loopOhmPerM, pairSetCount: pairCount / 2 },
  expected: { portPowerW },
  tolerance: type === 1 ? 0.05 : 0.5,
})

export const networkPowerMethod: Method<NetworkPowerInput, NetworkPowerOutput> = {
  id: 'network-power',
  title: 'Power over a network cable',
  formula: String.raw`R = \frac{L\,r}{n} \qquad U I - R I^2 = P \qquad I = \frac{U - \sqrt{U^2 - 4 R P}}{2 R} \qquad P_v = R I^2 \qquad P_s = P + P_v \qquad U_d = U - R I`,
  symbols: {
    devicePowerW: 'P', portVoltageV: 'U', channelLengthM: 'L', loopResistanceOhmPerM: 'r', pairSetCount: 'n',
    channelResistanceOhm: 'R', supplyCurrentA: 'I', lossPowerW: 'P_v', portPowerW: 'P_s', deviceVoltageV: 'U_d',
  },
  citations: [{ source: 'circuit-theory', place: 'a load of constant power behind a resistance' }, loopResistanceCitation, powerClassCitation],
  assumes: ['The cable is as bad as the standard allows: most are better.', 'Where four pairs carry power, each pair set carries half of the current.'],
  compute: networkPower,
  notApplicable: q => {
    if (!(q.devicePowerW >= 0 && q.portVoltageV > 0 && q.channelLengthM >= 0 && q.loopResistanceOhmPerM >= 0 && q.pairSetCount >= 1)) return 'a power, voltage or length is out of range'
    return discriminant(q, (q.channelLengthM * q.loopResistanceOhmPerM) / q.pairSetCount) < 0 ? 'the cable cannot carry that power at this voltage, whatever the current' : null
  },
  checks: [
    ...powerClasses.map(classRow),
    {
      origin: 'by hand', place: 'camera of class 4, 25.5 W behind 30 m (3.75 Ω) at 50 V: 50 · I − 3.75 · I² = 25.5',
      input: { devicePowerW: 25.5, portVoltageV: 50, channelLengthM: 30, loopResistanceOhmPerM: 0.125, pairSetCount: 1 },
      expected: { channelResistanceOhm: 3.75, supplyCurrentA: 0.5312, lossPowerW: 1.058, portPowerW: 26.56 }, tolerance: 5e-3,
    },
    {
      origin: 'by hand', place: 'type 1: 0.350 A through 20 Ω lose 2.45 W; 15.4 − 2.45 = 12.95 W, at 44 − 7 = 37 V',
      input: { devicePowerW: 12.95, portVoltageV: 44, channelLengthM: 100, loopResistanceOhmPerM: 0.2, pairSetCount: 1 },
      expected: { supplyCurrentA: 0.35, lossPowerW: 2.45, deviceVoltageV: 37 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'type 2: 0.600 A through 12.5 Ω lose 4.50 W; 30 − 4.5 = 25.5 W, at 50 − 7.5 = 42.5 V',
      input: { devicePowerW: 25.5, portVoltageV: 50, channelLengthM: 100, loopResistanceOhmPerM: 0.125, pairSetCount: 1 },
      expected: { supplyCurrentA: 0.6, lossPowerW: 4.5, deviceVoltageV: 42.5 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'type 3, class 6: twice 0.600 A through 12.5 Ω each lose 9.00 W; 60 − 9 = 51 W',
      input: { devicePowerW: 51, portVoltageV: 50, channelLengthM: 100, loopResistanceOhmPerM: 0.125, pairSetCount: 2 },
      expected: { supplyCurrentA: 1.2, lossPowerW: 9, portPowerW: 60 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'type 4, class 8: twice 0.8647 A, from 45 W / 0.8647 A = 52.04 V for each pair set, through 12.5 Ω each lose 18.69 W; 90 − 18.69 = 71.31 W',
      input: { devicePowerW: 71.31, portVoltageV: 45 / 0.8647, channelLengthM: 100, loopResistanceOhmPerM: 0.125, pairSetCount: 2 },
      expected: { supplyCurrentA: 1.7294, lossPowerW: 18.69, portPowerW: 90 }, tolerance: 5e-3,
    },
    {
      origin: 'by hand', place: 'no cable, no loss: 12 W at 48 V are 0.25 A',
      input: { devicePowerW: 12, portVoltageV: 48, channelLengthM: 0, loopResistanceOhmPerM: 0.125, pairSetCount: 1 },
      expected: { supplyCurrentA: 0.25, lossPowerW: 0, portPowerW: 12, deviceVoltageV: 48 }, tolerance: 1e-9,
    },
  ],
}
