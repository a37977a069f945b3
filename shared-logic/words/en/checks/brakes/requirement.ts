import type { StationCheckWords } from '../../../check-words'

export const brakeRequirementWords: StationCheckWords = {
  'brakes.required': {
    title: 'Brakes for its mass',
    question: 'On which wheels are brakes fitted?',
    how: 'Look behind every wheel. The rating plate’s maximum mass decides what is called for, not what is on the trailer today.',
    criterion: {
      us: 'Over 3,000 lb (1,361 kg) the federal rule for commercial trailers asks for brakes on all wheels; for a private trailer that is a benchmark. State law decides, from about 1,000 to 10,000 lb. California: from 3,000 lb, on two wheels at least. District of Columbia: over 3,000 lb, on all wheels.',
      eu: 'Over 750 kg maximum mass brakes are called for, on all wheels. National law decides.',
    },
    consequence: 'An unbraked load pushes the towing vehicle through the junction; insurance may fail with it.',
    fields: {
      fitted: { label: 'Brakes', options: { 'on all wheels': 'On all wheels', 'on some wheels': 'On some wheels', none: 'None' } },
      place: {
        label: 'Judge by',
        hint: 'Leave empty for the federal benchmark; in Europe it is not used.',
        options: { 'federal benchmark': 'Federal benchmark', California: 'California', 'District of Columbia': 'District of Columbia' },
      },
    },
    outcomes: {
      'on all wheels': { because: 'Brakes are fitted on all wheels.' },
      'not called for': { because: 'At {mass} maximum mass brakes are not called for; the limit is {limit}. State or national law may be stricter.' },
      'some are enough': { because: 'Brakes on at least two wheels are called for from {limit}; they are fitted.' },
      'on some wheels': { because: 'At {mass} maximum mass brakes on all wheels are called for; some have none.', remedy: 'Ask what local law allows for its year, and fit the missing brakes.' },
      'called for by the benchmark': { because: 'No brakes at {mass} maximum mass; the federal benchmark asks for them over {limit}. State law varies.', remedy: 'Find out what the state asks, and fit brakes, before the next trip.' },
      'called for by law': { because: 'No brakes at {mass} maximum mass; they are called for from {limit}.', remedy: 'Do not tow it loaded. Have brakes fitted that suit the axle.' },
      'mass not known': { because: 'Whether brakes are called for cannot be worked out, because the maximum mass is not known.' },
      'year not known': { because: 'Whether brakes are called for cannot be worked out, because the year it was built is not known.' },
    },
  },
  'brakes.surge-match': {
    title: 'Surge brakes and towing vehicle',
    question: 'What is the towing vehicle rated for?',
    how: 'Read its gross vehicle weight rating from the label in the door opening.',
    criterion: 'Up to 12,000 lb (5,443 kg) the trailer may have 1.75 times the towing vehicle’s rating on surge brakes, above that 1.25 times, and not from 20,001 lb (9,072 kg) on. A commercial rule, taken as benchmark.',
    consequence: 'Surge brakes need a vehicle heavy enough to push back.',
    fields: {
      vehicle: { label: 'Towing vehicle', options: { known: 'Known', 'as recorded': 'As recorded', 'not known': 'Not known' } },
      rating: { label: 'Its gross weight rating' },
    },
    outcomes: {
      allowed: { because: 'A trailer of {mass} behind a vehicle of {rating}: inside the benchmark.' },
      'too light a vehicle': { because: 'A trailer of {mass} behind a vehicle of {rating}: outside the benchmark for surge brakes.', remedy: 'Tow it with a heavier vehicle, or with brakes worked from the vehicle.' },
      'not recorded': { because: 'Cannot be worked out, because the rig’s record has no towing vehicle’s rating.' },
      'vehicle not known': { because: 'The towing vehicle is not known.' },
      'mass not known': { because: 'Cannot be worked out, because the trailer’s maximum mass is not known.' },
    },
  },
}
