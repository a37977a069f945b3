import type { StationCheckWords } from '../../../check-words'

export const tyreFitWords: StationCheckWords = {
  'wheels.tyre-size': {
    title: 'Tyre size',
    question: 'Which size is moulded on the tyre?',
    how: 'Read it off the sidewall, with the letters before and within: ST205/75R15, 195/70R14C. R is radial, D or a dash is bias.',
    criterion: 'As the placard, kept in the rig’s record, has it.',
    consequence: 'Another size carries another load, and may foul the mudguard.',
    fields: { size: { label: 'Size on the sidewall' } },
    outcomes: {
      'as the record': { because: '{size}, as recorded for the rig.' },
      differs: { because: '{size} is fitted; {wanted} is recorded for the rig.', remedy: 'Compare load, pressure and room with the placard, and fit the right size or correct the record.' },
      'nothing to compare': { because: '{size} is fitted; it cannot be compared, because the placard’s size is not known.' },
    },
  },
  'wheels.marking': {
    title: 'Tyre marking',
    question: 'Is the tyre marked for the road, and can the marks be read?',
    how: 'Read both sidewalls: size, load, pressure, date code; and look for words that keep it off the road.',
    criterion: 'Marks readable. A tyre marked not for highway use, or cut deeper by hand, fails.',
    consequence: 'A tyre made for the yard or farm comes apart at road speed.',
    outcomes: {
      complete: { option: 'Readable, for the road', because: 'The marks are readable; the tyre is for the road.' },
      'partly worn off': { option: 'Partly worn off', because: 'Some marks are worn off.', remedy: 'Note what can still be read, and renew the tyre when it is next due.' },
      'not for highway use': { option: 'Marked not for the road', because: 'The tyre is marked not for highway use.', remedy: 'Do not tow on it. Fit a road tyre.' },
      regrooved: { option: 'Regrooved', because: 'The tread has been cut deeper by hand.', remedy: 'Do not tow on it. Renew the tyre.' },
    },
  },
  'wheels.load': {
    title: 'Load the tyres carry',
    question: 'Is the load marking of both tyres as recorded?',
    how: 'Read the number before the speed letter on both tyres of the axle; the lower one counts. Of two numbers, 96/94, the first counts: each wheel of a tandem stands alone. ST tyres may show only a load range, B to F.',
    criterion: {
      us: 'Two tyres carry at least the axle’s rating. A passenger-car tyre counts for its load divided by 1.10. The load holds only at full pressure.',
      eu: 'Two tyres carry at least the axle’s rating. The load holds only at full pressure.',
    },
    consequence: 'An overloaded tyre overheats and bursts.',
    fields: {
      marking: { label: 'Load index or range', options: { 'as the record': 'As recorded', another: 'Another', 'cannot be read': 'Cannot be read' } },
      loadIndex: { label: 'Lower load index of the two' },
      kind: { label: 'Made for', options: { 'trailer or van': 'Trailer or van', 'passenger car': 'Passenger car' } },
    },
    outcomes: {
      enough: { because: 'Two tyres carry {carried}; the axle is rated {rating}: {margin} over.' },
      'enough for the whole mass': { because: 'Two tyres carry {carried}, more than the axle’s whole share of the maximum mass, {share}.' },
      'may be short': { because: 'Two tyres carry {carried}; the axle’s share of the maximum mass is {share}, of which part rests on the coupling.', remedy: 'Find the axle’s rating or weigh the axle before the next trip.' },
      'too little': { because: 'Two tyres carry {carried}; the axle is rated {rating}.', remedy: 'Do not tow it loaded. Fit tyres of a higher load index.' },
      'short of the mass': { because: 'Two tyres carry {carried}; the axle’s share of the maximum mass is {share}, and the coupling cannot make up for that.', remedy: 'Do not tow it loaded. Fit tyres of a higher load index.' },
      'rating not known': { because: 'Two tyres carry {carried}; whether that is enough cannot be worked out, because neither the axle’s rating nor its share of the maximum mass is known.' },
      'index not known': { because: 'Cannot be worked out, because the rig’s record has no load index, nor a size and load range that the table knows.' },
      'not readable': { because: 'Not determined: the load index cannot be read.', remedy: 'Renew tyres whose load cannot be read before a loaded trip.' },
    },
  },
  'wheels.speed': {
    title: 'Speed rating',
    question: 'Which speed letter stands after the load index?',
    how: 'Read the letter after the load index; ST tyres often have none. Leave the letter empty to take the recorded one.',
    criterion: 'J (100 km/h, 62 mph) or faster. ST tyres without a letter: not over 104 km/h (65 mph). Local limits for towing may be lower.',
    consequence: 'Heat grows with speed; a tyre run over its speed sheds its tread.',
    fields: {
      marking: { label: 'Speed letter', options: { 'a letter': 'A letter', 'none, trailer tyre': 'None, ST tyre', 'cannot be read': 'Cannot be read' } },
      symbol: { label: 'Letter', hint: 'One letter, such as N.' },
    },
    outcomes: {
      enough: { because: '{symbol}: up to {kmPerHour} km/h.' },
      unmarked: { because: 'No letter on an ST tyre: up to {kmPerHour} km/h (65 mph).' },
      slow: { because: '{symbol}: only up to {kmPerHour} km/h.', remedy: 'Keep to that speed, and fit faster tyres before road trips.' },
      'no such symbol': { because: 'Cannot be judged, because {symbol} is no speed symbol.' },
      'not readable': { because: 'The speed letter cannot be read.' },
    },
  },
  'wheels.pair': {
    title: 'Tyres of one axle',
    question: 'Are both tyres of this axle of one size and build?',
    how: 'Compare size and build left and right: radial (R) or bias (D or a dash).',
    criterion: 'One size and one build on an axle. Different makes or patterns are no fault.',
    consequence: 'Unlike tyres steer and brake unlike.',
    outcomes: {
      alike: { option: 'Alike', because: 'Both tyres are alike.' },
      'tread patterns differ': { option: 'Patterns differ', because: 'Size and build are alike; only the patterns differ.' },
      'sizes differ': { option: 'Sizes differ', because: 'The two tyres are of different sizes.', remedy: 'Fit two of the placard’s size before the next trip.' },
      'radial and bias': { option: 'Radial and bias mixed', because: 'A radial and a bias tyre stand on one axle.', remedy: 'Fit two of one build before the next trip.' },
    },
  },
}
