import type { StationCheckWords } from '../../../check-words'

export const paperRatingWords: StationCheckWords = {
  'papers.rating-plate': {
    title: 'Rating plate',
    question: "Is the maker's rating plate there, with maximum mass and axle ratings?",
    how: 'Find the plate or label that gives the maximum mass and each axle rating. Photograph it. Enter the figures with the rig.',
    criterion: "The maker's maximum mass and axle ratings can be read. The plate decides: no sum ever raises a rating.",
    consequence: 'Without ratings to rely on nobody can say whether the rig is overloaded.',
    outcomes: {
      legible: { option: 'Legible', because: 'The rating plate is in place and legible.' },
      'partly legible': { option: 'Partly legible', because: 'Some figures of the rating plate cannot be read.', remedy: 'Get the missing figures from the maker in writing.' },
      'differs from papers': { option: 'Differs from papers', because: 'The ratings on the plate differ from the papers.', remedy: 'Use the lower figure and have the maker settle it before it is towed.' },
      missing: { option: 'Missing', because: 'There is no readable rating plate.', remedy: "Get the ratings from the maker before it is towed; until then no load can be called safe." },
    },
  },
  'papers.tyre-placard': {
    title: 'Tyre and loading placard',
    question: 'Is the tyre and loading placard there, near the certification label?',
    how: 'Read tyre size, cold pressure and the greatest mass of cargo. Enter the cargo figure if it is given.',
    criterion: 'Trailers up to 10,000 lb carry a placard with tyre size, cold pressure and greatest cargo: rating less unladen mass.',
    consequence: 'Without it, tyres are fitted and filled by guess.',
    fields: { condition: { label: 'Placard', options: { legible: 'Legible', unreadable: 'Unreadable', missing: 'Missing' } }, cargo: { label: 'Greatest cargo on the placard' } },
    outcomes: {
      legible: { because: 'The placard is in place and legible.' },
      'cargo too high': { because: 'The placard allows {cargo} of cargo, but rating less unladen mass leaves {capacity}.', remedy: 'Load by the smaller figure; ask the maker which is right.', consequence: 'Loaded by its placard, the trailer goes over its rating.' },
      unreadable: { because: 'The placard cannot be read.', remedy: 'Ask the maker for a new placard; take tyre size and pressure from the sidewall meanwhile.' },
      missing: { because: 'There is no tyre and loading placard.', remedy: 'Ask the maker for a placard; take tyre size and pressure from the sidewall meanwhile.' },
    },
  },
  'papers.axle-ratings': {
    title: 'Axle ratings against maximum mass',
    question: 'What rests on the coupling when the rig is at its maximum mass?',
    how: 'Weigh the coupling on a scale, level and loaded. Enter zero if it is not known that anything rests there.',
    criterion: "On a boat trailer the axle ratings may sum to less than the maximum mass, because the tow vehicle carries the coupling load; what is left for the axles must be within their ratings.",
    consequence: 'A trailer plated above what its axles can carry is overloaded while its papers look right.',
    caution: 'Chock the wheels and keep feet from under the coupling while it is on the scale.',
    fields: { coupling: { label: 'Coupling load at maximum mass' } },
    outcomes: {
      'axles carry all': { because: 'The axles together are rated {axles}, not less than the maximum mass of {maximum}.' },
      'with the coupling load': { because: 'With {coupling} on the coupling the axles carry {load} at maximum mass, within their {axles}.' },
      short: { because: 'With {coupling} on the coupling the axles carry {load} at maximum mass: more than their {axles}.', remedy: 'Load to the axle ratings, not to the maximum mass, and ask the maker: this is treated as a safety defect.' },
      'rating unknown': { because: 'Cannot be worked out, because the maximum mass, the axle ratings or the number of axles are not known.' },
    },
  },
}
