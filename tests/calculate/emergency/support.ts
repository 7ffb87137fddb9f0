/** Two banks with an isolator each and a link between, by hand: what the tests of the emergency share. */
import { dependencyPass } from '../../../src/calculate/dependency/index.js'
import { emergencyPass } from '../../../src/calculate/emergency/index.js'
import { feedingPass } from '../../../src/calculate/feeding/index.js'
import type { EmergencyResults } from '../../../src/model/results/emergency.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aBusbar, aCircuit, anEquipment, anOutput, aPanel, aProtection, aVessel } from '../../support/vessel-builder.js'
import { cables } from '../feeding/support.js'

export function emergencyOf(vessel: Vessel): EmergencyResults {
  const basis = bases[vessel.basis]
  const feeding = feedingPass(vessel)
  return emergencyPass(vessel, basis, { feeding, dependency: dependencyPass(vessel, basis, { feeding }) })
}

const fuse = (ratedCurrentA: number) => ({ protection: aProtection('blade fuse', ratedCurrentA) })

/**
 *   G1 ─ F1 ─ Q1 ─ X1: A1 (radio, light, fridge, hand side of the pump), alternator G3 by F5, inverter T1 by F6
 *   G1 ─ F2 ─ float switch B1 ─ pump G11          always live
 *   G1 ─ F7 ─ A2: alarm                            always live, by a panel
 *   G2 ─ Q2 ─ starter M2;  G2 ─ F3 ─ engine M1     the engine's electronics are ahead of Q2
 *   G2 ─ F9 ─ Q3 ─ X1                              the link, open
 */
export const twoBanks = (given: Partial<Vessel> = {}): Vessel => aVessel({
  batteries: [aBattery({ tag: 'G1', name: 'House' }), aBattery({ tag: 'G2', name: 'Start' })],
  busbars: [aBusbar({ tag: 'X1' })],
  panels: [aPanel({ tag: 'A1', ways: 8 }), aPanel({ tag: 'A2', ways: 2 })],
  equipment: [
    ...['Q1', 'Q2', 'Q3'].map(tag => anEquipment({ tag, kind: 'battery isolator' })),
    anEquipment({ tag: 'T2', kind: 'vhf transceiver', currentMaxA: 6 }), anEquipment({ tag: 'E1', kind: 'navigation light', currentMaxA: 2 }),
    anEquipment({ tag: 'E31', kind: 'refrigerator', currentMaxA: 5 }), anEquipment({ tag: 'E33', kind: 'heater', currentMaxA: 8 }),
    anEquipment({ tag: 'M17', kind: 'windlass', currentMaxA: 80 }),
    anEquipment({ tag: 'G11', kind: 'bilge pump', currentMaxA: 3 }), anEquipment({ tag: 'B1', kind: 'float switch' }),
    anEquipment({ tag: 'P19', kind: 'alarm panel', currentMaxA: 1 }),
    anEquipment({ tag: 'M1', kind: 'engine', currentMaxA: 4 }), anEquipment({ tag: 'M2', kind: 'starter motor', currentMaxA: 300 }),
    anEquipment({ tag: 'G3', kind: 'alternator', outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 60 })] }),
    anEquipment({ tag: 'T1', kind: 'inverter', currentMaxA: 100, outputs: [anOutput({ terminal: 'out', form: 'ac', nominalVoltageV: 230, frequencyHz: 50, ratedCurrentA: 4 })] }),
  ],
  circuits: [
    aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['X1'], ...fuse(100) }), aCircuit({ tag: 'F4', fedFromTag: 'X1', loadTags: ['A1'], ...fuse(60) }),
    aCircuit({ tag: 'F5', fedFromTag: 'X1', loadTags: ['G3'], ...fuse(80) }), aCircuit({ tag: 'F6', fedFromTag: 'X1', loadTags: ['T1'], demandFactor: 0.2, ...fuse(125) }),
    aCircuit({ tag: 'F2', fedFromTag: 'G1', loadTags: ['G11'], ...fuse(5) }), aCircuit({ tag: 'F7', fedFromTag: 'G1', loadTags: ['A2'], ...fuse(10) }),
    aCircuit({ tag: 'A2.1', fedFromTag: 'A2', loadTags: ['P19'], ...fuse(3) }),
    aCircuit({ tag: 'S1', fedFromTag: 'G2', loadTags: ['M2'], unprotectedReason: 'engine starting' }), aCircuit({ tag: 'F3', fedFromTag: 'G2', loadTags: ['M1'], ...fuse(10) }),
    aCircuit({ tag: 'F9', fedFromTag: 'G2', loadTags: ['X1'], normalState: 'open', ...fuse(100) }),
    aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['T2'], ...fuse(10) }), aCircuit({ tag: 'A1.2', fedFromTag: 'A1', loadTags: ['E1'], ...fuse(5) }),
    aCircuit({ tag: 'A1.3', fedFromTag: 'A1', loadTags: ['E31'], demandFactor: 0.5, ...fuse(10) }), aCircuit({ tag: 'A1.4', fedFromTag: 'A1', loadTags: ['E33'], demandFactor: 0.4, ...fuse(10) }),
    aCircuit({ tag: 'A1.5', fedFromTag: 'A1', loadTags: ['G11'], ...fuse(5) }), aCircuit({ tag: 'A1.6', fedFromTag: 'A1', loadTags: ['M17'], ...fuse(100) }),
  ],
  cables: cables(
    'W1: G1 > F1', 'W2: F1 > Q1', 'W3: Q1 > X1', 'W4: X1 > F4', 'W5: F4 > A1', 'W6: X1 > F5', 'W7: F5 > G3', 'W8: X1 > F6', 'W9: F6 > T1:dc',
    'W10: G1 > F2', 'W11: F2 > B1', 'W12: B1 > G11', 'W13: G1 > F7', 'W14: F7 > A2', 'W15: A2.1 > P19',
    'W16: S1 > Q2', 'W17: Q2 > M2', 'W18: G2 > F3', 'W19: F3 > M1', 'W20: G2 > F9', 'W21: F9 > Q3', 'W22: Q3 > X1',
    'W31: A1.1 > T2', 'W32: A1.2 > E1', 'W33: A1.3 > E31', 'W34: A1.4 > E33', 'W35: A1.5 > G11', 'W36: A1.6 > M17',
  ),
  ...given,
})
