import type { StationCheckWords } from '../../../check-words'

export const frameCoatingWords: StationCheckWords = {
  'frame.galvanizing': {
    title: 'Galvanizing',
    question: 'What is the zinc like over the frame as a whole?',
    how: 'Look at it dry and brushed. White product wipes off; red shows steel. Rust spots are recorded member by member.',
    criterion: 'Even grey or light white product passes. White product does not fail by itself.',
    consequence: 'Once the zinc is used up the steel rusts, first where it is dipped.',
    outcomes: {
      'even grey': { option: 'Even grey', because: 'The zinc is even and grey.' },
      'light white product': { option: 'Light white product', because: 'There is light white product on the zinc.' },
      'heavy white product': { option: 'Heavy white product', because: 'There is heavy, bulky white product on the zinc.', remedy: 'Brush it off, rinse, let it dry, and measure the zinc that is left.' },
      flaking: { option: 'Flaking', because: 'The zinc flakes off.', remedy: 'Remove loose zinc and repair the coating within a month.' },
      'brown bloom': { option: 'Brown bloom', because: 'The zinc shows a brown bloom; the outer zinc may be used up.', remedy: 'Measure the zinc that is left within a year.' },
      'zinc gone': { option: 'Zinc gone in places', because: 'The zinc is used up in places and the steel rusts.', remedy: 'Clean and coat these places before the next trip.' },
    },
  },
  'frame.paint': {
    title: 'Paint',
    question: 'What is the paint like over the frame as a whole?',
    how: 'Look dry and in daylight; press blisters; look at edges and welds apart from faces.',
    criterion: 'Whole, or only chalked or scratched on top. Lifting or blistered paint means rust below.',
    consequence: 'Where paint is broken or lifts, salt water gets to the steel and stays.',
    outcomes: {
      whole: { option: 'Whole', because: 'The paint is whole.' },
      'chalked or scratched': { option: 'Chalked or scratched', because: 'The paint is chalked or scratched.', remedy: 'Touch it up within a year.' },
      'edges and welds rusting': { option: 'Edges and welds rusting', because: 'Edges and welds are rusting.', remedy: 'Clean and paint them within a month.' },
      'blistered or lifting': { option: 'Blistered or lifting', because: 'The paint blisters or lifts: there is rust below.', remedy: 'Strip it to metal, judge the metal and coat it before the next trip.' },
    },
  },
  'frame.galvanic-isolation': {
    title: 'Unlike metals',
    question: 'Are steel and stainless parts kept apart from the aluminium?',
    how: 'Look under bolt heads, U-bolts, axle and coupler brackets for sleeves, washers and paste, and for white product.',
    criterion: 'Unlike metals are isolated where it gets wet. A small stainless bolt in a large aluminium member is the lesser evil; the reverse is not.',
    consequence: 'In salt water aluminium is eaten round nobler metals until the hole is large.',
    outcomes: {
      isolated: { option: 'Isolated', because: 'Unlike metals are isolated.' },
      'not isolated, no attack': { option: 'Not isolated, no attack', because: 'Unlike metals touch; no attack is seen yet.', remedy: 'Fit sleeves, washers or paste within a year.' },
      'white product round fasteners': { option: 'White product', because: 'White product stands round fasteners: the aluminium is being eaten.', remedy: 'Take them out, clean, isolate and refit before the next trip.' },
      'holes eaten large': { option: 'Holes eaten large', because: 'Holes in the aluminium are eaten large.', remedy: 'Do not tow it: have the joint repaired.' },
    },
  },
  'frame.drain-holes': {
    title: 'Drain holes',
    question: 'Are the drain holes of closed sections open?',
    how: 'Probe each with a wire; listen for water when the rig is rocked.',
    criterion: 'Open at the lowest points.',
    consequence: 'Salt water left inside rusts the frame from within.',
    outcomes: {
      open: { option: 'Open', because: 'The drain holes are open.' },
      'open sections': { option: 'Open sections only', because: 'The frame has open sections only.' },
      blocked: { option: 'Blocked', because: 'Drain holes are blocked.', remedy: 'Clear them and rinse the inside within a month.' },
      'none in closed sections': { option: 'None', because: 'Closed sections have no drain holes.', remedy: 'Ask the maker where holes may be drilled.' },
      'water inside': { option: 'Water inside', because: 'There is water in a closed section.', remedy: 'Drain and rinse it, and look inside with a borescope before the next trip.' },
    },
  },
}
