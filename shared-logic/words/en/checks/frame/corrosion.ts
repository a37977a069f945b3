import { gravestFindings } from '../../../../corrosion/findings'
import type { OutcomeWords, StationCheckWords } from '../../../check-words'
import { corrosionFindings, type FindingWords } from '../../corrosion-findings'

/** A finding's sentence with the place before it. */
const placed = ({ because, remedy }: FindingWords): OutcomeWords => ({ because: `{place}: ${because}`, ...(remedy !== undefined && { remedy }) })

export const frameCorrosionWords: StationCheckWords = {
  'frame.corrosion': {
    title: 'Corrosion spots',
    question: 'Where is this part corroded, and how much of the face?',
    how: 'Brush each place clean first: run-off stain is not rust. Note place, kind, area of the spot and area of the face it lies on; measure pits by depth gauge. Grade edges and welds apart. Where there is none, press “Looked, none found”.',
    criterion: 'Painted steel: up to 1 % of a face passes. Zinc: up to 0.1 % red rust passes, and no spot above 10 cm². Area alone never fails. In a part that bears load a hole, a pit deeper than 30 % of the wall (beside an aluminium weld 15 %), more than 25 % thinning or an eaten-away place more than 50 mm across fails. Unlike metals more than 0.15 V apart are an advisory. Graded by ISO 4628-3 (ceiling rule), ASTM D610 and ISO 10289, each from the area; where a measurement straddles an edge, the worse grade counts.',
    consequence: 'Rust left alone goes through the coating and then into the wall that carries the load; a hole or a deep pit is strength already lost.',
    fields: { spots: { label: 'Spot' } },
    outcomes: {
      none: { because: 'No corrosion was found on what could be seen.' },
      ...Object.fromEntries(gravestFindings.map((finding) => [finding, placed(corrosionFindings[finding])])),
      slight: { because: 'Slight; the worst place is {place}.' },
    },
  },
  'frame.section-loss': {
    title: 'Loss of wall',
    question: 'How much of the wall is left at the worst place?',
    how: 'Clean to metal. Measure the wall where it is whole, and the least that is left: with depth gauge in a pit, with ultrasound where only one side can be reached.',
    criterion: 'Less than 10 % lost passes. More than 30 % in a pit fails, more than 25 % thinning fails; on aluminium beside a weld more than 15 % fails, and every pit is named. These limits are practice; the pit limit is borrowed from ship rules.',
    consequence: 'A thinner wall carries less and can buckle or tear: 0.3 mm off a 3 mm wall is a tenth of it, and as much again may be gone inside, unseen.',
    fields: {
      form: { label: 'Worst place', options: { none: 'No loss found', pit: 'A pit', 'general thinning': 'General thinning', 'scale too thick': 'Scale too thick to measure' } },
      wall: { label: 'Wall where whole' },
      left: { label: 'Least that is left' },
      place: { label: 'Where', options: { 'clear of welds': 'Clear of welds', 'beside a weld': 'Beside a weld' } },
    },
    outcomes: {
      none: { because: 'No loss of wall was found on what could be seen.' },
      'small loss': { because: '{left} left of {wall}: {loss} lost.' },
      'scale too thick': { because: 'Scale is too thick to measure what is left.', remedy: 'Scrape to metal and measure before it is towed.' },
      pitted: { because: 'In the deepest pit {left} is left of {wall}: {loss} lost.', remedy: 'Clean and coat it before the next trip; measure the pit again at the next service.' },
      thinned: { because: '{left} left of {wall}: {loss} lost over the face.', remedy: 'Have it judged by a trailer workshop before the next trip; stop the rust.' },
      'pit by the weld': { because: 'Beside a weld {left} is left of {wall}: {loss} lost in metal of about half strength.', remedy: 'Do not tow it before a repair by a qualified aluminium welder.' },
      'pit too deep': { because: 'In the deepest pit {left} is left of {wall}: {loss} lost, more than 30 %.', remedy: 'Do not tow it before the member is repaired.' },
      'too thin': { because: '{left} left of {wall}: {loss} lost over the face, more than 25 %.', remedy: 'Do not tow it before the member is renewed.' },
    },
  },
  'frame.near-mountings': {
    title: 'Rust near mountings',
    question: 'Is the frame sound within 30 cm of coupler, winch post, axles, springs and brakes?',
    how: 'Look and tap round each mounting, above and below.',
    criterion: 'Sound within 30 cm of every mounting: there the load goes in.',
    consequence: 'A mounting that tears out takes axle, post or coupler with it.',
    outcomes: {
      clean: { option: 'Clean', because: 'The frame is clean round its mountings.' },
      'light rust': { option: 'Light rust', because: 'There is light rust round mountings, without loss.' },
      'pitted or flaking': { option: 'Pitted or flaking', because: 'The frame is pitted or flakes within 30 cm of a mounting.', remedy: 'Have the wall measured there before it is towed.' },
      weakened: { option: 'Weakened', because: 'The frame is weakened by rust within 30 cm of a mounting.', remedy: 'Do not tow it: have it repaired as the maker allows.' },
      holed: { option: 'Holed', because: 'The frame is rusted through within 30 cm of a mounting.', remedy: 'Do not tow it: have it repaired as the maker allows.' },
    },
  },
}
