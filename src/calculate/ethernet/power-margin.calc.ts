import type { Method } from '../method.js'
import { powerClassCitation } from '../../references/tables/poe-classes.js'

export type PowerMarginInput = Readonly<{ powerBudgetW: number; takenPowerW: number }>
export type PowerMarginOutput = Readonly<{ marginPowerW: number }>

/**
 * What is left of the power that a switch can give over all its ports.
 *
 * Formula   ΔP = P_b − ΣP
 * Units     P_b power budget of the switch [W], ΣP sum over its ports, of the classes or of what is drawn [W]; ΔP [W]
 * Source    ieee-802-3 for the power of each class
 */
export function powerMargin(q: PowerMarginInput): PowerMarginOutput {
  return { marginPowerW: q.powerBudgetW - q.takenPowerW }
}

export const powerMarginMethod: Method<PowerMarginInput, PowerMarginOutput> = {
  id: 'network-power-margin',
  title: 'Power left at a network switch',
  formula: String.raw`\Delta P = P_b - \Sigma P`,
  symbols: { powerBudgetW: 'P_b', takenPowerW: String.raw`\Sigma P`, marginPowerW: String.raw`\Delta P` },
  citations: [powerClassCitation],
  assumes: [
    'A switch reserves what a class may take at the port, whatever the device draws; one that learns from the device what it needs reserves less.',
  ],
  compute: powerMargin,
  notApplicable: q => (q.powerBudgetW >= 0 && q.takenPowerW >= 0 ? null : 'a power is below zero'),
  checks: [
    {
      origin: 'by hand', place: 'four of class 3, one of class 4, one of class 6 at 120 W: 120 − (4 · 15.4 + 30 + 60) = 120 − 151.6',
      input: { powerBudgetW: 120, takenPowerW: 151.6 }, expected: { marginPowerW: -31.6 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'four of class 2 and one of class 4 at 65 W: 65 − (4 · 7 + 30) = 65 − 58',
      input: { powerBudgetW: 65, takenPowerW: 58 }, expected: { marginPowerW: 7 }, tolerance: 1e-9,
    },
  ],
}
