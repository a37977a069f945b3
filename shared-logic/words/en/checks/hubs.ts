import type { StationCheckWords } from '../../check-words'

export const hubWords: StationCheckWords = {
  'hubs.oil-condition': {
    title: 'Oil condition',
    question: 'What does the oil in the hub look like?',
    how: 'Wipe the sight glass and look against the light. Turn the wheel and look again.',
    criterion: 'Clear or lightly tinted oil passes. Milky oil holds water: the hub is opened, inspected and refilled.',
    consequence: 'Water in the oil pits the bearings; a failed bearing lets the wheel go.',
    outcomes: {
      clear: { option: 'Clear', because: 'The oil is clear.' },
      dark: { option: 'Dark', because: 'The oil is dark.', remedy: 'Change the oil and look for wear at the next service.' },
      milky: { option: 'Milky', because: 'The oil is milky: water has got in.', remedy: 'Open the hub, inspect bearings and seal, renew what is pitted, refill.' },
      'metal in it': { option: 'Metal in it', because: 'There is metal in the oil.', remedy: 'Open the hub and renew the bearings.' },
    },
  },
  'hubs.oil-level': {
    title: 'Oil level',
    question: 'How high does the oil stand in the sight glass?',
    how: 'Stand the rig level and let the oil settle. Drag the level in the drawing, or type it in percent of the glass.',
    criterion: 'At or above the halfway mark passes.',
    consequence: 'A bearing that runs short of oil overheats and seizes.',
    fields: { level: { label: 'Oil level in the glass' } },
    outcomes: {
      above: { because: 'Oil above halfway.' },
      half: { because: 'Oil at the halfway mark.' },
      below: { because: 'Oil below halfway.', remedy: 'Top up before the next trip and look for the leak.' },
      empty: { because: 'No oil to be seen in the glass.', remedy: 'Find the leak, renew the seal, inspect the bearings and refill before it rolls.' },
    },
  },
}
