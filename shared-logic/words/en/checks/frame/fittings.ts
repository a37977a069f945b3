import type { StationCheckWords } from '../../../check-words'

export const frameFittingWords: StationCheckWords = {
  'frame.fasteners': {
    title: 'Bolts and fasteners',
    question: 'Are the bolts of the frame tight and sound?',
    how: 'Try a sample at every joint with a wrench. Look at the shank beside the nut, where rust eats first.',
    criterion: 'All present, tight and of the right metal: hot-dip galvanized on galvanized steel.',
    consequence: 'Bolts that are loose, wasted or missing let the frame work and come apart.',
    outcomes: {
      tight: { option: 'Tight and sound', because: 'The fasteners are tight and sound.' },
      'surface rust': { option: 'Surface rust', because: 'Fasteners have surface rust.', remedy: 'Treat them with inhibitor at the next service.', consequence: 'Rust left alone takes the shank, first beside the nut.' },
      'wrong metal': { option: 'Wrong metal', because: 'Fasteners are of a metal that does not suit the frame.', remedy: 'Change them for matching ones within a year.', consequence: 'Bolts of the wrong metal eat the frame round them, or waste away themselves.' },
      wasted: { option: 'Wasted', because: 'Fasteners have lost metal.', remedy: 'Renew them, of the same grade, before the next trip.' },
      loose: { option: 'Loose', because: 'Fasteners are loose.', remedy: 'Tighten them to torque, with new lock nuts, before it is towed.' },
      missing: { option: 'Missing', because: 'Fasteners are missing.', remedy: 'Fit them before it is towed.' },
    },
  },
  'frame.fenders': {
    title: 'Mudguards',
    question: 'Are the mudguards secure and clear of the tyres?',
    how: 'Shake them; look at brackets and welds; look for rub marks on tyre and guard with the rig loaded.',
    criterion: 'Secure, whole and clear of the tyres at full bump.',
    consequence: 'A guard that drops or rubs cuts the tyre.',
    outcomes: {
      secure: { option: 'Secure', because: 'The mudguards are secure.' },
      'rusted or split': { option: 'Rusted or split', because: 'A mudguard is rusted or split.', remedy: 'Repair or renew it before the next trip.' },
      'bracket cracked': { option: 'Bracket cracked', because: 'A mudguard bracket is cracked.', remedy: 'Repair it before it is towed.' },
      'rubs on the tyre': { option: 'Rubs on the tyre', because: 'A mudguard rubs on the tyre.', remedy: 'Set it clear before it is towed and inspect the tyre.' },
      loose: { option: 'Loose', because: 'A mudguard is loose.', remedy: 'Fix it before it is towed.' },
      missing: { option: 'Missing', because: 'A mudguard is missing.', remedy: 'Fit it before the next trip; local law may ask for it.', consequence: 'Stones and spray go up to the hull and back to those behind.' },
    },
  },
  'frame.steps': {
    title: 'Steps and walkways',
    question: 'Are steps and walkways firm and not slippery?',
    how: 'Load each with a foot while holding on. Look at grit, tape and brackets.',
    criterion: 'Firm, whole and rough enough to stand on wet.',
    consequence: 'A fall from a wet step at the ramp.',
    caution: 'Hold on: try a step from the ground first.',
    outcomes: {
      'not fitted': { option: 'None fitted', because: 'No steps or walkways are fitted.' },
      'firm and rough': { option: 'Firm and rough', because: 'The steps are firm and rough.' },
      slippery: { option: 'Slippery', because: 'The steps are slippery.', remedy: 'Renew the grit or tape before the next trip.' },
      loose: { option: 'Loose', because: 'A step is loose.', remedy: 'Fix it or close it off before the next trip.' },
      broken: { option: 'Broken', because: 'A step is broken.', remedy: 'Repair it or take it off before the next trip.' },
    },
  },
  'frame.spare-carrier': {
    title: 'Spare wheel carrier',
    question: 'Is the spare wheel carrier firm, and does the tool fit?',
    how: 'Shake the wheel. Try nuts and lock. See that wrench and jack for this rig are carried.',
    criterion: 'Firm and locked; wheel can be taken off with the tool on board.',
    consequence: 'A spare that falls off meets the car behind.',
    outcomes: {
      'firm and locked': { option: 'Firm and locked', because: 'The spare wheel carrier is firm and locked.' },
      rusted: { option: 'Rusted', because: 'The spare wheel carrier is rusted.', remedy: 'Clean and coat it at the next service.' },
      'tool missing': { option: 'Tool missing', because: 'No tool on board fits the spare wheel.', remedy: 'Put wrench and jack on board before the next trip.', consequence: 'A flat tyre cannot be changed by the roadside.' },
      loose: { option: 'Loose', because: 'The spare wheel carrier is loose.', remedy: 'Tighten it before it is towed.' },
      cracked: { option: 'Cracked', because: 'The spare wheel carrier is cracked.', remedy: 'Take the wheel off or repair the carrier before it is towed.' },
    },
  },
}
