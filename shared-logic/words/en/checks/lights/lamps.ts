import type { StationCheckWords } from '../../../check-words'

/** A missing lamp or reflector: called for, not called for, or waiting for a figure. */
const missing = (what: string) => ({
  'missing, lesser': { because: `The ${what} is missing; it is called for on this trailer.`, remedy: `Fit the ${what} before the next trip.` },
  'missing, not called for': { because: `There is none, and the rule book does not call for this ${what} on this trailer.` },
  'missing, length not known': { because: 'There is none; whether it is called for cannot be worked out, because the trailer’s length is not known.' },
  'missing, year not known': { because: 'There is none; whether it is called for cannot be worked out, because the year it was built is not known.' },
  'missing, year does not decide': {
    because: 'There is none; the rule came in during the year the trailer was built, so the year alone does not decide.',
    remedy: `Find the month it was built, or fit the ${what}.`,
  },
})

export const lampWords: StationCheckWords = {
  'lights.lamp': {
    title: 'Lamp',
    question: 'Does this lamp work, in its colour, with a whole lens?',
    how: 'Plug in, have a helper work each function, and look from ten paces and in the sun’s direction. Work stop, tail and turn together: a bad earth shows then.',
    criterion: {
      us: 'Two each of tail, stop, turn; plate lamp; side markers amber in front and red behind. From 80 in (2.03 m) wide clearance lamps, on a boat trailer one double-faced lamp each side at mid-length will do, and three red identification lamps. From 30 ft (9.14 m) long an amber marker at mid-length.',
      eu: 'Two each of position, stop, amber indicator; plate lamp. Fog lamp wider than 1.3 m, reversing lamp if braked and built from October 2012, white front markers from 1.6 m wide. UK rules, as a model; national rules prevail.',
    },
    consequence: 'What cannot be seen is run into.',
    fields: { state: { label: 'Lamp' } },
    outcomes: {
      works: { option: 'Works', because: 'The lamp works.' },
      dim: { option: 'Dim', because: 'The lamp is dim.', remedy: 'Clean the lens, then measure the voltage at the lamp and its earth.' },
      'water inside': { option: 'Water inside', because: 'The lamp works, but water stands in it.', remedy: 'Dry and seal it, or renew it, within a month.' },
      'lens broken': { option: 'Lens broken', because: 'The lens is broken.', remedy: 'Renew lens or lamp before it is towed.' },
      'wrong colour': { option: 'Wrong colour', because: 'The lamp shows the wrong colour.', remedy: 'Fit the right lens or lamp before the next trip.' },
      dead: { option: 'Dead', because: 'The lamp does not work.', remedy: 'Test bulb, feed and earth, and mend it before it is towed.' },
      'dead, lesser': { because: 'The lamp does not work.', remedy: 'Test bulb, feed and earth, and mend it before the next trip.' },
      missing: { option: 'Missing', because: 'The lamp is missing; it is called for on this trailer.', remedy: 'Fit the lamp before it is towed.' },
      'missing, width not known': { because: 'There is none; whether it is called for cannot be worked out, because the trailer’s width is not known.' },
      'missing, brakes not known': { because: 'There is none; whether it is called for cannot be worked out, because the kind of brakes is not known.' },
      ...missing('lamp'),
    },
  },
  'lights.reflector': {
    title: 'Reflector',
    question: 'Is this reflector there, whole, clean and in its colour?',
    how: 'Shine a torch at it from beside your eye at ten paces.',
    criterion: {
      us: 'Red behind, red at the sides aft, amber at the sides forward; amber at mid-length from 30 ft (9.14 m).',
      eu: 'Two red triangles behind; white in front if built after September 1990. UK rules, as a model.',
    },
    consequence: 'When the lamps have failed, it is all there is.',
    fields: { state: { label: 'Reflector', options: { missing: 'Missing' } } },
    outcomes: {
      'clean and whole': { option: 'Clean and whole', because: 'The reflector is clean and whole.' },
      faded: { option: 'Faded', because: 'The reflector is faded.', remedy: 'Renew it within a month.' },
      hidden: { option: 'Hidden', because: 'The reflector is hidden.', remedy: 'Move it where it can be seen, boat on, before the next trip.' },
      broken: { option: 'Broken', because: 'The reflector is broken.', remedy: 'Renew it before the next trip.' },
      'wrong colour': { option: 'Wrong colour', because: 'The reflector has the wrong colour.', remedy: 'Fit the right one before the next trip.' },
      ...missing('reflector'),
    },
  },
  'lights.flash-rate': {
    title: 'Flash rate',
    question: 'How many times a minute do the turn signals flash?',
    how: 'Count the flashes in half a minute, engine running, and double it. Try both sides; enter the worse.',
    criterion: '60 to 120 a minute. Twice the usual rate tells of a dead lamp, or of LED lamps on a flasher made for bulbs.',
    consequence: 'A signal too fast or too slow is not read in time.',
    fields: { rate: { label: 'Flashes' } },
    outcomes: {
      inside: { because: '{rate}.' },
      'no flash': { because: 'The turn signals do not flash.', remedy: 'Test plug, earth and flasher before it is towed.' },
      slow: { because: '{rate}; at least 60 a minute are asked.', remedy: 'Measure the voltage, and test the flasher, before the next trip.' },
      fast: { because: '{rate}; at most 120 a minute are asked.', remedy: 'Look for a dead lamp first, then for a flasher that suits the lamps.' },
    },
  },
  'lights.to-be-seen': {
    title: 'Lamps to be seen',
    question: 'With the boat on, can lamps, reflectors and plate be seen from behind and from the side?',
    how: 'Stand ten paces behind, then 45 degrees to each side, with outboard and cover as on the road.',
    criterion: 'Nothing hidden by hull, outboard or cover. A light board across the stern is the usual cure.',
    consequence: 'Lamps that work but are hidden are no lamps.',
    outcomes: {
      'clear of the boat': { option: 'All to be seen', because: 'All lamps can be seen with the boat on.' },
      'hidden by the boat, light board used': { option: 'Light board used', because: 'A light board carries the lamps the boat would hide.' },
      'partly hidden': { option: 'Partly hidden', because: 'Some lamps are hidden from some angle.', remedy: 'Move them or carry a light board before the next trip.' },
      hidden: { option: 'Hidden', because: 'Lamps are hidden by the boat.', remedy: 'Carry a light board before it is towed.' },
    },
  },
}
