import type { StationCheckWords } from '../../../check-words'

export const pressureWords: StationCheckWords = {
  'wheels.pressure': {
    title: 'Cold pressure',
    question: 'What is the pressure, cold?',
    how: 'Measure before towing, or after three hours’ rest out of the sun. Check the spare too.',
    criterion: 'The placard’s cold pressure. More than 10 % under or over is an advisory, more than 20 % under fails.',
    consequence: 'A soft tyre carries less than its load, flexes, heats and bursts.',
    caution: 'Never let air out of a warm tyre to set it. Stand to the side of a tyre that is being filled, never before its sidewall.',
    fields: {
      pressure: { label: 'Pressure' },
      state: { label: 'Taken', options: { cold: 'Cold', warm: 'Warm from the road' } },
    },
    outcomes: {
      right: { because: '{pressure}; the placard asks {placard}.' },
      low: { because: '{pressure}, over 10 % under the placard’s {placard}.', remedy: 'Fill to the placard, cold, and look for the leak.' },
      high: { because: '{pressure}, over 10 % above the placard’s {placard}.', remedy: 'Set it cold to the placard; never above the sidewall’s limit.', consequence: 'A tyre blown too hard rides on its centre, bounces, and is easily cut.' },
      'much too low': { because: '{pressure}, over 20 % under the placard’s {placard}.', remedy: 'Do not tow on it. Have the tyre taken off and looked at inside, then filled.' },
      'taken warm': { because: '{pressure}, taken warm: cannot be compared with the cold {placard}.' },
      'placard not known': { because: '{pressure}; whether it is right cannot be worked out, because the placard pressure is not known.' },
    },
  },
  'wheels.valve': {
    title: 'Valve',
    question: 'Is the valve sound and capped?',
    how: 'Bend a rubber stem to show cracks, listen and wet it for leaks.',
    criterion: 'No leak, no crack at the foot, cap fitted.',
    consequence: 'A cracked stem loses all air in a moment.',
    outcomes: {
      sound: { option: 'Sound, capped', because: 'The valve is sound and capped.' },
      'cap missing': { option: 'Cap missing', because: 'The valve’s cap is missing.', remedy: 'Fit a sealing cap before the next trip.', consequence: 'Salt and sand get at the valve’s core, and it leaks.' },
      cracked: { option: 'Stem cracked', because: 'The valve’s stem is cracked.', remedy: 'Renew the valve before the next trip.' },
      leaking: { option: 'Leaking', because: 'The valve leaks.', remedy: 'Renew the valve before it is towed.' },
    },
  },
}
