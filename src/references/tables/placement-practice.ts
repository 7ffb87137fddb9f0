/** What is usual where things are placed on a boat and no rule gives a figure. Common practice, no source. */
import { commonPractice } from '../bibliography.js'


/** Depths for which the footprint of a transducer is worked out. */
export const footprintDepthsM: readonly number[] = [5, 10, 20, 50]
/** Depth for which the effect of an offset is shown. */
export const exampleDepthM = 5
export const depthTolerance = { valueM: 0.1, citation: commonPractice('a depth shown to within 0.1 m') } as const
/** Of the higher frequency; two transducers closer than that disturb one another when they run together. */
export const frequencyApart = { shareFactor: 0.1, citation: commonPractice('frequencies of transducers at least 10 % apart') } as const
export const heelLimit = { heelDeg: 1, citation: commonPractice('a fit that heels the boat by more than 1° is trimmed out') } as const
/** What has a mass and no position may weigh this share of what is counted before the heel says nothing. Common practice, no source. */
export const uncountedMassMostPercent = 5
