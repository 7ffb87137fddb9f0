/** The program `asfitted`: its commands, and what the shell is told in the end. */
import { Command, CommanderError, InvalidArgumentError } from 'commander'
import path from 'node:path'
import { editions } from '../model/edition.js'
import type { Edition } from '../model/vessel.js'
import { PackRefused } from '../package/pack-folder.js'
import type { ReserveOptions } from './reserve-options.js'
import { type ExitCode, exitCode, type Surroundings, Unusable } from './surroundings.js'

/** Runs the command in `args` (without the program's own name) to its end. Never throws. */
export async function run(args: readonly string[], surroundings: Surroundings): Promise<ExitCode> {
  let code: ExitCode = exitCode.clean
  const program = makeProgram(surroundings, ended => { code = ended })
  try {
    await program.parseAsync(args, { from: 'user' })
    return code
  } catch (error) {
    // The text of a misuse, or the help that was asked for, is printed by then.
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCode.clean : exitCode.unusable
    const { code: failed, text } = failure(error)
    surroundings.stderr.write(`asfitted: ${text}\n`)
    return failed
  }
}

function failure(error: unknown): { readonly code: ExitCode; readonly text: string } {
  if (error instanceof Unusable || error instanceof PackRefused) return { code: exitCode.unusable, text: error.message }
  if (error instanceof Error && 'syscall' in error) {
    return { code: exitCode.unusable, text: `the system refuses: ${error.message}. Check that the place can be written to and that the disk has room.` }
  }
  return { code: exitCode.fault, text: `a fault of this program, not of your data:\n${error instanceof Error ? error.stack : String(error)}` }
}

const exitCodesHelp = `
Exit codes: 0 no errors found (warnings and notes count as none), 1 errors found, 2 the folder cannot be read as a vessel
or the command cannot be done as asked, 3 a fault of this program.
`

function makeProgram(surroundings: Surroundings, ended: (code: ExitCode) => void): Command {
  const { stdout, stderr, workingFolder } = surroundings
  const folder = (written: string): string => path.resolve(workingFolder, written)
  const program = new Command('asfitted')
    .description('Turns one folder of plain files about a boat’s installed electrical and electronic systems into its handover pack.')
    .exitOverride()
    .configureOutput({
      writeOut: text => void stdout.write(text),
      writeErr: text => void stderr.write(text),
      getOutHelpWidth: () => stdout.columns ?? 100,
      getErrHelpWidth: () => stderr.columns ?? 100,
    })
    .showHelpAfterError('(asfitted --help lists the commands, asfitted COMMAND --help the options)')
    .addHelpText('after', exitCodesHelp)

  const catalogueOption = ['--catalogue <folder>', 'folder with models and cable types that several vessels share', folder] as const

  program.command('check')
    .description('read a vessel folder and report what is wrong, over a limit, missing or doubtful')
    .argument('<folder>', 'the vessel folder', folder)
    .option(...catalogueOption)
    .option('--not-assessed', 'list what could not be calculated, with the reason and what to record')
    .option('--json', 'print the findings and what is not assessed as JSON')
    .action(async (vesselFolder: string, options: { catalogue?: string; json?: true; notAssessed?: true }) => {
      const { check } = await import('./check.js')
      ended(await check(vesselFolder, options, surroundings))
    })

  program.command('build')
    .description('build the handover pack: site, printable manual, records, checksums')
    .argument('<folder>', 'the vessel folder', folder)
    .option('--out <folder>', 'where the pack goes (default: handover/ and the vessel’s name, in the current folder; with the edition, where it is not the owner’s)', folder)
    .option('--edition <edition>', `whom it is for: ${editions.join(', ')}; logins that this edition must not carry are left out (default: owner)`, editionNamed)
    .option('--no-pdf', 'leave the printable manual out')
    .option(...catalogueOption)
    .action(async (vesselFolder: string, options: { out?: string; pdf: boolean; edition?: Edition; catalogue?: string }) => {
      const { buildPack } = await import('./build.js')
      ended(await buildPack(vesselFolder, options, surroundings))
    })

  program.command('preview')
    .description('show the site in a browser on this machine, and show it again after every change of the data')
    .argument('<folder>', 'the vessel folder', folder)
    .option('--port <number>', 'port to serve at (default: any that is free)', portNumber)
    .option(...catalogueOption)
    .action(async (vesselFolder: string, options: { port?: number; catalogue?: string }) => {
      const { preview } = await import('./preview.js')
      ended(await preview(vesselFolder, options, surroundings))
    })

  program.command('reserve')
    .description('tell where a new load or device can be taken from, each with its sum: a circuit of its own, a CAN bus, a network port, or all three')
    .argument('<folder>', 'the vessel folder', folder)
    .requiredOption('--at <place>', 'where it is to be: a zone, a wireway point or an item, by tag or name')
    .option('--current <current>', 'a circuit of its own: what it draws, with its unit: "8 A"')
    .option('--len <number>', 'a place on a CAN bus: its load equivalency number, 1 for each 50 mA that it takes of the bus')
    .option('--power-class <class>', 'a network port that feeds it over the cable: the class that it asks for, 0 to 8')
    .option('--ethernet', 'a network port without power')
    .option('--model <key>', 'a model of the vessel’s catalogue: takes what the four options above leave open from there')
    .option('--voltage <voltage>', 'with --current: its nominal voltage: "12 V" (default: the only direct current on board)')
    .option('--critical', 'with --current: hold it against the voltage drop of critical circuits')
    .option('--continuous', 'with --current: it runs for hours: the protective device is rated 125 % of the current')
    .option('--hours <duration>', 'with --current: hours of each day in which it runs: "4 h"')
    .option('--demand-factor <share>', 'with --current: share of its current that counts in the feeders above, 0 to 1 (default: 1)')
    .option(...catalogueOption)
    .option('--json', 'print the answer as JSON')
    .action(async (vesselFolder: string, options: ReserveOptions) => {
      const { reserve } = await import('./reserve.js')
      ended(await reserve(vesselFolder, options, surroundings))
    })

  program.command('init')
    .description('start a new vessel folder with a small example, commented line by line')
    .argument('<folder>', 'the folder to make; it must not hold anything yet', folder)
    .action(async (vesselFolder: string) => {
      const { init } = await import('./init.js')
      ended(await init(vesselFolder, surroundings))
    })

  program.command('schema')
    .description('write the JSON Schemas by which editors complete and check the vessel’s files while you type')
    .argument('<folder>', 'the vessel folder', folder)
    .action(async (vesselFolder: string) => {
      const { schema } = await import('./schema.js')
      ended(await schema(vesselFolder, surroundings))
    })

  return program
}

function editionNamed(written: string): Edition {
  const edition = editions.find(each => each === written)
  if (edition === undefined) throw new InvalidArgumentError(`one of ${editions.join(', ')} is expected.`)
  return edition
}

function portNumber(written: string): number {
  const port = Number(written)
  if (!/^\d+$/.test(written) || port > 65535) throw new InvalidArgumentError('a whole number from 0 to 65535 is expected.')
  return port
}
