import type { Method } from '../method.js'

export type ConverterInputInput = Readonly<{ outputPowerW: number; inputVoltageV: number; efficiencyPercent: number }>
export type ConverterInputOutput = Readonly<{ inputCurrentA: number }>

/**
 * Current that a converter, inverter or charger takes for what it gives.
 *
 * Formula   I = P / (U · η / 100)
 * Units     P given at the outputs [W], U at the input [V], η efficiency [%]; I [A]
 * Source    circuit-theory
 * Assumes   the power factor of an a.c. side is 1; what it takes while it gives nothing is left out
 */
export function converterInput(q: ConverterInputInput): ConverterInputOutput {
  return { inputCurrentA: q.outputPowerW / (q.inputVoltageV * (q.efficiencyPercent / 100)) }
}

export const converterInputMethod: Method<ConverterInputInput, ConverterInputOutput> = {
  id: 'converter-input',
  title: 'Current into a converter, inverter or charger',
  formula: String.raw`I = \frac{P}{U\,\eta/100}`,
  symbols: { outputPowerW: 'P', inputVoltageV: 'U', efficiencyPercent: String.raw`\eta`, inputCurrentA: 'I' },
  citations: [{ source: 'circuit-theory', place: 'P = U · I, less the losses' }],
  assumes: ['The power factor of an a.c. side is 1.', 'What it takes while it gives nothing is left out.'],
  compute: converterInput,
  notApplicable: q =>
    (q.inputVoltageV > 0 && q.efficiencyPercent > 0 && q.efficiencyPercent <= 100 ? null : 'the input voltage or the efficiency is out of range'),
  checks: [
    {
      origin: 'published', place: 'handbook example of an inverter: 1200 W at 88 % from 12.5 V',
      input: { outputPowerW: 1200, inputVoltageV: 12.5, efficiencyPercent: 88 }, expected: { inputCurrentA: 109.1 }, tolerance: 0.05,
    },
    {
      origin: 'by hand', place: 'charger of 60 A at 12 V and 20 A at 12 V from 230 V at 87 %: 960 / (230 · 0.87)',
      input: { outputPowerW: 960, inputVoltageV: 230, efficiencyPercent: 87 }, expected: { inputCurrentA: 4.798 }, tolerance: 5e-4,
    },
  ],
}
