/**
 * Attenuation of coaxial cable at 150 MHz by kind. RG numbers are those of the withdrawn MIL-C-17; the low-loss kinds are
 * named by their outside diameter. Published values for one kind spread by some 15 %: a maker's own figure goes first.
 */
import type { Citation } from '../bibliography.js'

export const coaxKinds = ['rg-58', 'rg-8x', 'rg-213', 'rg-8 foam', 'low-loss 6 mm', 'low-loss 10 mm', 'low-loss 15 mm'] as const
export type CoaxKindKey = (typeof coaxKinds)[number]

export const tableFrequencyMHz = 150
/** Within it attenuation goes by the root of the frequency: skin effect decides, loss in the insulation hardly counts. Common practice. */
export const scaledRangeMHz = { fromMHz: 30, toMHz: 500 } as const

/** dB/100 ft as printed. */
export const lossDbPer100FtByKind: Readonly<Record<CoaxKindKey, number>> = {
  'rg-58': 6.1, 'rg-8x': 4.7, 'rg-213': 2.7, 'rg-8 foam': 2.2, 'low-loss 6 mm': 3.0, 'low-loss 10 mm': 1.5, 'low-loss 15 mm': 1.0,
}

export const coaxCitation: Citation = { source: 'coax-tables', place: 'attenuation at 150 MHz' }

/** Of each connector on the way, where nothing else is known. */
export const usualConnector = { lossDb: 0.25, citation: { source: 'connector-allowance', place: '0.25 dB each' } } as const
/** Cables are fitted with one at each end. */
export const usualConnectorCount = 2
