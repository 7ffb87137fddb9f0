import type { Method } from '../method.js'

export type ConductorTemperatureInput = Readonly<{
  ambientC: number
  insulationC: number
  currentA: number
  currentCarryingCapacityA: number
}>
export type ConductorTemperatureOutput = Readonly<{ conductorTemperatureC: number }>

/**
 * Steady temperature of a conductor that carries part of its capacity.
 *
 * Formula   θ = θa + (θmax − θa) · (I / Iz)²
 * Units     θ, θa ambient, θmax rating of the insulation [°C]; I, Iz [A]
 * Source    heat-balance: the loss rises with the square of the current, the heat given off with the temperature rise
 * Assumes   the conductor reaches the rating of its insulation at exactly its current-carrying capacity
 */
export function conductorTemperature(q: ConductorTemperatureInput): ConductorTemperatureOutput {
  const share = q.currentA / q.currentCarryingCapacityA
  return { conductorTemperatureC: q.ambientC + (q.insulationC - q.ambientC) * share ** 2 }
}

export const conductorTemperatureMethod: Method<ConductorTemperatureInput, ConductorTemperatureOutput> = {
  id: 'conductor-temperature',
  title: 'Temperature of a conductor under load',
  formula: String.raw`\theta = \theta_a + (\theta_{max} - \theta_a)\left(\frac{I}{I_z}\right)^2`,
  symbols: {
    ambientC: String.raw`\theta_a`, insulationC: String.raw`\theta_{max}`, currentA: 'I', currentCarryingCapacityA: 'I_z',
    conductorTemperatureC: String.raw`\theta`,
  },
  citations: [{ source: 'heat-balance', place: 'loss in proportion to the square of the current' }],
  assumes: [
    'The conductor reaches the temperature rating of its insulation at its current-carrying capacity.',
    'The change of resistance with temperature is left out; it makes the true temperature slightly lower.',
  ],
  compute: conductorTemperature,
  notApplicable: q =>
    !(q.currentCarryingCapacityA > 0) ? 'the current-carrying capacity is not above zero'
    : q.currentA > q.currentCarryingCapacityA ? 'the current is above the current-carrying capacity'
    : q.ambientC > q.insulationC ? 'the ambient is hotter than the insulation is rated for'
    : null,
  checks: [
    {
      origin: 'by hand', place: 'half of the capacity gives a quarter of the rise: 30 + (105 − 30) / 4 = 48.75',
      input: { ambientC: 30, insulationC: 105, currentA: 17.5, currentCarryingCapacityA: 35 }, expected: { conductorTemperatureC: 48.75 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'all of the capacity gives the rating of the insulation',
      input: { ambientC: 50, insulationC: 90, currentA: 100, currentCarryingCapacityA: 100 }, expected: { conductorTemperatureC: 90 }, tolerance: 1e-9,
    },
  ],
}
