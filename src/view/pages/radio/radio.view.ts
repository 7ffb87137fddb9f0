/** Radio and antennas: what reaches the antenna, how far it carries, what stands too near, where people must not be. */
import type { RadioResults } from '../../../model/results/radio.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { firstRows } from '../../tables.js'
import { counted, joined } from '../../text.js'
import type { Block, Page, Text } from '../../view-model.js'
import { foundBlocks } from '../../parts/found-blocks.js'
import { cautionBlocks } from '../../cautions/cautions.js'
import { chainBlocks, chainWorkings } from './radio-chains.js'
import { drawingBlocks } from './radio-drawing.js'
import { clearanceBlocks } from './radio-clearance.js'
import { exposureBlocks, exposureWorkings, sayRoundedUp } from './radio-exposure.js'
import { rangeBlocks, rangeWorkings } from './radio-range.js'
import { skyBlocks, skyWorkings } from './radio-sky.js'
import { standingWaveBlocks, standingWaveWorkings } from './radio-standing-waves.js'

export function radioPages(context: ViewContext): readonly Page[] {
  const { radio } = context.results
  const { chains, antennas, radars, standingWaves, notAssessed } = radio
  if ([chains, antennas, radars, standingWaves, notAssessed].every(({ length }) => length === 0)) return []
  const blocks: readonly Block[] = [
    ...cautionBlocks(context, { pages: ['radio'] }, { inFull: 1 }),
    ...summaryBlocks(context),
    ...drawingBlocks(context),
    ...chainBlocks(context),
    ...rangeBlocks(context),
    ...clearanceBlocks(context),
    ...exposureBlocks(context),
    ...skyBlocks(context),
    ...standingWaveBlocks(context),
    ...foundBlocks(context, { letters: 'RAD', notAssessed: context.results.radio.notAssessed }),
    ...workingBlocks(context),
  ]
  return [{
    key: fixedPages.radio,
    title: 'Radio and antennas',
    kicker: null,
    lead: lead(radio),
    printed: printedOf(blocks),
    trail: [],
    blocks,
  }]
}

const mostPairsPrinted = 10

/** On paper the pairs that stand nearest, and of the limits to radiation the one that decides. */
const printedOf = (blocks: readonly Block[]): readonly Block[] => blocks
  .filter(block => block.is !== 'table' || block.id !== 'radio-exposure-limits')
  .map(block => (block.is === 'table' && block.id === 'radio-separation' ? firstRows(block, mostPairsPrinted) : block))

const lead = ({ chains, antennas, radars }: RadioResults): Text => [
  `${counted(chains.length, 'transmitter')}, ${counted(antennas.length, 'antenna')} and ${counted(radars.length, 'radar')} are recorded. `
  + 'This page tells what reaches the antennas, how far that carries, and where nobody may be while they transmit.',
]

/** The page in five lines, for whoever reads no further. */
function summaryBlocks(context: ViewContext): readonly Block[] {
  const { chains, ranges, exposures, skies, separations } = context.results.radio
  const arrives = chains.flatMap((chain): readonly Text[] => (chain.power.status === 'computed' && chain.steps.length > 0
    ? [[`${chain.service}: ${say('powerW', chain.power.output.antennaPowerW)} of ${say('powerW', chain.powerW)} at `, context.tag(chain.antennaTag!)]] : []))
  const reaches = ranges.filter(({ of }) => of === 'radio').map(({ tag, to }): Text => [
    context.tag(tag), ` ${joinedRange(to.flatMap(({ outcome }) => (outcome.status === 'computed' ? [outcome.output.rangeNmi] : [])))}`,
  ])
  const keep = exposures.flatMap(({ tag, deciding, people }): readonly Text[] => (deciding === null ? []
    : [[...context.named(tag), `: ${sayRoundedUp(deciding.value, context.vessel)}${deciding.citation.source === 'makers-data' ? ' by its maker' : ''}`, people.some(({ tooNear }) => tooNear) ? '; somebody can stand nearer' : '']]))
  const close = separations.filter(({ comparison }) => !comparison.within).map(({ aTag, bTag }): Text => [context.tag(aTag), ' and ', context.tag(bTag)])
  const sky = skies.flatMap(({ tag, blockedPercent }): readonly Text[] => (blockedPercent === null ? [] : [[context.tag(tag), ` ${say('blockedPercent', blockedPercent)} hidden`]]))
  const entry = (label: string, parts: readonly Text[]) => (parts.length === 0 ? [] : [{ label, value: joined(parts, '; ') }])
  const entries = [
    ...entry('Power at the antenna', arrives), ...entry('Radio range', reaches), ...entry('People keep away', keep), ...entry('Nearer than they should be', close), ...entry('View of the sky', sky),
  ]
  return entries.length === 0 ? [] : [{ is: 'facts', caption: 'In short', entries }]
}

const joinedRange = (rangesNmi: readonly number[]): string =>
  (rangesNmi.length === 0 ? 'not assessed' : `from ${say('rangeNmi', Math.min(...rangesNmi))} (to a handheld) to ${say('rangeNmi', Math.max(...rangesNmi))} (to a coast station)`)

function workingBlocks(context: ViewContext): readonly Block[] {
  const workings = [chainWorkings, rangeWorkings, exposureWorkings, skyWorkings, standingWaveWorkings].flatMap(of => of(context))
  return workings.length === 0 ? [] : [{ is: 'heading', text: 'The sums', anchor: 'sums' }, ...workings]
}
