/** What transmits, and by which antenna and cable. */
import { z } from 'zod'
import { coaxKinds } from '../../references/tables/coax-attenuation.js'
import { aboveZero, numberBetween, oneOf, percentOf, quantity, text } from './fields.js'

export const transmitterSchema = z.strictObject({
  service: text('What it is used for, for example VHF voice or AIS.'),
  port: text('Its connector; left out where the antenna is built in.').optional(),
  power: aboveZero('power', 'Highest power at the connector.'),
  frequency: aboveZero('radio frequency', 'Frequency, or the middle of its band.'),
  duty: percentOf('Share of the time in which it transmits; all the time when left out, half of it for voice.').optional(),
})

export const radarSchema = z.strictObject({
  frequency: aboveZero('radio frequency', 'Frequency.').optional(),
  'peak-power': aboveZero('power', 'Peak power of the pulse.').optional(),
  pulse: aboveZero('pulse length', 'Longest pulse at its repetition rate.').optional(),
  repetition: aboveZero('rate', 'Pulses a second at that length.').optional(),
  'mean-power': aboveZero('power', 'Mean power, where there are no pulses or its maker states it.').optional(),
  gain: quantity('gain', 'Gain of its antenna.').optional(),
  'horizontal-beam': aboveZero('angle', 'Width of its beam.').optional(),
  'vertical-beam': aboveZero('angle', 'Height of its beam.').optional(),
  'safe-distance': quantity('length', 'Distance that people must keep, as its maker states it.').optional(),
})

export const antennaSchema = z.strictObject({
  gain: quantity('gain', 'Gain.').optional(),
  from: quantity('radio frequency', 'Lowest frequency.').optional(),
  to: quantity('radio frequency', 'Highest frequency.').optional(),
  length: quantity('length', 'Length above its mount.').optional(),
  vswr: numberBetween('Highest voltage standing wave ratio, as its maker states it.', { min: 1, max: 10 }).optional(),
  clearance: quantity('length', 'Distance to other antennas that its maker asks for.').optional(),
})

export const portLossSchema = z.strictObject({
  from: text('Connector.'),
  to: text('Connector.'),
  loss: quantity('loss', 'What is lost between them.'),
})

export const coaxKind = oneOf(coaxKinds, 'Kind of coaxial cable, where its maker’s figures are not at hand.')
export const attenuationSchema = z.strictObject({
  frequency: aboveZero('radio frequency', 'Frequency.'),
  loss: aboveZero('attenuation', 'Attenuation.'),
})
