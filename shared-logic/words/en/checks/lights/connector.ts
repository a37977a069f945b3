import type { StationCheckWords } from '../../../check-words'

export const connectorWords: StationCheckWords = {
  'lights.connector': {
    title: 'Plug condition',
    question: 'Is the plug clean, whole and gripped on its cable?',
    how: 'Look at every pin, the latch, the cover and the cable’s grip; bend the cable behind the plug with the lamps on.',
    criterion: 'Pins bright and straight, body and latch whole, cable held.',
    consequence: 'All lamps, and perhaps the brakes, hang on this plug.',
    outcomes: {
      'clean and whole': { option: 'Clean and whole', because: 'The plug is clean and whole.' },
      'dull pins': { option: 'Pins dull', because: 'The pins are dull.', remedy: 'Clean them and use contact grease at the next service.' },
      'cable pulled from its grip': { option: 'Cable pulled from its grip', because: 'The cable has been pulled from its grip.', remedy: 'Refit it so that no wire carries the pull.' },
      'green or pitted pins': { option: 'Pins green or pitted', because: 'The pins are green or pitted.', remedy: 'Renew the plug before the next trip.' },
      'bent or burnt pins': { option: 'Pins bent or burnt', because: 'Pins are bent or burnt.', remedy: 'Renew the plug and look at the socket before the next trip.' },
      'body or latch broken': { option: 'Body or latch broken', because: 'The plug’s body or latch is broken.', remedy: 'Renew the plug before the next trip.' },
    },
  },
  'lights.plug-suits': {
    title: 'Plug for its equipment',
    question: 'Which plug has the trailer?',
    how: 'Count the contacts; compare with the rig’s brakes and lamps.',
    criterion: 'The plug carries what the rig needs: a feed for electric brakes, for the reverse lock-out of surge disc brakes, for reversing and fog lamps where they are called for.',
    consequence: 'Without a contact for it the brake or lamp is never fed.',
    fields: { plug: { label: 'Plug', options: { '4 flat': '4-way flat', '5 flat': '5-way flat', '7 blade': '7-way blade', '7 round': '7-pin round', '13 round': '13-pin round' } } },
    outcomes: {
      suits: { because: 'The plug carries what the rig needs.' },
      'no brake feed': { because: 'The plug has no contact for electric brakes.', remedy: 'Fit a plug with a brake feed, and try the brakes, before it is towed.' },
      'no reversing feed': { because: 'The plug has no contact for reversing, which the rig needs.', remedy: 'Fit a plug with a reversing contact before the next trip.' },
      'no fog feed': { because: 'The plug has no contact for the rear fog lamp.', remedy: 'Fit a plug with a fog contact before the next trip.' },
      'layout not known': { because: 'Cannot be judged: layouts of this plug differ; test it by function.' },
      'brakes not known': { because: 'Cannot be worked out, because the kind of brakes is not known.' },
    },
  },
  'lights.plug-test': {
    title: 'Plug wired by function',
    question: 'Does each contact do what it should?',
    how: 'With a tester in the towing vehicle’s socket and one at the plug, work one function at a time. Go by function, never by colour: wirings differ.',
    criterion: 'Each function at its own contact, none crossed.',
    consequence: 'A crossed wire signals left when turning right, or feeds a lamp with the brakes.',
    fields: {
      result: { label: 'Result' },
      fault: {
        label: 'At fault',
        options: {
          'left turn': 'Left turn', 'right turn': 'Right turn', tail: 'Tail', stop: 'Stop', 'rear fog': 'Rear fog', reversing: 'Reversing', 'electric brakes': 'Electric brakes', return: 'Earth (return)',
        },
      },
    },
    outcomes: {
      'all right': { option: 'All right', because: 'Each contact does what it should.' },
      'one at fault': { option: 'One at fault', because: 'One function is at fault.', remedy: 'Test it contact by contact and wire it by function before it is towed.' },
      'fault at a pin': { because: 'One function is at fault: it belongs at pin {pin}.', remedy: 'Test that pin in socket, plug and loom, and mend it before it is towed.' },
      'fault at a blade': { because: 'One function is at fault: it belongs at {clock} o’clock, seen on the mating face with the latch up.', remedy: 'Test that blade in socket, plug and loom, and mend it before it is towed.' },
      'fault at the centre': { because: 'One function is at fault: it belongs at the centre pin.', remedy: 'Test the centre pin in socket, plug and loom before the next trip.' },
      'several crossed': { option: 'Several crossed', because: 'Several functions are crossed.', remedy: 'Rewire the plug by function before it is towed.' },
      'not tested': { option: 'Not tested', because: 'The plug was not tested.' },
    },
  },
}
