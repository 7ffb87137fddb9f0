/** Rules of good practice for protective devices that hold beside every basis, with their sources. */
import type { Citation } from '../bibliography.js'

export const deviceAdvice = {
  /** A device carries a load that runs on and on only when it is rated above it. */
  continuous: { fromH: 3, ratingFactor: 1.25, citation: { source: 'nec-210', place: '210.20(A): device at least 125 % of a continuous load, 3 h or more', standing: 'published' } },
  /** Between fuses of one kind, upstream over downstream. */
  fuseRatio: { ratioFactor: 1.6, citation: { source: 'iec-60269', place: 'gG fuse-links discriminate from a ratio of 1.6 on', standing: 'from memory' } },
  /** Of a motor's running current, on d.c. */
  motor: { ratingFactor: 1.5, citation: { source: 'nec-430', place: '430.52, d.c. motors, fuse or breaker: at most 150 % of the full-load current', standing: 'from memory' } },
  lockedRotor: { durationH: 7, citation: { source: 'abyc-e11', place: 'motors: no fire hazard with the rotor locked for 7 h', standing: 'from memory' } },
  makersFuse: { citation: { source: 'common-practice', place: 'the value that the maker of the equipment asks for overrides the general rule' } },
  /** Thinner conductors are not to be joined in parallel. */
  parallel: { mm2: 50, awg: '1/0', citation: { source: 'nec-430', place: '310.10: parallel conductors of 1/0 AWG (50 mm²) and larger', standing: 'from memory' } },
} as const satisfies Record<string, { readonly citation: Citation; readonly [name: string]: number | string | Citation }>
