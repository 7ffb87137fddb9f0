#!/usr/bin/env node
import { run } from './commands/run.js'

// Whoever reads along may stop reading: `asfitted check boat | head`.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit()
  throw error
})

const stop = new AbortController()
for (const [signal, code] of [['SIGINT', 130], ['SIGTERM', 143], ['SIGHUP', 129]] as const) {
  process.once(signal, () => {
    stop.abort()
    // What is half done is cleared away as the process goes.
    process.exit(code)
  })
}

process.exitCode = await run(process.argv.slice(2), {
  stdout: process.stdout,
  stderr: process.stderr,
  variables: process.env,
  workingFolder: process.cwd(),
  now: () => new Date(),
  stop: stop.signal,
})
