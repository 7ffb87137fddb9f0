/** Addresses and ranges as numbers, on top of the library that reads them. */
import ipaddr from 'ipaddr.js'

export interface Subnet {
  /** Written out: `192.168.50.0/24`. */
  readonly text: string
  readonly prefixNumber: number
  readonly version: 4 | 6
  /** First and last address, as numbers. */
  readonly first: bigint
  readonly last: bigint
}
export interface Address { readonly text: string; readonly version: 4 | 6; readonly value: bigint }

type Parsed = ipaddr.IPv4 | ipaddr.IPv6
const valueOf = (parsed: Parsed): bigint => parsed.toByteArray().reduce((sum, byte) => sum * 256n + BigInt(byte), 0n)
const addressOf = (parsed: Parsed): Address => ({ text: parsed.toString(), version: parsed.kind() === 'ipv4' ? 4 : 6, value: valueOf(parsed) })

/** Null for what is no address. Short forms such as `10.1`, which the library would read, are none here: nobody writes them on purpose. */
export function readAddress(written: string): Address | null {
  const text = written.trim()
  return ipaddr.IPv4.isValidFourPartDecimal(text) || ipaddr.IPv6.isValid(text) ? addressOf(ipaddr.parse(text)) : null
}

/** Null for what is no range with its prefix. An address within it stands for it as well. */
export function readSubnet(written: string): Subnet | null {
  const text = written.trim()
  const four = ipaddr.IPv4.isValidCIDRFourPartDecimal(text)
  if (!four && !ipaddr.IPv6.isValidCIDR(text)) return null
  const [family, prefixNumber] = four ? [ipaddr.IPv4, ipaddr.IPv4.parseCIDR(text)[1]] as const : [ipaddr.IPv6, ipaddr.IPv6.parseCIDR(text)[1]] as const
  const network = family.networkAddressFromCIDR(text)
  return { text: `${network.toString()}/${prefixNumber}`, prefixNumber, version: four ? 4 : 6, first: valueOf(network), last: valueOf(family.broadcastAddressFromCIDR(text)) }
}

/** Of IPv4 the first names the subnet and the last calls all; of /31 and /32, and of IPv6, all are for devices. */
export const keepsEnds = ({ version, prefixNumber }: Subnet): boolean => version === 4 && prefixNumber <= 30
export const firstHost = (subnet: Subnet): bigint => subnet.first + (keepsEnds(subnet) ? 1n : 0n)
export const lastHost = (subnet: Subnet): bigint => subnet.last - (keepsEnds(subnet) ? 1n : 0n)

export const isIn = ({ version, value }: Address, subnet: Subnet): boolean => version === subnet.version && value >= subnet.first && value <= subnet.last

/** The number as it is written. */
export function written(value: bigint, { version }: Pick<Subnet, 'version'>): string {
  const bytes = Array.from({ length: version === 4 ? 4 : 16 }, (_, i, size = version === 4 ? 4 : 16) => Number((value >> BigInt(8 * (size - 1 - i))) & 255n))
  return ipaddr.fromByteArray(bytes).toString()
}
