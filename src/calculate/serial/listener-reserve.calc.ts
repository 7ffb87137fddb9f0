import type { Method } from '../method.js'

export type ListenerReserveInput = Readonly<{ driveCurrentMilliA: number; drawnCurrentMilliA: number; listenerCurrentMilliA: number }>
export type ListenerReserveOutput = Readonly<{ moreListenersCount: number }>

/**
 * How many more listeners a talker can drive.
 *
 * Formula   n = ⌊(I_t − ΣI_l) / I_1⌋
 * Units     I_t what the talker can drive [mA], ΣI_l what its listeners take [mA], I_1 what one more takes [mA]; n whole, negative above
 * Source    iec-61162-1: a talker drives at least 15 mA, a listener takes at most 2.0 mA at 2.0 V (both from memory)
 */
export function listenerReserve(q: ListenerReserveInput): ListenerReserveOutput {
  // A hair above, so that 15 − 14.000000001 is no listener less.
  return { moreListenersCount: Math.floor((q.driveCurrentMilliA - q.drawnCurrentMilliA) / q.listenerCurrentMilliA + 1e-9) }
}

export const listenerReserveMethod: Method<ListenerReserveInput, ListenerReserveOutput> = {
  id: 'listener-reserve',
  title: 'Listeners that a serial talker can still drive',
  formula: String.raw`n = \left\lfloor \frac{I_t - \Sigma I_l}{I_1} \right\rfloor`,
  symbols: { driveCurrentMilliA: 'I_t', drawnCurrentMilliA: String.raw`\Sigma I_l`, listenerCurrentMilliA: 'I_1', moreListenersCount: 'n' },
  citations: [{ source: 'iec-61162-1', place: 'drive of a talker and load of a listener', standing: 'from memory' }],
  assumes: ['Where no current is recorded, a talker drives 15 mA and a listener takes 2 mA. Some makers allow fewer listeners: their word goes first.'],
  compute: listenerReserve,
  notApplicable: q => (q.driveCurrentMilliA > 0 && q.listenerCurrentMilliA > 0 ? null : 'a current is not above zero'),
  checks: [
    {
      origin: 'by hand', place: '15 mA for listeners of 2 mA each: 7.5, so 7',
      input: { driveCurrentMilliA: 15, drawnCurrentMilliA: 0, listenerCurrentMilliA: 2 }, expected: { moreListenersCount: 7 }, tolerance: 0,
    },
    {
      origin: 'by hand', place: '15 mA less 4 mA of two listeners: 5.5, so 5',
      input: { driveCurrentMilliA: 15, drawnCurrentMilliA: 4, listenerCurrentMilliA: 2 }, expected: { moreListenersCount: 5 }, tolerance: 0,
    },
  ],
}
