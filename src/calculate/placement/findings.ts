/** Findings (PLC): placement: compasses, transducers, navigation lights, radar, mass and moments. */
import type { AnyFindingKind, Facts, FindingKind } from '../../findings/finding.js'
import type { Quantities } from '../../units/quantity.js'
import { say, sayAgainst, sayAgainstBoth, sayBoth } from '../../units/format.js'

const since = '0.1.0'
const retired = null

/** The first quantity of the evidence and its limit, told apart. */
function against<E extends Quantities>({ evidence, limit }: Facts<E>): { readonly actual: string; readonly limit: string } {
  const [name, value] = Object.entries(evidence)[0]!
  return name.endsWith('M') ? sayAgainstBoth(name, value, limit!.value) : sayAgainst(name, value, limit!.value)
}

export const compassDistanceShort: FindingKind<{ distanceM: number }> = {
  id: 'PLC101', name: 'compass-distance-short', since, retired, severity: 'error',
  meaning: 'An item stands closer to a compass or heading sensor than the compass safe distance that its maker declares, and turns it by more than is permitted.',
  message: facts => {
    const { actual, limit } = against(facts)
    const { subject, context } = facts
    return `Item ${subject.id}: ${actual} from the ${context?.['compassClass']} ${context?.['compass']}, declared distance ${limit}${context?.['others'] === undefined ? '' : `; too close to ${context['others']} as well`}`
  },
  remedy: () => 'Move it or the compass; then swing the compass and record the deviation with the item off and on.',
}

export const depthOffsetSign: FindingKind<{ offsetM: number }> = {
  id: 'PLC102', name: 'depth-offset-sign', since, retired, severity: 'error',
  meaning: 'The depth offset that is set has a sign that does not fit what is said to be read with it: positive counts up to the waterline, negative down to the keel.',
  message: ({ subject, evidence, context }) =>
    `Transducer ${subject.id}: depth ${context?.['reads']} is read with an offset of ${signed(evidence.offsetM)}, which has the wrong sign${context?.['effect'] ?? ''}`,
  remedy: () => 'Set the offset with the right sign and check it against a lead line, or correct what is said to be read.',
}
const signed = (offsetM: number): string => `${offsetM > 0 ? '+' : offsetM < 0 ? '−' : ''}${sayBoth('offsetM', Math.abs(offsetM))}`

export const depthShownTooDeep: FindingKind<{ depthErrorM: number }> = {
  id: 'PLC103', name: 'depth-shown-too-deep', since, retired, severity: 'error',
  meaning: 'With the depth offset that is set, more water is shown than there is. The boat can take the ground while the display still shows depth.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Transducer ${facts.subject.id}: depth ${facts.context?.['reads']} is shown ${actual} too deep, tolerance ${limit}; set ${facts.context?.['set']}, expected ${facts.context?.['expected']}`
  },
  remedy: ({ context }) => `Set the offset to ${context?.['expected']} and check it against a lead line, or correct position and draught.`,
}

export const lightMissing: FindingKind<{ recordedCount: number }> = {
  id: 'PLC104', name: 'navigation-light-missing', since, retired, severity: 'error',
  meaning: 'A navigation light that a vessel of this length and propulsion must have is not among those recorded.',
  message: ({ context }) => `No ${context?.['what']} is recorded for use ${context?.['when']}, vessel of ${context?.['length']}`,
  remedy: () => 'Fit the light, or record the one that is there; ask the flag state where she is exempt.',
}

export const lightRangeShort: FindingKind<{ rangeNmi: number }> = {
  id: 'PLC105', name: 'navigation-light-range-short', since, retired, severity: 'error',
  meaning: 'A navigation light is made for a shorter range of visibility than the length of the vessel asks for.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Light ${facts.subject.id}: range ${actual}, a vessel of ${facts.context?.['length']} needs ${limit}`
  },
  remedy: () => 'Replace it by a light of the required range that the flag state approves.',
}

export const lightTooWeak: FindingKind<{ intensityCd: number }> = {
  id: 'PLC106', name: 'navigation-light-too-weak', since, retired, severity: 'error',
  meaning: 'The luminous intensity that its maker states for a navigation light is less than the required range takes.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Light ${facts.subject.id}: intensity ${actual}, a range of ${facts.context?.['range']} takes ${limit}`
  },
  remedy: () => 'Replace it by a light of the required intensity that the flag state approves, or correct the intensity recorded.',
}

export const lightArcDiffers: FindingKind<{ arcDeg: number; ruleArcDeg: number }> = {
  id: 'PLC107', name: 'navigation-light-arc-differs', since, retired, severity: 'error',
  meaning: 'A navigation light shows over another arc than its kind must.',
  message: ({ subject, evidence, context }) => `Light ${subject.id}: shows over ${say('arcDeg', evidence.arcDeg)}, a ${context?.['kind']} shows over ${say('ruleArcDeg', evidence.ruleArcDeg)}`,
  remedy: () => 'Replace it by a light of the right kind, or correct the kind or the arc recorded.',
}

export const lightTooLow: FindingKind<{ heightM: number }> = {
  id: 'PLC108', name: 'navigation-light-too-low', since, retired, severity: 'warning',
  meaning: 'A masthead light is not as high above hull, gunwale or sidelights as annex I of the collision regulations asks for.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Light ${facts.subject.id}: ${actual} ${facts.context?.['above']}, at least ${limit} asked for`
  },
  remedy: () => 'Move it higher, or confirm the positions and the height of the gunwale.',
}

export const sidelightTooHigh: FindingKind<{ heightM: number }> = {
  id: 'PLC109', name: 'sidelight-too-high', since, retired, severity: 'warning',
  meaning: 'A sidelight stands too close in height to the masthead light: their difference shows others how the vessel heads and heels.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Light ${facts.subject.id}: ${actual} above the gunwale, at most ${limit}, three quarters of the masthead light’s`
  },
  remedy: () => 'Move the sidelight lower or the masthead light higher, or confirm their positions.',
}

export const sidelightOnWrongSide: FindingKind<{ toPortM: number }> = {
  id: 'PLC110', name: 'sidelight-on-wrong-side', since, retired, severity: 'error',
  meaning: 'A sidelight stands on the side of the other, or on the centreline, by the positions recorded.',
  message: ({ subject, evidence, context }) => `Light ${subject.id}: the ${context?.['kind']} stands ${evidence.toPortM === 0 ? 'on the centreline' : `${sayBoth('toPortM', Math.abs(evidence.toPortM))} to ${evidence.toPortM > 0 ? 'port' : 'starboard'}`}`,
  remedy: () => 'Correct its position, which counts to port, or move the light to its side.',
}

export const lightObscured: FindingKind<{ obscuredDeg: number }> = {
  id: 'PLC111', name: 'navigation-light-obscured', since, retired, severity: 'warning',
  meaning: 'A structure hides a navigation light over part of the sector in which it must be seen.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Light ${facts.subject.id}: hidden over ${actual} of its sector by ${facts.context?.['by']}, at most ${limit}`
  },
  remedy: () => 'Move the light clear of it, or fit a second one; an anchor light is to stand as high as practicable.',
}

export const lightPlacedWrong: FindingKind<{ distanceM: number }> = {
  id: 'PLC112', name: 'navigation-light-placed-wrong', since, retired, severity: 'warning',
  meaning: 'Navigation lights stand fore and aft of one another, or of the middle of the vessel, other than annex I of the collision regulations asks for.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Light ${facts.subject.id}: ${actual} ${facts.context?.['place']}, ${facts.limit!.relation} ${limit} asked for`
  },
  remedy: () => 'Move the light, or confirm the positions and the length of the vessel.',
}

export const heelAboveUsual: FindingKind<{ heelDeg: number }> = {
  id: 'PLC113', name: 'heel-above-usual', since, retired, severity: 'warning',
  meaning: 'The moments of what was fitted heel the vessel by more than is left without being trimmed out.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Vessel ${facts.subject.id}: what was fitted heels her by ${actual} to ${facts.context?.['side']}, usual is up to ${limit}`
  },
  remedy: () => 'Move heavy items across, or have the stability looked at by a naval architect.',
}

export const depthShownTooShallow: FindingKind<{ depthErrorM: number }> = {
  id: 'PLC301', name: 'depth-shown-too-shallow', since, retired, severity: 'note',
  meaning: 'With the depth offset that is set, less water is shown than there is. Some set it so on purpose, as a reserve.',
  message: facts => {
    const { actual, limit } = against(facts)
    return `Transducer ${facts.subject.id}: depth ${facts.context?.['reads']} is shown ${actual} too shallow, tolerance ${limit}; set ${facts.context?.['set']}, expected ${facts.context?.['expected']}`
  },
  remedy: ({ context }) => `Set the offset to ${context?.['expected']}, or record that the difference is a reserve.`,
}

export const frequenciesClose: FindingKind<{ frequencyKHz: number; otherFrequencyKHz: number }> = {
  id: 'PLC302', name: 'transducer-frequencies-close', since, retired, severity: 'note',
  meaning: 'Two transducers work at nearly the same frequency. When they run together each can show the other’s sound as an echo.',
  message: ({ subject, evidence, context }) => `Transducer ${subject.id}: works at ${say('frequencyKHz', evidence.frequencyKHz)}, ${context?.['other']} at ${say('otherFrequencyKHz', evidence.otherFrequencyKHz)}`,
  remedy: () => 'Set one to another frequency, run one at a time, or have one triggered by the other.',
}

export const singleConductorsNearCompass: FindingKind<{ cableCount: number }> = {
  id: 'PLC303', name: 'single-conductors-near-compass', since, retired, severity: 'note',
  meaning: 'Single conductors of direct current run in the zone of a compass. Within 5 m of it a conductor and its way back belong side by side, so that their fields cancel.',
  message: ({ subject, context }) => `Compass ${subject.id}: single d.c. conductors in its zone: ${context?.['cables']}${context?.['others'] === undefined ? '' : `; the same beside ${context['others']}`}`,
  remedy: () => 'Check that each runs together with its way back within 5 m of the compass.',
}

export const radarBlindAhead: FindingKind<{ blindSectorDeg: number }> = {
  id: 'PLC304', name: 'radar-blind-ahead', since, retired, severity: 'warning',
  meaning: 'A structure stands in the beam of the radar scanner right ahead, so that a vessel dead ahead may not be seen.',
  message: ({ subject, evidence, context }) => `Radar ${subject.id}: ${context?.['by']} stands in its beam right ahead, over ${say('blindSectorDeg', evidence.blindSectorDeg)}`,
  remedy: () => 'Move the scanner higher or off the centreline, and mark the blind sector at the display.',
}

export const findingKinds: readonly AnyFindingKind[] = [
  compassDistanceShort, depthOffsetSign, depthShownTooDeep, lightMissing, lightRangeShort, lightTooWeak, lightArcDiffers, lightTooLow, sidelightTooHigh,
  sidelightOnWrongSide, lightObscured, lightPlacedWrong, heelAboveUsual, depthShownTooShallow, frequenciesClose, singleConductorsNearCompass, radarBlindAhead,
]
