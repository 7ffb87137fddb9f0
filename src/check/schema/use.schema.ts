/** How the boat is used and what was measured on her: operating modes, duties, measurements. */
import { z } from 'zod'
import { date, numberBetween, oneOf, percentOf, periods, quantity, tag, text, wholeNumber } from './fields.js'

export const operatingModeSchema = z.strictObject({
  tag: tag('Key by which duties name the mode.'),
  name: text('What it is called on board.'),
  purpose: text('What it stands for.').optional(),
  days: wholeNumber('Days that are reckoned hour by hour; 1 when left out.', { min: 1, max: 31 }).optional(),
  month: wholeNumber('Month, which decides what the sun gives.', { min: 1, max: 12 }).optional(),
  sunshine: percentOf('Share of the hours of daylight in which the sun shines; 50 % when left out.').optional(),
  'start-charge': percentOf('State of charge of the batteries at the start; 100 % when left out.').optional(),
})

export const dutySchema = z.strictObject({
  item: tag('Load or source that runs: equipment, or a circuit for all that it feeds.'),
  mode: tag('Operating mode.'),
  hours: periods('When it runs; the whole day when left out.').optional(),
  duty: percentOf('Share of its current that it takes, or gives, on average in those hours; 100 % when left out.').optional(),
  current: quantity('current', 'In place of its own current.').optional(),
  speed: quantity('speed', 'Speed of the engine that drives an alternator.').optional(),
})

export const measurementSchema = z.strictObject({
  number: text('Number of the reading, as on the test sheet.'),
  subject: tag('Circuit, cable, CAN bus, battery or item that was measured.'),
  at: tag('The load at which a circuit was measured, where it has several; the device or tee at which a CAN bus was.').optional(),
  date: date('When.').optional(),
  by: text('Who.').optional(),
  instrument: text('With what.').optional(),
  voltage: quantity('voltage', 'Voltage at the load, with the load on; of a battery, at its posts.').optional(),
  'source-voltage': quantity('voltage', 'Voltage at the same time at the source: the battery, or whatever the chain of circuits starts from.').optional(),
  'voltage-drop': quantity('voltage', 'Voltage drop from the source to the load and back.').optional(),
  current: quantity('current', 'Current of the circuit or item at the same time; without it a voltage drop cannot be held against the calculated one.').optional(),
  insulation: quantity('insulation resistance', 'Insulation resistance between the live conductors, joined, and earth or hull, with equipment disconnected.').optional(),
  polarity: oneOf(['right', 'reversed'], 'Whether positive and negative, or line and neutral, are where they belong.').optional(),
  'residual-current': quantity('current', 'Residual current at which the device tripped.').optional(),
  'trip-time': quantity('short time', 'Time in which it tripped.').optional(),
  'internal-resistance': quantity('internal resistance', 'Internal resistance of a battery as an instrument shows it; two voltages under different currents on one day serve as well.').optional(),
  resistance: quantity('resistance', 'Of a CAN bus: between its data wires, unpowered.').optional(),
  'bus-load': percentOf('Of a CAN bus: share of its capacity in use.').optional(),
  vswr: numberBetween('Voltage standing wave ratio, read at the equipment, cable or antenna that is named.', { min: 1, max: 100 }).optional(),
  notes: text('Anything worth knowing.').optional(),
})
