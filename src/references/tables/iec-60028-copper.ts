/** Constants of annealed copper at 20 °C (iec-60028). */
import type { Citation } from '../bibliography.js'

export const copperCitation: Citation = { source: 'iec-60028', place: 'conductivity and temperature coefficient at 20 °C' }

/** 1/58 Ω·mm²/m: the resistivity of 100 % conductivity, 58.0 MS/m. */
export const resistivityAt20COhmMm2PerM = 1 / 58
export const temperatureCoefficientPerK = 0.00393
