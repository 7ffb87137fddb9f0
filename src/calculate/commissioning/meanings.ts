/**
 * What it usually means when a reading is off, by what was read and which way it is off. Common practice, no source:
 * an order in which to look, not a diagnosis.
 */
import type { CheckKind, Deviation, Meaning } from '../../model/results/commissioning.js'

export const meanings: Readonly<Record<CheckKind, Readonly<Partial<Record<Deviation, Meaning>>>>> = {
  'voltage drop': {
    'above': {
      usually: [
        'a bad crimp or a corroded or loose terminal', 'a fuse holder, switch or breaker with worn contacts',
        'a cable that is thinner or longer than recorded', 'an extra load on the same cable', 'a bad way back: the negative busbar or its cable',
      ],
      lookFirst: 'Measure the drop piece by piece with the load on, across each fuse, switch and joint, positive and negative side; the piece that loses most is the place, and it is often warm.',
    },
    'below': {
      usually: [
        'the load drew less than the current written down', 'the voltage was read at the panel, not at the source', 'a cable that is thicker or shorter than recorded',
        'a second way back, through an engine, a shield or the hull',
      ],
      lookFirst: 'Check that current and both voltages were read at the same moment, at the terminals named, then that size and length of the cable are as recorded.',
    },
    'too high as calculated': {
      usually: ['the cable is too thin for its length and load: the calculation says so too', 'the load draws more than it was designed for'],
      lookFirst: 'Fit a larger conductor in the part that loses most, shorten the way, or move the load to a feed nearer to it.',
    },
  },
  'voltage': {
    'above': {
      usually: ['a charger or alternator regulator set too high, or set for another battery', 'equalising charge during the reading', 'a supply of another nominal voltage'],
      lookFirst: 'Check what charges at the time and at which voltage, before anything else is switched on: too much voltage destroys electronics.',
    },
    'below': {
      usually: ['a battery that is discharged or failing', 'too much lost on the way: bad joint, thin or long cable', 'a charger or source that is off'],
      lookFirst: 'Measure at the battery at the same moment; if it is low there too, charge and test the battery, else look for the loss on the way.',
    },
  },
  'current': {
    'above': {
      usually: ['a load that works harder than it should: blocked pump, stiff bearing, iced refrigerator', 'an extra load on the circuit', 'a current that is recorded too low', 'current leaking away through damp or damage'],
      lookFirst: 'Look for what else is on the circuit, then see that the load runs freely, then compare with its maker’s figure.',
    },
    'below': {
      usually: ['the load was not at full work: dimmed, on standby, pump running dry', 'one of several loads was off or is dead', 'a voltage that is too low', 'a current that is recorded too high'],
      lookFirst: 'Check that every load of the circuit was on and at full work while the current was read.',
    },
  },
  'insulation resistance': {
    'below': {
      usually: ['equipment or a filter still connected during the test', 'damp in a connector, junction box or lamp', 'insulation that is chafed, crushed or cut', 'salt and dirt across terminals'],
      lookFirst: 'Check that all equipment was disconnected, then open the circuit half by half and measure each half until the place is found.',
    },
  },
  'polarity': {
    'reversed': {
      usually: ['the two cores exchanged at one end', 'a plug or socket wired the wrong way round', 'a shore socket or lead with line and neutral exchanged'],
      lookFirst: 'Correct it before the circuit is switched on again: make it dead, and exchange the cores at the end that does not agree with the drawing.',
    },
  },
  'trip current': {
    'above': {
      usually: ['a device that sticks from corrosion or long rest', 'a device of a higher rating than recorded', 'a tester set to another form of current'],
      lookFirst: 'Replace the device if a second test says the same, and leave the supply off until then: it may not save a life.',
    },
    'below': {
      usually: ['leakage of the circuits behind it adds to the test current', 'a device that has aged', 'a device of a lower rating than recorded'],
      lookFirst: 'Measure again with every circuit behind the device disconnected; if it trips as it should, look for the leakage circuit by circuit.',
    },
  },
  'trip time': {
    'above': {
      usually: ['a device that sticks from corrosion or long rest', 'a delayed (selective) device where an instant one belongs', 'a test at less than the rated residual current'],
      lookFirst: 'Replace the device if a second test at its rated residual current says the same, and leave the supply off until then: it may not save a life.',
    },
  },
  'internal resistance': {
    'above': {
      usually: ['a battery that is aging or was left discharged', 'a loose or corroded post, link or lug within the reading', 'a cold or a nearly empty battery', 'one weak block in a bank'],
      lookFirst: 'Measure again on the posts themselves, battery charged and at room temperature, then block by block.',
    },
    'below': {
      usually: ['a recorded value that is that of one block, or of another model', 'readings taken while a charger was on', 'an instrument that measures with alternating current and reads less than a load test'],
      lookFirst: 'Check the recorded value against the maker’s sheet, and how both were found.',
    },
  },
  'resistance between data wires': {
    'above': {
      usually: ['a terminator that is missing or of another value', 'a backbone that is open at a plug'],
      lookFirst: 'Find the terminator at each end of the backbone and measure it on its own, then open the backbone in the middle and measure towards each end.',
    },
    'below': {
      usually: ['a third terminator, often one inside a device', 'water or a pinched cable between the data wires', 'a bus that was not switched off'],
      lookFirst: 'Check that the bus was dead, then take devices off one by one until the reading is right.',
    },
  },
  'voltage on a bus': {
    'above': {
      usually: ['a charger or a supply of its own that is set too high', 'a supply of another nominal voltage'],
      lookFirst: 'Measure at the power insertion point, with all that charges off and then on.',
    },
    'below': {
      usually: ['a plug of the backbone with a bad contact', 'devices that are not recorded', 'a battery that was low'],
      lookFirst: 'Measure at the power insertion point at the same moment, then from tee to tee outwards: the stretch that loses most has the fault.',
    },
  },
  'load of a bus': {
    'above': {
      usually: ['a device that was added and not recorded', 'a device that sends faster than its maker’s usual rate', 'a bad joint or terminator, so that frames are sent again'],
      lookFirst: 'List the devices that are seen on the bus and compare with the record, then look at the count of faults.',
    },
    'below': {
      usually: ['a device that was off or asleep', 'a device that is not seen on the bus'],
      lookFirst: 'Switch everything on, and compare the devices that are seen with the record.',
    },
  },
  'standing wave ratio': {
    'above': {
      usually: ['a bad plug: braid not soldered, centre pin loose, water in it', 'an antenna that is damaged or not made for the frequency', 'a crushed or wet cable', 'metal close to the antenna'],
      lookFirst: 'Stop sending; look at the plugs first, then read again with a dummy load in place of the antenna: if it is good then, the antenna is at fault.',
    },
  },
}

/** Null where such a deviation is not known. */
export const meaningOf = (kind: CheckKind, deviation: Deviation): Meaning | null => meanings[kind][deviation] ?? null
