/** What is recorded of an item for its place on board, as facts on its page. */
import type { Equipment } from '../../../model/vessel.js'
import { lightTypes } from '../../../references/tables/navigation-lights.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import type { Text } from '../../view-model.js'

/** What is held against distances to it. */
const classNames = { 'standard': 'standard compass', 'steering': 'steering compass', 'flux-gate': 'flux-gate sensor' } as const

interface Fact { readonly label: string; readonly value: Text }
const fact = (label: string, parts: readonly (string | null)[]): readonly Fact[] => {
  const there = parts.filter(part => part !== null)
  return there.length === 0 ? [] : [{ label, value: [there.join(', ')] }]
}

export function placementFacts({ vessel }: ViewContext, { compassSafeStandardM, compassSafeSteeringM, compassClass, navigationLight, transducer }: Equipment): readonly Fact[] {
  const quantity = (name: string, value: number | null, after = ''): string | null => (value === null ? null : say(name, value, vessel) + after)
  return [
    ...(compassClass === null || compassClass === 'none' ? [] : fact('As a compass', [classNames[compassClass]])),
    ...fact('Compass safe distance', [quantity('distanceM', compassSafeStandardM, ' to a standard compass'), quantity('distanceM', compassSafeSteeringM, ' to a steering compass')]),
    ...(navigationLight === null ? [] : fact('Navigation light', [
      lightTypes[navigationLight.kind].title.toLowerCase(), quantity('rangeNmi', navigationLight.rangeNmi), quantity('arcDeg', navigationLight.arcDeg), quantity('intensityCd', navigationLight.intensityCd),
    ])),
    ...(transducer === null ? [] : fact('Transducer', [
      quantity('frequencyKHz', transducer.frequencyKHz), quantity('ratedPowerW', transducer.powerW), quantity('beamDeg', transducer.beamDeg, ' beam'), quantity('beamDeg', transducer.beamAcrossDeg, ' across'), quantity('blindM', transducer.blindM, ' blind'),
    ])),
    ...(transducer?.depthOffset == null ? [] : fact('Depth offset set', [`${say('offsetM', transducer.depthOffset.offsetM, vessel)}, for depth ${transducer.depthOffset.reads}`])),
  ]
}
