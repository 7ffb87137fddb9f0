/** What a command knows of the world outside the vessel's folder; handed in, so that a test can give its own. */

export interface OutputStream {
  readonly isTTY?: boolean | undefined
  readonly columns?: number | undefined
  write(text: string): unknown
}

export interface Surroundings {
  /** What the command was asked for. */
  readonly stdout: OutputStream
  /** Progress, and why a command could not be done. */
  readonly stderr: OutputStream
  /** Environment variables. */
  readonly variables: Readonly<Record<string, string | undefined>>
  /** Absolute; paths that the user types are meant from here. */
  readonly workingFolder: string
  readonly now: () => Date
  /** Aborted when the user asks a command that runs until then to end. */
  readonly stop: AbortSignal
}

/** The user's own date, year-month-day. */
export const dateOf = (moment: Date): string =>
  [moment.getFullYear(), moment.getMonth() + 1, moment.getDate()].map(part => String(part).padStart(2, '0')).join('-')

/** What the shell is told. 2 covers whatever the user can mend outside the vessel's data; 3 only we can. */
export const exitCode = { clean: 0, errorsFound: 1, unusable: 2, fault: 3 } as const
export type ExitCode = (typeof exitCode)[keyof typeof exitCode]

/** The command cannot be done as asked. The message says why and what to do instead. */
export class Unusable extends Error {}
