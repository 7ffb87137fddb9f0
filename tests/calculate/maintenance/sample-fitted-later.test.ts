/** The sample's shore inlet is newer than the last entry of its task: dates by hand from its data. */
import { expect, it } from 'vitest'
import { examine } from '../../../src/build.js'

it('what was done before an item was fitted was done to the one before it', async () => {
  const examined = await examine('sample-vessel')
  if (examined.status !== 'examined') throw new Error('the sample cannot be read')
  const { jobs } = examined.results.maintenance
  const due = (key: string, tag: string) => jobs.filter(({ task }) => task.key === key).flatMap(({ items }) => items).find(({ itemTag }) => itemTag === tag)
  // Looked at on 2026-11-01, fitted on 2026-11-18: a month later, and never done yet.
  expect(due('shore-cord-look', 'X91')).toMatchObject({ lastDoneOn: null, dueOn: '2026-12-18' })
  expect(due('liferaft-look', 'F81')).toMatchObject({ lastDoneOn: '2026-10-10', dueOn: '2027-01-10' })
}, 60_000)
