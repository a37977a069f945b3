import type { StationCheckWords } from '../../../check-words'

export const axleGeometryWords: StationCheckWords = {
  'axles.tracking': {
    title: 'Tracking',
    question: 'How far to one side does the trailer run behind the towing vehicle?',
    how: 'Drive straight over a wet patch onto dry ground, or have somebody watch from behind, and measure how far the trailer’s tracks lie to one side of the vehicle’s.',
    criterion: 'Not more than 76 mm (3 in) to either side; a commercial rule, taken as benchmark.',
    consequence: 'A trailer that runs askew scrubs its tyres and sways.',
    fields: { offset: { label: 'Offset to one side' } },
    outcomes: {
      inside: { because: 'Runs {offset} to one side.' },
      noticeable: { because: 'Runs {offset} to one side: inside the benchmark, but to be seen.', remedy: 'Measure whether the axle stands square before the next trip.' },
      over: { because: 'Runs {offset} to one side; the benchmark is 76 mm (3 in).', remedy: 'Square the axle and check springs and hangers before the next trip.' },
    },
  },
  'axles.square': {
    title: 'Axle square',
    question: 'Is the axle as far from the coupling on the left as on the right?',
    how: 'Measure from the centre of the coupling to the same point of each spindle or spring seat, tape straight and level. For one axle of several the rest must be parallel to it.',
    criterion: 'Left and right within 3 mm (1/8 in) of each other.',
    consequence: 'An axle out of square steers: one-sided wear, heat, sway.',
    fields: { left: { label: 'Coupling to left end' }, right: { label: 'Coupling to right end' } },
    outcomes: {
      even: { because: 'Left and right differ by {difference}.' },
      'less on the left': { because: 'The left end stands {difference} further forward than the right.', remedy: 'Square the axle within a month, and look at the tyres for one-sided wear.' },
      'less on the right': { because: 'The right end stands {difference} further forward than the left.', remedy: 'Square the axle within a month, and look at the tyres for one-sided wear.' },
    },
  },
  'axles.ride-height': {
    title: 'Ride height',
    question: 'Does the frame stand level from side to side?',
    how: 'On level ground, tyres at pressure: measure from the ground to the same point of the left and right rail above the axle.',
    criterion: 'Left and right within 25 mm (1 in) of each other.',
    consequence: 'A low side is a tired spring, or a boat that does not sit in the middle.',
    fields: { left: { label: 'Left rail above ground' }, right: { label: 'Right rail above ground' } },
    outcomes: {
      even: { because: 'Left and right differ by {difference}.' },
      'less on the left': { because: 'The left side stands {difference} lower than the right.', remedy: 'See whether the boat sits in the middle, then look at the left spring, before the next trip.' },
      'less on the right': { because: 'The right side stands {difference} lower than the left.', remedy: 'See whether the boat sits in the middle, then look at the right spring, before the next trip.' },
    },
  },
}
