/** Addresses against Node's own list of addresses and ranges (node:net), which shares nothing with the library of the pass, and against sums on 32 bits. */
import { BlockList } from 'node:net'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { firstHost, isIn, lastHost, readAddress, readSubnet, written } from '../../../src/calculate/ethernet/ip.js'
import type { Equipment, EthernetNetwork, Vessel } from '../../../src/model/vessel.js'
import { aNetwork } from '../../support/vessel-builder.js'
import { aDevice, aSwitch, ethernetOf, foundIn, link, networkVessel } from './support.js'

const quad = (value: number): string => [24, 16, 8, 0].map(shift => (value >>> shift) & 255).join('.')
const anyAddress = fc.integer({ min: 0, max: 2 ** 32 - 1 })

describe('reading', () => {
  it.each([
    ['192.168.50.10', '192.168.50.10'], [' 10.0.0.1 ', '10.0.0.1'], ['192.168.50', null], ['192.168.50.256', null], ['192.168.050.1', null], ['1.2.3.4.5', null], ['router', null], ['', null],
    ['192.168.50.10/24', null], ['fe80::1', 'fe80::1'], ['FE80:0:0:0:0:0:0:1', 'fe80::1'], ['fe80:::1', null],
  ])('"%s" as an address is %s', (text, expected) => expect(readAddress(text)?.text ?? null).toBe(expected))
  it.each([['192.168.50.0/24', '192.168.50.0/24'], ['192.168.50.77/24', '192.168.50.0/24'], ['10.0.0.0/33', null], ['10.0.0/8', null], ['10.0.0.0', null], ['fd00::/64', 'fd00::/64']])(
    '"%s" as a range is %s', (text, expected) => expect(readSubnet(text)?.text ?? null).toBe(expected))

  it('an address lies in a subnet when Node says so', () => {
    fc.assert(fc.property(anyAddress, anyAddress, fc.integer({ min: 1, max: 32 }), fc.boolean(), (base, other, prefix, near) => {
      // Near: an address that differs in the last bits only, else hardly any would lie within.
      const probe = near ? ((base ^ (other & 1023)) >>> 0) : other
      const list = new BlockList()
      list.addSubnet(quad(base), prefix, 'ipv4')
      expect(isIn(readAddress(quad(probe))!, readSubnet(`${quad(base)}/${prefix}`)!)).toBe(list.check(quad(probe)))
    }), { numRuns: 500 })
  })
  it('first and last address for devices are those of sums on 32 bits', () => {
    fc.assert(fc.property(anyAddress, fc.integer({ min: 1, max: 30 }), (base, prefix) => {
      const mask = (0xffffffff << (32 - prefix)) >>> 0
      const subnet = readSubnet(`${quad(base)}/${prefix}`)!
      expect([written(firstHost(subnet), subnet), written(lastHost(subnet), subnet)]).toEqual([quad(((base & mask) >>> 0) + 1), quad((((base & mask) | ~mask) >>> 0) - 1)])
    }))
  })
})

const device = (tag: string, address: string | null, given: Partial<Equipment> = {}): Equipment => aDevice(tag, { address, addressing: address === null ? null : 'static', ...given })
const onNetwork = (network: Partial<EthernetNetwork>, devices: readonly Equipment[], more: Partial<Vessel> = {}): Vessel => networkVessel({
  equipment: [aSwitch('N1', devices.length), ...devices],
  cables: devices.map(({ tag }, i) => link(`W${i + 1}`, `N1:${i + 1}`, `${tag}:lan`)),
  ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1'], subnet: '192.168.50.0/24', ...network })],
  ...more,
})
const found = (network: Partial<EthernetNetwork>, devices: readonly Equipment[]) => foundIn(ethernetOf(onNetwork(network, devices)))

describe('findings', () => {
  it('none where all is in order', () =>
    expect(found({ gatewayAddress: '192.168.50.1', dynamicRange: ['192.168.50.100', '192.168.50.199'] }, [device('K3', '192.168.50.1'), device('P1', '192.168.50.11'), device('P2', null, { addressing: 'dynamic' })])).toEqual([]))
  it('one address on two items, or three, is one finding', () => {
    const { findings } = ethernetOf(onNetwork({}, [device('P1', '192.168.50.11'), device('P2', '192.168.50.11'), device('P3', '192.168.50.11')]))
    expect(findings).toMatchObject([{ id: 'ETH105', subject: { id: 'P3' }, context: { address: '192.168.50.11', others: 'P1 and P2', free: '192.168.50.1' } }])
  })
  it('an address that was given out and read is not a fixed one', () => expect(found({}, [device('P1', '192.168.50.11'), device('P2', '192.168.50.11', { addressing: 'dynamic' })])).toEqual([]))
  it('the wrong subnet', () => expect(found({}, [device('P1', '192.168.51.11')])).toEqual(['ETH106 P1']))
  it('an address set within what is given out, unless it is reserved there', () => {
    const range = { dynamicRange: ['192.168.50.100', '192.168.50.199'] as const }
    expect(found(range, [device('P1', '192.168.50.100')])).toEqual(['ETH301 P1'])
    expect(found(range, [device('P1', '192.168.50.100', { addressing: 'reserved' }), device('P2', '192.168.50.200')])).toEqual([])
  })
  it.each([['192.168.50.0', 'the first, the name'], ['192.168.50.255', 'the last, the call to all']])('%s', (address, which) =>
    expect(ethernetOf(onNetwork({}, [device('P1', address)])).findings).toMatchObject([{ id: 'ETH111', context: { which } }]))
  it('what is no address', () => expect(found({ subnet: '192.168.50.0', gatewayAddress: '192.168.50', dynamicRange: ['a', 'b'] }, [device('P1', '192.168.50.300')])).toEqual(['ETH110 LAN', 'ETH110 LAN', 'ETH110 LAN', 'ETH110 P1']))
  it('a gateway outside, or that is nobody', () => {
    expect(found({ gatewayAddress: '192.168.51.1' }, [])).toEqual(['ETH112 LAN'])
    expect(found({ gatewayAddress: '192.168.50.1' }, [device('P1', '192.168.50.11')])).toEqual(['ETH302 LAN'])
  })
  it.each([[['192.168.50.200', '192.168.50.100'], 'ends before it begins'], [['192.168.50.200', '192.168.51.10'], 'is not within 192.168.50.0/24']])('a range %s', (dynamicRange, fault) =>
    expect(ethernetOf(onNetwork({ dynamicRange: dynamicRange as [string, string] }, [])).findings).toMatchObject([{ id: 'ETH113', context: { fault } }]))
  it('of items without an address one note together, of switches none', () => {
    expect(ethernetOf(onNetwork({}, [device('P1', null), device('P2', null)])).findings).toMatchObject([{ id: 'ETH201', evidence: { itemCount: 2 }, context: { items: 'P1 and P2' } }])
  })
  it('where nothing is recorded of addresses, that is said once and nothing found', () => {
    const results = ethernetOf(onNetwork({ subnet: null }, [device('P1', null)]))
    expect([results.findings, results.notAssessed]).toEqual([[], [{ subjectTag: 'LAN', reason: 'addresses: the address range of the network is not recorded' }]])
  })
  it('an item on two networks has an address of one of them', () => {
    const two = (address: string) => foundIn(ethernetOf(networkVessel({
      equipment: [aSwitch('N1', 2), aSwitch('N2', 2), device('K3', address, { kind: 'mobile-data router', passesEthernet: false, ports: aSwitch('X', 2).ports })],
      cables: [link('W1', 'N1:1', 'K3:1'), link('W2', 'N2:1', 'K3:2')],
      ethernetNetworks: [aNetwork({ tag: 'A', switchTags: ['N1'], subnet: '10.0.0.0/24' }), aNetwork({ tag: 'B', switchTags: ['N2'], subnet: '10.0.1.0/24', gatewayAddress: '10.0.1.1' })],
    })))
    expect(two('10.0.1.1')).toEqual([])
    expect(two('10.0.2.1')).toContain('ETH106 K3')
    // Known by its address on the other network: nothing can be said of the gateway.
    expect(two('10.0.0.1')).toEqual([])
  })
  it('two networks of one range share their addresses', () => {
    const results = ethernetOf(networkVessel({
      equipment: [aSwitch('N1', 1), aSwitch('N2', 1), device('P1', '10.0.0.5'), device('P2', '10.0.0.5')], cables: [link('W1', 'N1:1', 'P1:lan'), link('W2', 'N2:1', 'P2:lan')],
      ethernetNetworks: [aNetwork({ tag: 'A', switchTags: ['N1'], subnet: '10.0.0.0/24' }), aNetwork({ tag: 'B', switchTags: ['N2'], subnet: '10.0.0.9/24' })],
    }))
    expect(foundIn(results)).toEqual(['ETH105 P2'])
  })
  it('what is on the air and has an address of the range counts as well', () => {
    const vessel = onNetwork({}, [device('P1', '192.168.50.1')])
    const results = ethernetOf({ ...vessel, equipment: [...vessel.equipment, device('P9', '192.168.50.1'), device('P8', '10.9.9.9')] })
    expect(foundIn(results)).toEqual(['ETH105 P9'])
    expect(results.networks.get('LAN')?.addresses.members.map(({ tag, cabled }) => [tag, cabled])).toEqual([['N1', true], ['P1', true], ['P9', false]])
  })
})

describe('what is free', () => {
  it('is the subnet without its ends, what is given out and what is taken, and the lowest is next', () => {
    const { addresses } = ethernetOf(onNetwork({ gatewayAddress: '192.168.50.1', dynamicRange: ['192.168.50.2', '192.168.50.101'] },
      [device('K3', '192.168.50.1'), device('P1', '192.168.50.102'), device('P2', '192.168.50.50', { addressing: 'reserved' })])).networks.get('LAN')!
    // 254 less 100 given out (with the reserved one) less 2.
    expect(addresses).toMatchObject({ firstHost: '192.168.50.1', lastHost: '192.168.50.254', nextFree: '192.168.50.103', free: { output: { hostCount: 254, freeCount: 152 } } })
  })
  it('is found by going through every address of the subnet', () => {
    const host = fc.integer({ min: 0, max: 31 })
    fc.assert(fc.property(fc.array(host, { maxLength: 12 }), host, host, (hosts, a, b) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)]
      const { addresses } = ethernetOf(onNetwork({ subnet: '10.0.0.0/27', dynamicRange: [`10.0.0.${low}`, `10.0.0.${high}`] }, hosts.map((n, i) => device(`P${i}`, `10.0.0.${n}`)))).networks.get('LAN')!
      const free = Array.from({ length: 30 }, (_, i) => i + 1).filter(n => !hosts.includes(n) && !(n >= low && n <= high))
      expect(addresses.nextFree).toBe(free.length === 0 ? null : `10.0.0.${free[0]}`)
      expect(addresses.free).toMatchObject({ output: { freeCount: free.length } })
    }), { numRuns: 100 })
  })
  it('none is left in a full subnet', () => {
    const { addresses } = ethernetOf(onNetwork({ subnet: '10.0.0.0/30' }, [device('P1', '10.0.0.1'), device('P2', '10.0.0.2')])).networks.get('LAN')!
    expect(addresses).toMatchObject({ nextFree: null, free: { output: { freeCount: 0 } } })
  })
  it('is not counted in IPv6', () => expect(ethernetOf(onNetwork({ subnet: 'fd00::/64' }, [device('P1', 'fd00::5')])).networks.get('LAN')?.addresses.free.status).toBe('not computed'))
})
