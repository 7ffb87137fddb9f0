/** What the tests of dependency share: vessels read from their folders, and the pass on vessels built in code. */
import { fileURLToPath } from 'node:url'
import { dependencyPass } from '../../../src/calculate/dependency/index.js'
import { feedingPass } from '../../../src/calculate/feeding/index.js'
import { check } from '../../../src/check/check.js'
import { readFolder } from '../../../src/load/read-folder.js'
import type { DependencyResults, Effect } from '../../../src/model/results/dependency.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'

export const dependencyOf = (vessel: Vessel): DependencyResults => dependencyPass(vessel, bases[vessel.basis], { feeding: feedingPass(vessel) })

export async function vesselAt(folder: string): Promise<Vessel> {
  const { vessel } = check(await readFolder(fileURLToPath(new URL(`../../../${folder}`, import.meta.url)), {}))
  if (vessel === null) throw new Error(`${folder} has errors`)
  return vessel
}

/** `P1 dead, by hand F9` */
export const inWords = (effects: readonly Effect[] | undefined): string[] =>
  (effects ?? []).map(({ tag, how, restoreBy }) => `${tag} ${how}${restoreBy.length === 0 ? '' : `, by hand ${restoreBy.join(' ')}`}`)

export const lossOf = (vessel: Vessel, tag: string): string[] => inWords(dependencyOf(vessel).losses.get(tag))
