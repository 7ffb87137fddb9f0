/** From the transmitter to its antenna: cables, connectors, splitters, and what arrives. */
import { cite } from '../../../references/bibliography.js'
import { type ChainStep, lossOf, type RadioChain } from '../../../model/results/radio.js'
import { cableLoss, aisCableLossPreferred } from '../../../references/basis/radio-rules.js'
import { usualConnector } from '../../../references/tables/coax-attenuation.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { plainText, tableOf } from '../../tables.js'
import { dash, joined, lineBreak, muted, verdict } from '../../text.js'
import type { Block, Inline, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export function chainBlocks(context: ViewContext): readonly Block[] {
  const { chains } = context.results.radio
  const heading: Block = { is: 'heading', text: 'From the transmitter to the antenna', anchor: 'losses' }
  if (chains.length === 0) return [heading, { is: 'paragraph', text: ['No transmitter is recorded.'] }]
  return [
    heading,
    { is: 'paragraph', text: ['Cable, connectors and splitters take away from what is sent and from what is received alike. 3 dB are half of the power, and the range to the horizon changes little by it; weak and distant stations are lost first.'] },
    tableOf(chains, {
      id: 'radio-losses',
      caption: 'Power at the antenna',
      empty: '',
      level: ({ comparison, coversFrequency }) => (coversFrequency === false ? 'error' : comparison?.within === false ? 'warning' : null),
      columns: [
        { title: 'Transmitter', width: 'text', cell: ({ itemTag, service }) => [...context.named(itemTag), lineBreak, muted(service)] },
        { title: 'Sends', width: 'number', cell: ({ powerW, frequencyMHz }) => [sayForWorking('powerW', powerW), lineBreak, muted(sayForWorking('frequencyMHz', frequencyMHz))] },
        { title: 'Lost', width: 'short', cell: chain => lossText(chain) },
        { title: 'At the antenna', width: 'number', cell: ({ power }) => (power.status === 'computed' ? [sayForWorking('antennaPowerW', power.output.antennaPowerW, 'result')] : [muted('not assessed')]) },
        { title: 'Antenna', width: 'text', cell: chain => antennaText(context, chain) },
      ],
      note: [
        `Lost: at most ${say('lossDb', cableLoss.value)} (${cite(cableLoss.citation)}); of AIS ${say('lossDb', aisCableLossPreferred.value)} preferred. Distress beacons send in distress only and are left out.`,
      ],
    }),
    ...sharedBlocks(context),
    ...chains.filter(({ steps }) => steps.length > 0).map(chain => wayTable(context, chain)),
  ]
}

const lossText = ({ lossDb, comparison, steps }: RadioChain): Text => (lossDb === null ? [muted('not assessed')] : steps.length === 0 ? dash
  : [`${say('lossDb', lossDb)} `, comparison === null ? '' : verdict(comparison.within ? 'good' : 'warning', comparison.within ? 'within' : 'above limit')])

function antennaText(context: ViewContext, { antennaTag, itemTag, antennaGap, coversFrequency }: RadioChain): Text {
  if (antennaTag === null) return [muted(antennaGap ?? 'not recorded')]
  const suits: Inline = coversFrequency === null ? muted('range of frequencies not recorded') : verdict(coversFrequency ? 'good' : 'error', coversFrequency ? 'made for it' : 'not made for it')
  return [...(antennaTag === itemTag ? ['built in'] : context.named(antennaTag)), lineBreak, suits]
}

/** Said of each antenna that several transmitters use. */
const sharedBlocks = (context: ViewContext): readonly Block[] => context.results.radio.antennas.filter(({ servesTags }) => servesTags.length > 1).map(({ tag, servesTags, splitterTags }): Block => ({
  is: 'paragraph',
  text: [
    ...joined(servesTags.map(context.named), ' and '), ' use one antenna, ', ...context.named(tag),
    ...(splitterTags.length === 0 ? [', and no splitter is recorded between them.']
      : [', through ', ...joined(splitterTags.map(context.named)), '. Between the two no distance is needed; what the splitter takes counts as loss.']),
  ],
}))

const titleOf = ({ service, itemTag, antennaTag }: RadioChain): string => `${itemTag} to ${antennaTag}, ${service}`

const wayTable = (context: ViewContext, chain: RadioChain): Table => tableOf(chain.steps, {
  id: `radio-way-${titleOf(chain)}`.toLowerCase().replace(/[^a-z0-9]+/g, '-'),
  caption: `${titleOf(chain)}, step by step`,
  empty: '',
  columns: [
    { title: 'Step', width: 'text', cell: step => stepText(context, step) },
    { title: 'Attenuation', width: 'number', cell: step => sayOrDash('attenuationDbPer100M', computedLoss(step)?.attenuationDbPer100M, context.vessel) },
    { title: 'Length', width: 'number', cell: step => sayOrDash('cableLengthM', computedLoss(step)?.cableLengthM, context.vessel) },
    { title: 'Connectors', width: 'number', cell: step => [String(computedLoss(step)?.connectorCount ?? '–')] },
    { title: 'Loss', width: 'number', cell: step => (lossOf(step) === null ? [muted('not assessed')] : [say('lossDb', lossOf(step)!)]) },
  ],
  ...(chain.lossDb === null ? {} : { note: [`Attenuation times length, and ${say('lossDb', usualConnector.lossDb)} for each connector. Sum ${sayForWorking('lossDb', chain.lossDb, 'result')}.`] }),
})

const computedLoss = (step: ChainStep) => (step.is === 'cable' && step.loss.status === 'computed' ? step.loss.input : null)

/** The sums of each way, in its order; of a cable that several use at one frequency once. */
export function chainWorkings(context: ViewContext): readonly Block[] {
  const workings = context.results.radio.chains.filter(({ antennaTag }) => antennaTag !== null).flatMap(chain => {
    const at = ` at ${sayForWorking('frequencyMHz', chain.frequencyMHz)}`
    return [
      ...chain.steps.flatMap(step => (step.is === 'ports' ? [] : [
        ...(step.attenuation.status === 'computed' ? [workingOf(context, `Attenuation of ${step.cableTag}${at}`, step.attenuation)] : []),
        workingOf(context, `Loss of ${step.cableTag}${at}`, step.loss, { remarks: step.attenuation.status === 'stated' ? [{ label: 'attenuation', text: 'as its maker states it at this frequency' }] : [] }),
      ])),
      ...(chain.steps.length === 0 ? [] : [workingOf(context, `Power at the antenna, ${titleOf(chain)}`, chain.power)]),
      workingOf(context, `Radiated power, ${titleOf(chain)}`, chain.radiated),
    ]
  })
  return [...new Map(workings.map(working => [working.is === 'working' ? working.title : plainText(working.text), working])).values()]
}

const stepText = ({ named }: ViewContext, step: ChainStep): Text =>
  (step.is === 'cable' ? named(step.cableTag) : [...named(step.itemTag), muted(` ${step.fromTerminal} to ${step.toTerminal}`)])
