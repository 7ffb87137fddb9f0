/** What transmits, and coaxial cable → records of the vessel. */
import type { Coax, Radar, Transmitter } from '../../model/vessel.js'
import type { Entry } from '../schema/kinds.js'

export const transmitterOf = ({ service, port, power, frequency, duty }: NonNullable<Entry<'equipment'>['transmitters']>[number]): Transmitter =>
  ({ service, terminal: port ?? null, powerW: power, frequencyMHz: frequency, dutyPercent: duty ?? null })

export const radarOf = (radar: NonNullable<Entry<'equipment'>['radar']>): Radar => ({
  frequencyMHz: radar.frequency ?? null, peakPowerW: radar['peak-power'] ?? null, pulseUs: radar.pulse ?? null, repetitionHz: radar.repetition ?? null,
  meanPowerW: radar['mean-power'] ?? null, gainDbi: radar.gain ?? null, horizontalBeamDeg: radar['horizontal-beam'] ?? null,
  verticalBeamDeg: radar['vertical-beam'] ?? null, safeDistanceM: radar['safe-distance'] ?? null,
})

export const coaxOf = ({ coax, attenuation }: Entry<'cable-types'>): Coax | null => (coax === undefined && attenuation === undefined ? null : {
  kind: coax ?? null,
  attenuation: (attenuation ?? []).map(({ frequency, loss }) => ({ frequencyMHz: frequency, lossDbPer100M: loss })).toSorted((a, b) => a.frequencyMHz - b.frequencyMHz),
})
