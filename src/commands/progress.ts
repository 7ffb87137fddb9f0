/** Tells a person what long work is at. */
import type { OutputStream } from './surroundings.js'

export interface Progress {
  /** What is being done from now on. */
  step(text: string): void
  /** Clears the line, for what is printed next. */
  end(): void
}

/** On a terminal one line that is written over; elsewhere a line for each step. */
export function progressOn(stream: OutputStream): Progress {
  if (stream.isTTY !== true) return { step: text => void stream.write(`${text}\n`), end: () => {} }
  const clearLine = '\r\u001B[K'
  return {
    // A line that wraps could not be written over. Some terminals report a width of 0.
    step: text => void stream.write(clearLine + text.slice(0, (stream.columns || 80) - 1)),
    end: () => void stream.write(clearLine),
  }
}
