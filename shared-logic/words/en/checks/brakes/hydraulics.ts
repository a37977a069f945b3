import type { StationCheckWords } from '../../../check-words'

export const brakeHydraulicWords: StationCheckWords = {
  'brakes.lines': {
    title: 'Brake lines',
    question: 'Are the rigid lines sound along their whole run?',
    how: 'Follow them by eye and finger from actuator to axle, inside rails by mirror and lamp, closest at clips and where they rest on metal. Scrape rust to see whether the wall is pitted.',
    criterion: 'Not pitted, flattened, chafed or leaking; clipped.',
    consequence: 'A burst line is no brakes on every wheel it feeds.',
    outcomes: {
      sound: { option: 'Sound', because: 'The lines are sound along the run that can be seen.' },
      'surface rust': { option: 'Surface rust', because: 'The lines have surface rust.', remedy: 'Clean and coat them at the next service.' },
      'clip missing or chafing': { option: 'Clip missing or chafing', because: 'A line hangs or chafes.', remedy: 'Clip it clear before the next trip.' },
      'pitted or scaled': { option: 'Pitted or scaled', because: 'A line is pitted or scaled.', remedy: 'Do not tow it. Renew the line, best in copper-nickel or stainless.' },
      'flattened or kinked': { option: 'Flattened or kinked', because: 'A line is flattened or kinked.', remedy: 'Renew the line before it is towed.' },
      leaking: { option: 'Leaking', because: 'A line leaks.', remedy: 'Do not tow it. Renew the line and bleed the brakes.' },
    },
  },
  'brakes.hoses': {
    title: 'Brake hose',
    question: 'Is the flexible hose sound and free?',
    how: 'Bend it to open cracks, look at it with a helper working the actuator, and through the full movement of axle and suspension.',
    criterion: 'No crack to the cords, bulge, chafing or leak; not twisted or tight.',
    consequence: 'A hose that bulges brakes late; one that bursts not at all.',
    outcomes: {
      sound: { option: 'Sound', because: 'The hose is sound.' },
      'fine cracks': { option: 'Fine cracks', because: 'Fine cracks in the hose’s cover.', remedy: 'Renew the hose within a month.' },
      'twisted or tight': { option: 'Twisted or tight', because: 'The hose is twisted or pulled tight.', remedy: 'Route it freely before the next trip.' },
      'chafed or cut': { option: 'Chafed or cut', because: 'The hose is chafed or cut.', remedy: 'Renew the hose and its clips before it is towed.' },
      'bulging or leaking': { option: 'Bulging or leaking', because: 'The hose bulges or leaks.', remedy: 'Do not tow it. Renew the hose and bleed the brakes.' },
    },
  },
  'brakes.calipers': {
    title: 'Caliper',
    question: 'Does the caliper slide freely, and is it dry?',
    how: 'Move it on its pins by hand or lever, compare the inner and the outer pad, look round the piston’s boot.',
    criterion: 'Slides freely, pads worn alike, no leak.',
    consequence: 'A stuck caliper brakes with one pad, hot, or not at all.',
    outcomes: {
      'slides freely': { option: 'Slides freely', because: 'The caliper slides freely and is dry.' },
      'pins dry': { option: 'Pins dry', because: 'The slide pins are dry.', remedy: 'Clean and grease the pins at the next service.' },
      'pads worn unevenly': { option: 'Pads worn unevenly', because: 'Inner and outer pad are worn unevenly.', remedy: 'Free the pins and renew the pads before the next trip.' },
      seized: { option: 'Seized', because: 'The caliper is seized.', remedy: 'Renew it before it is towed.' },
      leaking: { option: 'Leaking', because: 'The caliper leaks.', remedy: 'Do not tow it. Renew caliper and pads, bleed the brakes.' },
      'not seen with the wheel on': { option: 'Not seen with the wheel on', because: 'The wheel was on: the caliper was not seen.' },
    },
  },
  'brakes.wheel-cylinders': {
    title: 'Wheel cylinder',
    question: 'Is the wheel cylinder dry and free?',
    how: 'Drum off: lift the boot’s edge; a film is damp, a drop is a leak. A helper presses gently while you watch both pistons.',
    criterion: 'Both pistons move and come back; no leak.',
    consequence: 'A seized piston, or fluid on the shoes, is no brake.',
    outcomes: {
      'dry and free': { option: 'Dry and free', because: 'The wheel cylinder is dry and free.' },
      'damp under the boot': { option: 'Damp under the boot', because: 'The cylinder is damp under its boot.', remedy: 'Renew the cylinder before the next trip.' },
      seized: { option: 'Seized', because: 'A piston is seized.', remedy: 'Renew the cylinder before it is towed.' },
      leaking: { option: 'Leaking', because: 'The cylinder leaks.', remedy: 'Do not tow it. Renew cylinder and shoes, bleed the brakes.' },
      'drum not taken off': { option: 'Drum not taken off', because: 'The drum was not taken off: the cylinder was not seen.' },
    },
  },
}
