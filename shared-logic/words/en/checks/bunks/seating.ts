import type { StationCheckWords } from '../../../check-words'

const noBoat = { option: 'No boat on the trailer', because: 'No boat lay on the trailer.' } as const

export const seatingWords: StationCheckWords = {
  'bunks.keel': {
    title: 'Keel support',
    question: 'Does the keel bear on its rollers or pads?',
    how: 'Look along the keel from both ends.',
    criterion: 'Where the trailer is built to carry the keel, it bears on more than one place and nowhere on metal.',
    consequence: 'A keel that hangs clear leaves all weight to the sides; one on metal is cut.',
    outcomes: {
      'keel bears': { option: 'Bears', because: 'The keel bears on its supports.' },
      'built without keel support': { option: 'Built without', because: 'The trailer is built to carry the hull without keel support.' },
      'bears on one roller': { option: 'On one roller only', because: 'The keel bears on one roller only.', remedy: 'Set the others up before the next trip.' },
      'keel hangs clear': { option: 'Hangs clear', because: 'The keel hangs clear of its supports.', remedy: 'Set them before the next trip.' },
      'bears on metal': { option: 'On metal', because: 'The keel bears on metal.', remedy: 'Renew roller or pad before it is towed.' },
      'no boat on the trailer': noBoat,
    },
  },
  'bunks.square': {
    title: 'Boat square on the trailer',
    question: 'Does the boat sit square and upright?',
    how: 'From astern compare transom with the cross-member; measure from each chine to the mudguard.',
    criterion: 'Upright, on the centre line, on all its supports.',
    consequence: 'A boat off centre loads one wheel more and walks further over on the road.',
    outcomes: {
      square: { option: 'Square', because: 'The boat sits square and upright.' },
      'off centre': { option: 'Off centre', because: 'The boat sits off centre.', remedy: 'Float or lift it straight before it is towed.' },
      leans: { option: 'Leans', because: 'The boat leans.', remedy: 'Set its supports before it is towed.' },
      'off its supports': { option: 'Off a support', because: 'The boat has come off a support.', remedy: 'Lift it back before it is towed.' },
      'no boat on the trailer': noBoat,
    },
  },
  'bunks.transom': {
    title: 'Transom supported',
    question: 'Do the bunks or rollers carry the hull as far as the transom?',
    how: 'Measure from the end of the last support to the transom.',
    criterion: 'The last support ends at the transom; up to 50 mm short passes (common practice).',
    consequence: 'An unsupported transom with an engine on it bends the bottom, and the boat no longer runs as it did.',
    fields: { support: { label: 'Last support', options: { 'reaches the transom': 'Reaches the transom', 'ends short': 'Ends short of it', 'no boat on the trailer': 'No boat on the trailer' } }, overhang: { label: 'Short by' } },
    outcomes: {
      supported: { because: 'The supports reach the transom.' },
      'nearly there': { because: 'The supports end {overhang} short of the transom, within {limit}.' },
      overhangs: { because: 'The transom stands {overhang} behind the last support, more than {limit}.', remedy: 'Move the boat forward or the supports aft, and weigh the balance again.' },
      'no boat on the trailer': { because: noBoat.because },
    },
  },
  'bunks.guides': {
    title: 'Guide posts',
    question: 'Are the guide posts firm and covered?',
    how: 'Shake them; look at brackets, caps and covers.',
    criterion: 'Firm, upright, no metal bare to the hull.',
    consequence: 'A loose post scratches the hull or drops on the road.',
    outcomes: {
      'not fitted': { option: 'None fitted', because: 'No guide posts are fitted.' },
      firm: { option: 'Firm', because: 'The guide posts are firm.' },
      'cap or cover missing': { option: 'Cap or cover missing', because: 'A cap or cover is missing.', remedy: 'Renew it at the next service.' },
      bent: { option: 'Bent', because: 'A guide post is bent.', remedy: 'Straighten or renew it at the next service.' },
      loose: { option: 'Loose', because: 'A guide post is loose.', remedy: 'Tighten it before it is towed.' },
      cracked: { option: 'Cracked', because: 'A guide post or bracket is cracked.', remedy: 'Repair it or take it off before it is towed.' },
    },
  },
}
