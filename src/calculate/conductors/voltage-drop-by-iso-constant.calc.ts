import type { Citation } from '../../references/bibliography.js'
import type { Method } from '../method.js'

export type IsoDropInput = Readonly<{ currentA: number; conductorLengthM: number; crossSectionMm2: number }>
export type IsoDropOutput = Readonly<{ voltageDropV: number }>

/** Ω·mm²/m. Below the 0.01724 of copper at 20 °C: the standard's figure, not physics. */
export const isoConstantOhmMm2PerM = 0.0164
export const isoConstantCitation: Citation = { source: 'iso-13297', place: 'annex A, voltage drop' }

/**
 * Voltage drop by the constant of the small-craft standard.
 *
 * Formula   E = 0.0164 · I · L / S
 * Units     I [A], L conductor length out and back [m], S [mm²]; E [V]
 * Source    iso-13297
 * Assumes   the constant, which is 4.9 % below the resistivity of copper at 20 °C
 */
export function voltageDropByIsoConstant(q: IsoDropInput): IsoDropOutput {
  return { voltageDropV: (isoConstantOhmMm2PerM * q.currentA * q.conductorLengthM) / q.crossSectionMm2 }
}

export const voltageDropByIsoConstantMethod: Method<IsoDropInput, IsoDropOutput> = {
  id: 'voltage-drop-by-iso-constant',
  title: 'Voltage drop by the constant of ISO 13297',
  formula: String.raw`E = \frac{0.0164\,I\,L}{S}`,
  symbols: { currentA: 'I', conductorLengthM: 'L', crossSectionMm2: 'S', voltageDropV: 'E' },
  citations: [isoConstantCitation],
  assumes: [
    'L is the length of conductor out and back.',
    'The constant corresponds to copper at 7.6 °C, so it understates the drop by about 5 % at 20 °C and more when warm.',
    'Terminals, fuses and switches are left out.',
  ],
  compute: voltageDropByIsoConstant,
  notApplicable: q => (q.crossSectionMm2 > 0 ? null : 'the cross-section is not above zero'),
  checks: [
    {
      origin: 'published', place: 'boat owner’s worked figure: 1.6 A, 22 m out and back, 1.5 mm², given as 0.38 V',
      input: { currentA: 1.6, conductorLengthM: 22, crossSectionMm2: 1.5 }, expected: { voltageDropV: 0.38 }, tolerance: 0.005,
    },
    {
      origin: 'by hand', place: '0.0164 · 1.6 · 22 / 1.5 = 0.57728 / 1.5',
      input: { currentA: 1.6, conductorLengthM: 22, crossSectionMm2: 1.5 }, expected: { voltageDropV: 0.3848533 }, tolerance: 1e-7,
    },
  ],
}
