import type { StationCheckWords } from '../../../check-words'

export const lampPlacingWords: StationCheckWords = {
  'lights.heights': {
    title: 'Heights of lamps and reflectors',
    question: 'How high do the rear lamps and the rear reflectors sit?',
    how: 'On level ground, boat on: measure to the middle of the lamp and of the reflector.',
    criterion: {
      us: 'Rear lamps 15 to 72 in, reflectors 15 to 60 in above the ground.',
      eu: 'Indicators 350 to 1500 mm, triangles 250 to 900 mm above the ground. UK rules, as a model.',
    },
    consequence: 'Too low is not seen in traffic; too high dazzles and misses the headlamps.',
    fields: { lamps: { label: 'Rear lamps above ground' }, reflectors: { label: 'Rear reflectors above ground' } },
    outcomes: {
      inside: { because: 'Lamps at {lamps}, reflectors at {reflectors}.' },
      'lamps outside': { because: 'Lamps at {lamps}: outside the range.', remedy: 'Move the lamps before the next trip.' },
      'reflectors outside': { because: 'Reflectors at {reflectors}: outside the range.', remedy: 'Move the reflectors before the next trip.' },
      'both outside': { because: 'Lamps at {lamps}, reflectors at {reflectors}: both outside the range.', remedy: 'Move both before the next trip.' },
    },
  },
  'lights.identification-cluster': {
    title: 'Identification lamps',
    question: 'How many lamps stand in the middle behind, and how far apart?',
    how: 'Count the red lamps of the cluster and measure from centre to centre.',
    criterion: 'Three, with centres 6 to 12 in (152 to 305 mm) apart.',
    consequence: 'They tell a driver behind that a wide vehicle is ahead.',
    fields: { lamps: { label: 'Lamps in the cluster' }, spacing: { label: 'Centre to centre', hint: 'Not needed when there are not three.' } },
    outcomes: {
      right: { because: 'Three lamps, {spacing} apart.' },
      'not three': { because: '{lamps} in the cluster; three are asked.', remedy: 'Fit a cluster of three before the next trip.' },
      'wrong spacing': { because: 'Three lamps, {spacing} apart; 6 to 12 in (152 to 305 mm) are asked.', remedy: 'Space them anew before the next trip.' },
      'width not known': { because: 'There are none; whether they are called for cannot be worked out, because the trailer’s width is not known.' },
    },
  },
  'lights.conspicuity': {
    title: 'Conspicuity tape',
    question: 'Is the red and white tape whole along sides and rear?',
    how: 'Shine a torch along it; lift an edge with a fingernail.',
    criterion: 'On trailers from 80 in (2.03 m) wide and over 10,000 lb (4,536 kg).',
    consequence: 'A long dark trailer across the road is not seen.',
    outcomes: {
      whole: { option: 'Whole', because: 'The tape is whole.' },
      'lifting or dirty': { option: 'Lifting or dirty', because: 'The tape lifts or has gone dull.', remedy: 'Clean or renew it within a month.' },
      missing: { option: 'Missing', because: 'The tape is missing.', remedy: 'Fit it before the next trip.' },
      'size not known': { because: 'There is none; whether it is called for cannot be worked out, because the trailer’s width or maximum mass is not known.' },
    },
  },
  'lights.mounting': {
    title: 'Lamp mounting',
    question: 'Are the lamps firm and sealed?',
    how: 'Shake each lamp, look at brackets, nuts and the seal round lens and cable.',
    criterion: 'Firm on sound brackets, sealed against water.',
    consequence: 'A loose lamp breaks its wires; a leaking one rots from inside.',
    outcomes: {
      'firm and sealed': { option: 'Firm and sealed', because: 'The lamps are firm and sealed.' },
      'bracket rusted': { option: 'Bracket rusted', because: 'A lamp bracket is rusted.', remedy: 'Clean and coat or renew it at the next service.' },
      'seal open': { option: 'Seal open', because: 'A lamp’s seal is open.', remedy: 'Seal or renew it within a month.' },
      loose: { option: 'Loose', because: 'A lamp is loose.', remedy: 'Fasten it before the next trip.' },
      'hanging by its wires': { option: 'Hanging by its wires', because: 'A lamp hangs by its wires.', remedy: 'Fasten or renew it before it is towed.' },
    },
  },
  'lights.number-plate': {
    title: 'Number plate',
    question: 'Is the number plate there, held and readable with the boat on?',
    how: 'Read it from twenty paces, boat on, and shake it.',
    criterion: 'There, firm, readable and not hidden. Local law says which plate a trailer carries.',
    consequence: 'A stop at the roadside.',
    outcomes: {
      'readable and held': { option: 'Readable and held', because: 'The number plate is readable and firm.' },
      'not called for here': { option: 'None called for here', because: 'No plate is called for where it is kept.' },
      'dirty or bent': { option: 'Dirty or bent', because: 'The number plate is dirty or bent.', remedy: 'Clean or renew it before the next trip.' },
      'hidden by the boat': { option: 'Hidden by the boat', because: 'The boat hides the number plate.', remedy: 'Carry it on a light board before it is towed.' },
      missing: { option: 'Missing', because: 'The number plate is missing.', remedy: 'Fit it before it is towed.' },
    },
  },
}
