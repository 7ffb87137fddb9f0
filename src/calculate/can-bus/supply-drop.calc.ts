import { busCableCitation, lenCitation } from '../../references/tables/can-rules.js'
import type { Method } from '../method.js'

export type LenCurrentInput = Readonly<{ loadEquivalencyNumber: number }>
export type LenCurrentOutput = Readonly<{ currentA: number }>

/**
 * Current that a load equivalency number stands for.
 *
 * Formula   I = 0.05 N
 * Units     N; I [A]
 * Source    bus-cable-guides
 */
export function lenCurrent({ loadEquivalencyNumber }: LenCurrentInput): LenCurrentOutput {
  return { currentA: 0.05 * loadEquivalencyNumber }
}

export const lenCurrentMethod: Method<LenCurrentInput, LenCurrentOutput> = {
  id: 'len-current',
  title: 'Current of a load equivalency number',
  formula: String.raw`I = 0.05\,N`,
  symbols: { loadEquivalencyNumber: 'N', currentA: 'I' },
  citations: [lenCitation],
  assumes: ['It is the most that the device takes from the bus.'],
  compute: lenCurrent,
  notApplicable: q => (q.loadEquivalencyNumber >= 0 ? null : 'the load equivalency number is below zero'),
  checks: [
    { origin: 'published', place: 'makers’ guides: 20 LEN are 1 A', input: { loadEquivalencyNumber: 20 }, expected: { currentA: 1 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '60 · 0.05', input: { loadEquivalencyNumber: 60 }, expected: { currentA: 3 }, tolerance: 1e-9 },
  ],
}

export type CurrentLenInput = Readonly<{ currentA: number }>
export type CurrentLenOutput = Readonly<{ loadEquivalencyNumber: number }>

/**
 * Load equivalency number of a device that has only a current: units of 50 mA, rounded up.
 *
 * Formula   N = ⌈I / 0.05⌉
 * Units     I [A]; N
 * Source    bus-cable-guides
 */
export function lenOfCurrent({ currentA }: CurrentLenInput): CurrentLenOutput {
  // In binary 0.15 / 0.05 is a little above 3.
  return { loadEquivalencyNumber: Math.ceil(Number((currentA / 0.05).toPrecision(12))) }
}

export const lenOfCurrentMethod: Method<CurrentLenInput, CurrentLenOutput> = {
  id: 'len-of-current',
  title: 'Load equivalency number of a current',
  formula: String.raw`N = \left\lceil \frac{I}{0.05} \right\rceil`,
  symbols: { currentA: 'I', loadEquivalencyNumber: 'N' },
  citations: [lenCitation],
  assumes: ['All of its current comes from the bus: it has no circuit of its own.'],
  compute: lenOfCurrent,
  notApplicable: q => (q.currentA >= 0 ? null : 'the current is below zero'),
  checks: [
    { origin: 'published', place: 'a maker’s guide: 151 mA is LEN 4', input: { currentA: 0.151 }, expected: { loadEquivalencyNumber: 4 }, tolerance: 0 },
    { origin: 'by hand', place: '150 mA: three units of 50 mA', input: { currentA: 0.15 }, expected: { loadEquivalencyNumber: 3 }, tolerance: 0 },
  ],
}

export type StretchDropInput = Readonly<{ resistanceOhmPerM: number; lengthM: number; currentA: number }>
export type StretchDropOutput = Readonly<{ voltageDropV: number }>

/**
 * Voltage that a stretch of the backbone, or a drop, loses out and back.
 *
 * Formula   ΔU = 2 R′ l I
 * Units     R′ of one conductor of the supply pair [Ω/m], l [m], I of all that lies beyond [A]; ΔU [V]
 * Source    circuit-theory; bus-cable-guides for R′
 */
export function stretchDrop(q: StretchDropInput): StretchDropOutput {
  return { voltageDropV: 2 * q.resistanceOhmPerM * q.lengthM * q.currentA }
}

export const stretchDropMethod: Method<StretchDropInput, StretchDropOutput> = {
  id: 'bus-stretch-drop',
  title: 'Voltage drop of a stretch of bus cable',
  formula: String.raw`\Delta U = 2\,R'\,l\,I`,
  symbols: { resistanceOhmPerM: "R'", lengthM: 'l', currentA: 'I', voltageDropV: String.raw`\Delta U` },
  citations: [{ source: 'circuit-theory', place: 'Ohm’s law, both conductors' }, busCableCitation],
  assumes: ['Copper at 20 °C; connectors and tees are left out.', 'Every device takes its whole load equivalency number at once.'],
  compute: stretchDrop,
  notApplicable: q => (q.resistanceOhmPerM > 0 && q.lengthM >= 0 ? null : 'the resistance of the cable is not above zero'),
  checks: [
    { origin: 'by hand', place: 'light cable, 4 LEN at each of 10, 20 and 30 m, first 10 m: 2 · 0.057 · 10 · 0.6', input: { resistanceOhmPerM: 0.057, lengthM: 10, currentA: 0.6 }, expected: { voltageDropV: 0.684 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'the next 10 m: 2 · 0.057 · 10 · 0.4', input: { resistanceOhmPerM: 0.057, lengthM: 10, currentA: 0.4 }, expected: { voltageDropV: 0.456 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'the last 10 m: 2 · 0.057 · 10 · 0.2; the three together are 1.368 V', input: { resistanceOhmPerM: 0.057, lengthM: 10, currentA: 0.2 }, expected: { voltageDropV: 0.228 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '3 A over 40 m of mid cable: 2 · 0.0132 · 40 · 3', input: { resistanceOhmPerM: 0.0132, lengthM: 40, currentA: 3 }, expected: { voltageDropV: 3.168 }, tolerance: 1e-9 },
  ],
}

export type LumpedDropInput = Readonly<{ loadEquivalencyNumber: number; lengthM: number; resistanceOhmPerM: number }>
export type LumpedDropOutput = Readonly<{ voltageDropV: number }>

/**
 * The sum of the installation guides: all load at the far end. More than what really is lost, and quick to redo.
 *
 * Formula   ΔU = 0.1 N l R′
 * Units     N sum of the load equivalency numbers, l from the insertion to the far end [m], R′ of one conductor [Ω/m]; ΔU [V]
 * Source    bus-cable-guides
 */
export function lumpedDrop(q: LumpedDropInput): LumpedDropOutput {
  return { voltageDropV: 0.1 * q.loadEquivalencyNumber * q.lengthM * q.resistanceOhmPerM }
}

const lumped = (place: string, loadEquivalencyNumber: number, lengthM: number, resistanceOhmPerM: number, voltageDropV: number) =>
  ({ origin: 'published', place, input: { loadEquivalencyNumber, lengthM, resistanceOhmPerM }, expected: { voltageDropV }, tolerance: 1e-9 }) as const

export const lumpedDropMethod: Method<LumpedDropInput, LumpedDropOutput> = {
  id: 'bus-drop-guides',
  title: 'Voltage drop of a backbone by the guides',
  formula: String.raw`\Delta U = 0.1\,N\,l\,R'`,
  symbols: { loadEquivalencyNumber: 'N', lengthM: 'l', resistanceOhmPerM: "R'", voltageDropV: String.raw`\Delta U` },
  citations: [{ source: 'bus-cable-guides', place: '0.1 · LEN · length · resistance' }],
  assumes: ['All devices hang at the far end.', '0.1 is 0.05 A a unit times two conductors.', 'Of several kinds of cable the one with the greatest resistance counts.'],
  compute: lumpedDrop,
  notApplicable: q => (q.resistanceOhmPerM > 0 && q.lengthM >= 0 ? null : 'the resistance of the cable is not above zero'),
  checks: [
    lumped('formula of the guides: 8 LEN, 20 m of light cable', 8, 20, 0.057, 0.912),
    lumped('the same: 20 LEN, 20 m', 20, 20, 0.057, 2.28),
    lumped('the same: 20 LEN, 30 m', 20, 30, 0.057, 3.42),
    lumped('the same: 12 LEN, 30 m', 12, 30, 0.057, 2.052),
    lumped('the same: 60 LEN, 40 m of mid cable', 60, 40, 0.0132, 3.168),
  ],
}
