/** Addresses of a network: who has which, what is given out, what is free. */
import type { NetworkResult } from '../../../model/results/ethernet.js'
import type { Addressing, EthernetNetwork } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { compareTags, tableOf } from '../../tables.js'
import { joined, muted, notRecorded, orNotRecorded } from '../../text.js'
import type { Block, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

const addressingWords: Readonly<Record<Addressing, string>> = { static: 'set on it', dynamic: 'given out', reserved: 'given out, always the same' }

export function addressBlocks(context: ViewContext, network: EthernetNetwork, { addresses, gatewayTags }: NetworkResult): readonly Block[] {
  const { subnet, firstHost, lastHost, free, nextFree } = addresses
  return [
    { is: 'heading', text: 'Addresses', anchor: 'addresses' },
    {
      is: 'facts', caption: null, entries: [
        { label: 'Range of the network', value: subnet === null ? orNotRecorded(network.subnet) : [subnet, muted(` devices ${firstHost} to ${lastHost}`)] },
        { label: 'Given out', value: network.dynamicRange === null ? [notRecorded] : [`${network.dynamicRange[0]} to ${network.dynamicRange[1]}`] },
        { label: 'Way out', value: gatewayText(context, network, gatewayTags) },
        { label: 'Next free', value: nextFree === null ? [muted('not known')] : [nextFree, ...(free.status === 'computed' ? [muted(`, ${free.output.freeCount} free ${network.dynamicRange === null ? 'as far as is recorded' : 'outside the range that is given out'}`)] : [])] },
      ],
    },
    tableOf(addresses.members.toSorted((a, b) => compareTags(a.tag, b.tag)), {
      id: 'addresses',
      caption: 'Members and their addresses',
      empty: 'No member is recorded.',
      note: ['Tell whoever keeps this record which address a new device was set to: only what is recorded is known to be taken.'],
      columns: [
        { title: 'Member', width: 'text', cell: ({ tag, cabled }) => [...context.named(tag), ...(cabled ? [] : [muted(' no cable recorded')])] },
        { title: 'Address', width: 'short', cell: ({ address, addressing }) => (address === null && addressing === 'dynamic' ? [muted('changes')] : orNotRecorded(address)) },
        { title: 'How', width: 'short', cell: ({ addressing }) => [addressing === null ? notRecorded : addressingWords[addressing]] },
      ],
    }),
    ...(free.status === 'computed' ? [workingOf(context, 'Addresses that are free', free)] : []),
  ]
}

function gatewayText(context: ViewContext, { gatewayAddress }: EthernetNetwork, gatewayTags: readonly string[]): Text {
  if (gatewayAddress === null) return [notRecorded]
  return gatewayTags.length === 0 ? [gatewayAddress, muted(' no member has this address')] : [`${gatewayAddress}, `, ...joined(gatewayTags.map(tag => context.named(tag)))]
}
