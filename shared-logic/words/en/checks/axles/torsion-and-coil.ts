import type { StationCheckWords } from '../../../check-words'

export const torsionAndCoilWords: StationCheckWords = {
  'axles.torsion-arms': {
    title: 'Torsion arm',
    question: 'Does the arm stand at the same angle as its mate?',
    how: 'On level ground compare the arms left and right, and with the maker’s angle where it is known; then push the frame down and watch the arm move.',
    criterion: 'Both arms of an axle at one angle, springy, not bent. The maker’s angle decides.',
    consequence: 'A tired arm lets the tyre into the mudguard and throws its load on the others.',
    outcomes: {
      'as its mate': { option: 'As its mate', because: 'The arm stands as its mate does.' },
      'lower than its mate': { option: 'Sags against its mate', because: 'The arm has sagged against its mate.', remedy: 'Weigh the axle and compare with its rating; plan a new axle.' },
      'no spring left': { option: 'No spring left', because: 'The arm no longer springs.', remedy: 'Renew the axle before it is towed; its rubber cannot be renewed by itself.' },
      'bent or cracked': { option: 'Bent or cracked', because: 'The arm is bent or cracked.', remedy: 'Do not tow it. Renew the axle.' },
    },
  },
  'axles.torsion-rubber': {
    title: 'Torsion rubber and tube end',
    question: 'Is the rubber in place, and is the tube’s end sound?',
    how: 'Look into the tube where the arm enters: rubber cords, rust bulging the tube, rust water running out.',
    criterion: 'Rubber in place, not perished; tube not bulged or rusted through.',
    consequence: 'Rust inside the tube squeezes the rubber out and then lets the arm drop.',
    outcomes: {
      sound: { option: 'Sound', because: 'Rubber and tube end are sound.' },
      perished: { option: 'Perished', because: 'The rubber is perished.', remedy: 'Measure the arm’s angle within a month, and plan a new axle.' },
      'working out of the tube': { option: 'Working out of the tube', because: 'The rubber is working out of the tube.', remedy: 'Renew the axle before the next trip.' },
      'tube rusted at its end': { option: 'Tube end rusted or bulged', because: 'The tube’s end is bulged or eaten by rust.', remedy: 'Renew the axle before the next trip.' },
    },
  },
  'axles.coil-springs': {
    title: 'Coil spring',
    question: 'Is the coil whole and in its seat?',
    how: 'Look at the last turn at top and bottom, where springs break, and compare the height with the other side.',
    criterion: 'Whole, seated, not raised by spacers.',
    consequence: 'A broken coil can cut the tyre; a tired one throws its load on the others.',
    outcomes: {
      sound: { option: 'Whole and seated', because: 'The spring is whole and seated.' },
      'surface rust': { option: 'Surface rust', because: 'The spring has surface rust.', remedy: 'Clean and coat it at the next service.' },
      sagged: { option: 'Sagged', because: 'The spring has sagged.', remedy: 'Check the load, then renew the springs in pairs before the next trip.' },
      'out of its seat': { option: 'Out of its seat', because: 'The spring is out of its seat.', remedy: 'Seat it and find out why it left, before it is towed.' },
      broken: { option: 'Broken', because: 'The spring is broken.', remedy: 'Do not tow it. Renew the springs in pairs.' },
    },
  },
  'axles.dampers': {
    title: 'Damper',
    question: 'Is the damper dry and firmly held?',
    how: 'Look for oil running from the seal (not a film of mist), and try both ends by hand.',
    criterion: 'No oil from the seal; ends held, bushes whole.',
    consequence: 'Without damping the trailer hops and sways.',
    outcomes: {
      dry: { option: 'Dry and firm', because: 'The damper is dry and firm.' },
      'bush worn': { option: 'Bush worn', because: 'A bush of the damper is worn.', remedy: 'Renew the bush within a month.' },
      leaking: { option: 'Leaking', because: 'Oil leaks from the damper.', remedy: 'Renew the dampers in pairs before the next trip.' },
      'loose or off': { option: 'Loose or off', because: 'The damper is loose or has come off.', remedy: 'Fasten or renew it before it is towed.' },
    },
  },
}
