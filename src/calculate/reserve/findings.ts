/** Findings about spare capacity and about electronic switching modules (RSV). */
import type { FindingKind } from '../../findings/finding.js'
import { sayAgainst } from '../../units/format.js'

const since = '0.2.0'
const retired = null

export const channelsAboveRating: FindingKind<{ takenCurrentA: number }> = {
  id: 'RSV101', name: 'channels-above-module-rating', since, retired, severity: 'error',
  meaning: 'The channels of a switching module take more together, demand factors applied, than the module is rated for. It can overheat or shut down with everything on it.',
  message: ({ subject, evidence, limit }) => {
    const { actual, limit: rated } = sayAgainst('takenCurrentA', evidence.takenCurrentA, limit!.value)
    return `Module ${subject.id}: its channels take ${actual} together, rated ${rated}`
  },
  remedy: ({ subject }) => `Move a channel of ${subject.id} to another module or panel, or confirm its currents and demand factors.`,
}

export const manualBypassNotRecorded: FindingKind<{}> = {
  id: 'RSV201', name: 'manual-bypass-not-recorded', since, retired, severity: 'warning',
  meaning: 'A critical circuit hangs on an electronic channel, and nobody wrote down how to work it by hand when the module is dead.',
  message: ({ subject, context }) => `Circuit ${subject.id}: critical, on a channel of module ${context?.['module']}, and no manual bypass is recorded`,
  remedy: ({ subject }) => `Record how ${subject.id} is worked without the module, or fit a bypass if there is none.`,
}

export const networkLossNotRecorded: FindingKind<{}> = {
  id: 'RSV202', name: 'network-loss-not-recorded', since, retired, severity: 'note',
  meaning: 'What the channels of a switching module do when it no longer hears its network is not recorded, and some of them are critical.',
  message: ({ subject, context }) => `Module ${subject.id}: what its critical channels do when the network is lost is not recorded (${context?.['circuits']})`,
  remedy: () => 'Record whether the channels hold, go off or go on, as the maker states it and as tried on board.',
}

export const findingKinds = [channelsAboveRating, manualBypassNotRecorded, networkLossNotRecorded] as const
