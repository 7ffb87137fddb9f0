import type { Method } from '../method.js'

export type CableLossInput = Readonly<{ attenuationDbPer100M: number; cableLengthM: number; connectorCount: number; perConnectorDb: number }>
export type CableLossOutput = Readonly<{ lossDb: number }>

/**
 * What a coaxial cable loses with its connectors.
 *
 * Formula   A = a · l / 100 + n · A_c
 * Units     a [dB/100 m], l length [m], n connectors, A_c of each [dB]; A [dB]
 * Source    radio-theory
 */
export function cableLoss(q: CableLossInput): CableLossOutput {
  return { lossDb: (q.attenuationDbPer100M * q.cableLengthM) / 100 + q.connectorCount * q.perConnectorDb }
}

/** dB/100 m at 160 MHz, then what 10 m and 20 m lose without connectors. */
const rows = [['RG-58 C/U', 20.67, 2.067, 4.134], ['RG-8X', 15.93, 1.593, 3.185], ['low-loss, 6 mm', 10.17, 1.017, 2.033], ['RG-213/U', 9.15, 0.915, 1.83], ['RG-8 foam', 7.45, 0.745, 1.491], ['low-loss, 10 mm', 5.08, 0.508, 1.017], ['low-loss, 15 mm', 3.39, 0.339, 0.678]] as const

export const cableLossMethod: Method<CableLossInput, CableLossOutput> = {
  id: 'coax-cable-loss',
  title: 'Loss of a coaxial cable with its connectors',
  formula: String.raw`A = \frac{a\,l}{100} + n\,A_c`,
  symbols: { attenuationDbPer100M: 'a', cableLengthM: 'l', connectorCount: 'n', perConnectorDb: 'A_c', lossDb: 'A' },
  citations: [{ source: 'radio-theory', place: 'losses in decibels add' }, { source: 'connector-allowance', place: '0.25 dB for each connector' }],
  assumes: ['Each connector takes the allowance of licensing practice, which is on the safe side: well fitted it takes 0.05 to 0.1 dB (common practice).'],
  compute: cableLoss,
  notApplicable: q => (q.attenuationDbPer100M >= 0 && q.cableLengthM >= 0 ? null : 'attenuation or length is below zero'),
  checks: [
    ...rows.flatMap(([kind, attenuationDbPer100M, of10M, of20M]) => ([[10, of10M], [20, of20M]] as const).map(([cableLengthM, lossDb]) => ({
      origin: 'by hand' as const, place: `${kind}, ${cableLengthM} m at 160 MHz without connectors: ${attenuationDbPer100M} · ${cableLengthM} / 100`,
      input: { attenuationDbPer100M, cableLengthM, connectorCount: 0, perConnectorDb: 0.25 }, expected: { lossDb }, tolerance: 0.0015,
    }))),
    {
      origin: 'by hand', place: 'RG-213/U, 10 m, two connectors: 0.915 + 2 · 0.25',
      input: { attenuationDbPer100M: 9.15, cableLengthM: 10, connectorCount: 2, perConnectorDb: 0.25 }, expected: { lossDb: 1.415 }, tolerance: 1e-9,
    },
  ],
}
