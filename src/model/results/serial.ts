/** Serial links: who talks to whom, at which rate, and how much of the line is in use. */
import type { Finding } from '../../findings/finding.js'
import type { Comparison, Computed, Outcome } from '../results.js'
import type { CableEnd, SerialWire, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface SerialResults {
  /** Those whose talker is not removed. */
  readonly byLink: ReadonlyMap<Tag, SerialLine>
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export interface SerialLine {
  /** Without those that are removed. */
  readonly listeners: readonly CableEnd[]
  readonly sentences: readonly SentenceUse[]
  readonly sentencesFrom: 'recorded' | 'forwarded' | 'nothing'
  /** Of the sentences that are known; the line is not assessed as a whole while something is missing. */
  readonly use: Outcome<{ charactersPerS: number; baudRateBaud: number }, { lineUsePercent: number }>
  /** Why more may be on the line than is known, one reason each. */
  readonly missing: readonly string[]
  /** Against what a line is planned for. Null while something is missing, unless the limit is passed all the same. */
  readonly planned: Comparison | null
  /** How often a sentence of the greatest length still fits; null where the line is not assessed as a whole. */
  readonly room: Outcome<Readonly<{ planPercent: number; baudRateBaud: number; charactersPerS: number; lengthCharacterCount: number }>, { morePerS: number }> | null
  readonly drive: SignalDrive | null
  readonly wiring: readonly ListenerWires[]
  /** Wires that end at no listener, for example from the talker to a terminal block. */
  readonly otherWires: readonly SerialWire[]
}

/** One sentence of the line; `from` says where a figure is taken from. */
export interface SentenceUse {
  readonly formatter: string
  readonly lengthCharacterCount: number | null
  readonly lengthFrom: FigureFrom
  readonly ratePerS: number | null
  readonly rateFrom: FigureFrom
  /** The link by which a multiplexer gets it; null where the talker sends it of itself. */
  readonly fromLinkTag: Tag | null
  readonly time: Outcome<
    Readonly<{ lengthCharacterCount: number; ratePerS: number; baudRateBaud: number }>, Readonly<{ lineTimeMs: number; charactersPerS: number }>
  >
}
export type FigureFrom = 'recorded' | 'usual' | 'nowhere'

/** What the talker's output drives, all links on the same connector together. Null for links of other standards without recorded currents. */
export interface SignalDrive {
  readonly driveFrom: 'recorded' | 'standard'
  readonly listeners: readonly { readonly end: CableEnd; readonly currentMilliA: number; readonly from: 'recorded' | 'standard' }[]
  readonly reserve: Computed<Readonly<{ driveCurrentMilliA: number; drawnCurrentMilliA: number; listenerCurrentMilliA: number }>, { moreListenersCount: number }>
  readonly comparison: Comparison
}

export interface ListenerWires {
  readonly listener: CableEnd
  readonly wires: readonly SerialWire[]
  /** Of A and B, those by which no wire leads from the talker to it. */
  readonly missingSignals: readonly ('A' | 'B')[]
}
