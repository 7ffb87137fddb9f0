import { scaledRangeMHz } from '../../references/tables/coax-attenuation.js'
import type { Method } from '../method.js'

export type AttenuationByRootInput = Readonly<{ statedAttenuationDbPer100M: number; statedFrequencyMHz: number; frequencyMHz: number }>
export type AttenuationByRootOutput = Readonly<{ attenuationDbPer100M: number }>

/**
 * Attenuation of a coaxial cable at a frequency, from its attenuation at another.
 *
 * Formula   a = a_0 · √(f / f_0)
 * Units     a_0 known [dB/100 m] at f_0 [MHz], f [MHz]; a [dB/100 m]
 * Source    radio-theory for the root; coax-tables for the values at 150 MHz
 * Assumes   the loss is in the conductors' skin; that in the insulation is left out
 * Errors    none below 30 MHz and above 500 MHz, where that no longer holds
 */
export function attenuationByRoot(q: AttenuationByRootInput): AttenuationByRootOutput {
  return { attenuationDbPer100M: q.statedAttenuationDbPer100M * Math.sqrt(q.frequencyMHz / q.statedFrequencyMHz) }
}

const inRange = (frequencyMHz: number): boolean => frequencyMHz >= scaledRangeMHz.fromMHz && frequencyMHz <= scaledRangeMHz.toMHz

/** dB/100 ft at 150 MHz as printed, and what the same tables come to per 100 m at 160 MHz. */
const rows = [['RG-58 C/U', 6.1, 20.67], ['RG-8X', 4.7, 15.93], ['low-loss, 6 mm', 3.0, 10.17], ['RG-213/U', 2.7, 9.15], ['RG-8 foam', 2.2, 7.45], ['low-loss, 10 mm', 1.5, 5.08], ['low-loss, 15 mm', 1.0, 3.39]] as const

export const attenuationByRootMethod: Method<AttenuationByRootInput, AttenuationByRootOutput> = {
  id: 'coax-attenuation-by-root',
  title: 'Attenuation of a coaxial cable at another frequency',
  formula: String.raw`a = a_0\sqrt{f / f_0}`,
  symbols: { statedAttenuationDbPer100M: 'a_0', statedFrequencyMHz: 'f_0', frequencyMHz: 'f', attenuationDbPer100M: 'a' },
  citations: [{ source: 'radio-theory', place: 'skin effect' }, { source: 'coax-tables', place: 'attenuation at 150 MHz' }],
  assumes: ['The loss is in the skin of the conductors, which holds well enough from 30 to 500 MHz; that in the insulation is left out.', 'The cable is dry and new.'],
  compute: attenuationByRoot,
  notApplicable: q => (inRange(q.frequencyMHz) && inRange(q.statedFrequencyMHz)
    ? null : `attenuation by the root of the frequency holds from ${scaledRangeMHz.fromMHz} to ${scaledRangeMHz.toMHz} MHz, and ${inRange(q.frequencyMHz) ? q.statedFrequencyMHz : q.frequencyMHz} MHz is outside`),
  checks: rows.map(([kind, per100Ft, expected]) => ({
    origin: 'by hand', place: `${kind}, ${per100Ft} dB/100 ft at 150 MHz: ${per100Ft} / 0.3048 · √(160/150) = ${per100Ft} · 3.28084 · 1.03280`,
    input: { statedAttenuationDbPer100M: per100Ft / 0.3048, statedFrequencyMHz: 150, frequencyMHz: 160 }, expected: { attenuationDbPer100M: expected }, tolerance: 0.006,
  })),
}
