import fc from 'fast-check'
import { expect, it } from 'vitest'
import { aCable, aCableType, anEquipment, aNetwork, aVessel } from '../../support/vessel-builder.js'
import { ethernetOf, port } from './support.js'

/** Null, zero and what makes no sense, besides what does. */
const odd = fc.option(fc.constantFrom(0, 1, 10, 100, 1000))
const tag = fc.integer({ min: 0, max: 7 }).map(i => `P${i}`)
const status = fc.constantFrom(null, 'planned' as const, 'removed' as const)
const address = fc.constantFrom(null, '', '10.0.0.1', '10.0.0.0', '10.0.0.1/8', 'x', 'fe80::1', '300.1.1.1')
const item = fc.record({
  kind: fc.constantFrom('network switch', 'display', 'connector', 'terminal block', 'mobile-data router', 'source selector'), status, address,
  addressing: fc.constantFrom(null, 'static' as const, 'dynamic' as const, 'reserved' as const), passesEthernet: fc.option(fc.boolean()), loopProtection: fc.option(fc.boolean()),
  networkPowerW: odd, powerBudgetW: odd, powerVoltageV: fc.constantFrom(null, 1, 48),
  ports: fc.array(fc.record({ name: fc.constantFrom('1', '2'), speedMbitPerS: odd, powerClass: fc.option(fc.integer({ min: 0, max: 8 })) }).map(({ name, ...of }) => port(name, of)), { maxLength: 3 }),
  streams: fc.array(fc.record({ name: fc.constant('s'), rateMbitPerS: fc.constantFrom(0, 5), toTags: fc.option(fc.array(tag, { maxLength: 3 })), multicast: fc.boolean() }), { maxLength: 2 }),
  dataFromTags: fc.array(fc.oneof(tag, fc.constant('EX1')), { maxLength: 2 }),
})
const end = fc.record({ at: fc.oneof(tag, fc.constant('nowhere')), terminal: fc.constantFrom('', ':1', ':2', ':3') }).map(({ at, terminal }) => at + terminal)
const vessel = fc.record({
  items: fc.array(item, { maxLength: 8 }),
  cables: fc.array(fc.record({ from: end, to: end, status, lengthM: fc.constantFrom(null, 0, 20, 200), typeTag: fc.constantFrom(null, 'ETH', 'CX', 'gone') }), { maxLength: 12 }),
  subnet: fc.constantFrom(null, '10.0.0.0/24', '10.0.0.0/32', '10.0.0.0/0', 'fe80::/10', 'x'), gatewayAddress: address, first: address, last: address,
  switchTags: fc.array(tag, { maxLength: 3 }), equipmentTag: fc.option(tag), antennaTags: fc.array(tag, { maxLength: 2 }),
}).map(({ items, cables, first, last, equipmentTag, antennaTags, ...network }) => aVessel({
  cableTypes: [aCableType({ tag: 'ETH', use: 'ethernet' }), aCableType({ tag: 'CX', use: 'coax' })],
  equipment: items.map((given, i) => anEquipment({ tag: `P${i}`, ...given })),
  cables: cables.map((cable, i) => aCable({ tag: `W${i}`, carries: 'none', ...cable })),
  ethernetNetworks: [aNetwork({ tag: 'A', ...network, dynamicRange: first === null || last === null ? null : [first, last] as const }), aNetwork({ tag: 'B', switchTags: ['P0'], subnet: '10.0.0.0/24' })],
  wirelessNetworks: [{ tag: 'WL', name: '', purpose: null, accessPointTag: equipmentTag, networkTag: 'A', band: null, channel: null, security: '', forGuests: null }],
  outsideLinks: [{ tag: 'EX1', name: 'x', purpose: null, kind: 'other', equipmentTag, antennaTags, downMbitPerS: null, upMbitPerS: null, provider: null, priorityNumber: null, coverage: null }],
}))

it('no vessel, however odd, makes the pass fail; every figure is one, every cable is in one link at most', () => {
  fc.assert(fc.property(vessel, of => {
    const results = ethernetOf(of)
    const cables = results.links.flatMap(({ cableTags }) => cableTags)
    expect(new Set(cables).size).toBe(cables.length)
    const texts = [...results.findings.flatMap(({ message, remedy }) => [message, remedy]), ...results.notAssessed.map(({ reason }) => reason)]
    expect(texts.filter(text => /undefined|NaN|Infinity|\bnull\b/.test(text))).toEqual([])
  }), { numRuns: 400 })
})
