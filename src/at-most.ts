/** Work that shares the machine. */

/**
 * Runs at most so many pieces of work at once; what comes on top waits its turn. The promise of each piece is its own, and one that
 * fails makes room like one that ends well.
 */
export function atMost(atOnceCount: number): <T>(work: () => Promise<T>) => Promise<T> {
  let runningCount = 0
  const waiting: (() => void)[] = []
  return async work => {
    if (runningCount < atOnceCount) runningCount += 1
    else await new Promise<void>(begin => waiting.push(begin))
    try {
      return await work()
    } finally {
      // Whoever begins now takes over this place.
      const begin = waiting.shift()
      if (begin === undefined) runningCount -= 1
      else begin()
    }
  }
}
