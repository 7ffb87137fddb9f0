import type { Method } from '../method.js'

export type FreeAddressesInput = Readonly<{ prefixNumber: number; dynamicCount: number; takenCount: number }>
export type FreeAddressesOutput = Readonly<{ hostCount: number; freeCount: number }>

/**
 * Addresses of a subnet (IPv4) that can still be set on a device.
 *
 * Formula   N = 2^(32 − p) − 2,   N_f = N − N_d − N_s
 * Units     p length of the prefix, N_d addresses that are given out, N_s addresses taken outside that range; N and N_f addresses
 * Source    rfc-4632
 * Assumes   the first address of the subnet names it and the last calls all: neither is for a device
 */
export function freeAddresses(q: FreeAddressesInput): FreeAddressesOutput {
  const hostCount = 2 ** (32 - q.prefixNumber) - 2
  return { hostCount, freeCount: hostCount - q.dynamicCount - q.takenCount }
}

export const freeAddressesMethod: Method<FreeAddressesInput, FreeAddressesOutput> = {
  id: 'free-addresses',
  title: 'Free addresses of a subnet',
  formula: String.raw`N = 2^{32-p} - 2 \qquad N_f = N - N_d - N_s`,
  symbols: { prefixNumber: 'p', dynamicCount: 'N_d', takenCount: 'N_s', hostCount: 'N', freeCount: 'N_f' },
  citations: [{ source: 'rfc-4632', place: 'prefix notation' }],
  assumes: ['The first address of a subnet names the subnet and the last calls all on it: neither is for a device.', 'Addresses that a device was given on board without a record are not known.'],
  compute: freeAddresses,
  notApplicable: q => (q.prefixNumber >= 1 && q.prefixNumber <= 30 ? null : 'a subnet of that prefix has no addresses of its own to set'),
  checks: [
    { origin: 'by hand', place: '/24 with 100 given out and 10 set: 256 − 2 = 254; 254 − 100 − 10', input: { prefixNumber: 24, dynamicCount: 100, takenCount: 10 }, expected: { hostCount: 254, freeCount: 144 }, tolerance: 0 },
    { origin: 'by hand', place: '/29 with 3 set: 8 − 2 = 6; 6 − 3', input: { prefixNumber: 29, dynamicCount: 0, takenCount: 3 }, expected: { hostCount: 6, freeCount: 3 }, tolerance: 0 },
    { origin: 'published', place: 'RFC 4632, from memory: a /16 holds 65 536 addresses', input: { prefixNumber: 16, dynamicCount: 0, takenCount: 0 }, expected: { hostCount: 65534 }, tolerance: 0 },
  ],
}
