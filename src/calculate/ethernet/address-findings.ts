/** Findings about the addresses of networks (ETH). */
import type { FindingKind } from '../../findings/finding.js'

const since = '0.3.0'
const retired = null

export const addressRepeated: FindingKind<{}> = {
  id: 'ETH105', name: 'address-repeated', since, retired, severity: 'error',
  meaning: 'Two items of one network have the same address. Both come and go, and which of them answers changes from one moment to the next.',
  message: ({ subject, context }) => `${subject.id}: address ${context?.['address']} is that of ${context?.['others']} too`,
  remedy: ({ context }) => `Set another address on one of them${context?.['free'] === undefined ? '' : `, for example ${context['free']}`}, or correct the record.`,
}

export const addressOutsideSubnet: FindingKind<{}> = {
  id: 'ETH106', name: 'address-outside-subnet', since, retired, severity: 'error',
  meaning: 'An item has an address outside the range of the network that it is on, so that the others do not reach it.',
  message: ({ subject, context }) => `${subject.id}: address ${context?.['address']} is outside ${context?.['subnets']}`,
  remedy: ({ context }) => `Set an address of that range${context?.['free'] === undefined ? '' : `, for example ${context['free']}`}, or correct the record.`,
}

export const addressNotValid: FindingKind<{}> = {
  id: 'ETH110', name: 'address-not-valid', since, retired, severity: 'error',
  meaning: 'What is recorded as an address or a range of addresses is none.',
  message: ({ subject, context }) => `${subject.id}: "${context?.['written']}" is not ${context?.['expected']}`,
  remedy: ({ context }) => `Write it like ${context?.['example']}.`,
}

export const addressOfSubnetItself: FindingKind<{}> = {
  id: 'ETH111', name: 'address-of-the-subnet-itself', since, retired, severity: 'error',
  meaning: 'An item has the first address of its subnet, which names the subnet, or the last, which calls all on it. No device can be reached by it.',
  message: ({ subject, context }) => `${subject.id}: address ${context?.['address']} is ${context?.['which']} of ${context?.['subnet']}`,
  remedy: ({ context }) => `Set another address${context?.['free'] === undefined ? '' : `, for example ${context['free']}`}, or correct the record.`,
}

export const gatewayOutsideSubnet: FindingKind<{}> = {
  id: 'ETH112', name: 'gateway-outside-subnet', since, retired, severity: 'error',
  meaning: 'The address to which a network sends what is meant for elsewhere lies outside its own range, so that nothing gets out.',
  message: ({ subject, context }) => `Network ${subject.id}: gateway ${context?.['address']} is outside ${context?.['subnet']}`,
  remedy: () => 'Set the address that the router has on this network.',
}

export const dynamicRangeUnusable: FindingKind<{}> = {
  id: 'ETH113', name: 'dynamic-range-unusable', since, retired, severity: 'error',
  meaning: 'The range of addresses that are given out does not lie in the subnet, or ends before it begins.',
  message: ({ subject, context }) => `Network ${subject.id}: the range ${context?.['range']} that is given out ${context?.['fault']}`,
  remedy: () => 'Correct first and last address of the range, or the subnet.',
}

export const addressesNotRecorded: FindingKind<{ itemCount: number }> = {
  id: 'ETH201', name: 'addresses-not-recorded', since, retired, severity: 'note',
  meaning: 'Of items on a network neither an address is recorded nor that they are given one, so that an address looks free which is not.',
  message: ({ subject, evidence, context }) =>
    `Network ${subject.id}: of ${context?.['items']} no address is recorded, nor that ${evidence.itemCount === 1 ? 'it is' : 'they are'} given one`,
  remedy: () => 'Record the address, or "addressing: dynamic" for what is given one.',
}

export const staticInDynamicRange: FindingKind<{}> = {
  id: 'ETH301', name: 'static-address-in-dynamic-range', since, retired, severity: 'warning',
  meaning: 'An address that is set on an item lies in the range that is given out, so that another device may be given the same.',
  message: ({ subject, context }) => `${subject.id}: address ${context?.['address']} is set on it and lies in the range ${context?.['range']} that is given out`,
  remedy: ({ context }) => `Set an address outside that range${context?.['free'] === undefined ? '' : `, for example ${context['free']}`}, or reserve it at the router and record "addressing: reserved".`,
}

export const gatewayNotOnBoard: FindingKind<{}> = {
  id: 'ETH302', name: 'gateway-not-on-board', since, retired, severity: 'warning',
  meaning: 'No item of a network has the address that the network sends to what is meant for elsewhere.',
  message: ({ subject, context }) => `Network ${subject.id}: no item on it has the address ${context?.['address']} of its gateway`,
  remedy: () => 'Record the address of the router, or correct that of the gateway.',
}

export const addressFindingKinds = [
  addressRepeated, addressOutsideSubnet, addressNotValid, addressOfSubnetItself, gatewayOutsideSubnet, dynamicRangeUnusable, addressesNotRecorded,
  staticInDynamicRange, gatewayNotOnBoard,
] as const
