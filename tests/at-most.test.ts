import { setTimeout as wait } from 'node:timers/promises'
import { expect, it } from 'vitest'
import { atMost } from '../src/at-most.js'

it('runs as many as may at once, the others in their order as soon as there is room, and gives each its own result', async () => {
  const running = new Set<number>()
  let most = 0
  const begun: number[] = []
  const inTurn = atMost(2)
  const work = (number: number) => inTurn(async () => {
    begun.push(number)
    running.add(number)
    most = Math.max(most, running.size)
    await wait(number === 0 ? 30 : 5)
    running.delete(number)
    return number * 10
  })
  expect(await Promise.all([0, 1, 2, 3, 4].map(work))).toEqual([0, 10, 20, 30, 40])
  expect(most).toBe(2)
  expect(begun).toEqual([0, 1, 2, 3, 4])
})

it('makes room also when one fails, and only that one fails', async () => {
  const inTurn = atMost(1)
  const outcomes = await Promise.allSettled([
    inTurn(async () => { throw new Error('out of paper') }), inTurn(async () => 'printed'),
  ])
  expect(outcomes.map(outcome => (outcome.status === 'fulfilled' ? outcome.value : (outcome.reason as Error).message))).toEqual(['out of paper', 'printed'])
})
