import type { StationCheckWords } from '../../../check-words'

export const axleBeamWords: StationCheckWords = {
  'axles.count': {
    title: 'Number of axles',
    question: 'How many axles has the trailer?',
    how: 'Count them, then put the number in the rig’s record: every hub, wheel and brake is then asked for by itself.',
    criterion: 'The number of axles decides which places are judged.',
    consequence: 'Until the record has it, all hubs are judged as one, and all wheels, and all brakes.',
    fields: { axles: { label: 'Axles counted' } },
    outcomes: { counted: { because: 'Axles counted: {axles}. The rig’s record does not have the number yet, so single places were not seen by themselves.' } },
  },
  'axles.beam': {
    title: 'Axle beam',
    question: 'Is the axle beam straight and sound?',
    how: 'Sight along it from the side and below. A slight bow upwards in the middle is made so; a bow downwards or backwards is a bend. Scrape scale near brackets and inside open ends.',
    criterion: 'Straight, without crack, fracture or loss of wall.',
    consequence: 'A bent axle eats tyres; one cracked or thinned by rust drops the trailer on the road.',
    outcomes: {
      sound: { option: 'Straight and sound', because: 'The axle beam is straight and sound.' },
      'surface rust': { option: 'Surface rust', because: 'The axle beam has surface rust.', remedy: 'Clean and coat it at the next service.' },
      'scaled or pitted': { option: 'Scaled or pitted', because: 'The axle beam is scaled or pitted.', remedy: 'Scrape it back, measure what wall is left, and coat or renew it before the next trip.' },
      bent: { option: 'Bent', because: 'The axle beam is bent.', remedy: 'Renew the axle; it is not to be straightened with heat.' },
      cracked: { option: 'Cracked', because: 'The axle beam is cracked.', remedy: 'Do not tow it. Renew the axle.' },
      'rusted through': { option: 'Rusted through', because: 'The axle beam is rusted through.', remedy: 'Do not tow it. Renew the axle.' },
    },
  },
  'axles.spindle': {
    title: 'Spindle',
    question: 'Is the spindle straight, and are its seats unmarked?',
    how: 'Only with the hub off: wipe the seats clean, feel them with a fingernail, and look at the root for cracks and rust.',
    criterion: 'No crack or bend, bearing seats smooth, seal seat smooth.',
    consequence: 'A worn seat lets the bearing creep and the seal leak; a cracked spindle lets the wheel go.',
    outcomes: {
      sound: { option: 'Sound', because: 'The spindle and its seats are sound.' },
      'seal seat worn': { option: 'Seal seat worn', because: 'The seal seat is worn or rusted.', remedy: 'Dress or sleeve the seal seat when the seal is renewed.' },
      'bearing seat scored': { option: 'Bearing seat scored', because: 'A bearing seat is scored or blued.', remedy: 'Renew the spindle or axle with its bearings before the next trip.' },
      'bent or cracked': { option: 'Bent or cracked', because: 'The spindle is bent or cracked.', remedy: 'Do not tow it. Renew the spindle or axle.' },
      'hub not taken off': { option: 'Hub not taken off', because: 'The hub was not taken off: the spindle was not seen.' },
    },
  },
  'axles.mounting': {
    title: 'Axle mounting',
    question: 'Is the axle held firmly to the frame?',
    how: 'Look at bracket bolts, clamps and welds on both sides for gaps, shiny metal, rust trails and paint cracks. On an adjustable axle look for witness marks beside the clamps.',
    criterion: 'Bolts tight, welds whole, axle where it was set.',
    consequence: 'An axle that shifts steers the trailer by itself and may strike the hull.',
    outcomes: {
      sound: { option: 'Firm', because: 'The axle is held firmly.' },
      'bolts rusted': { option: 'Bolts rusted', because: 'The mounting bolts are rusted.', remedy: 'Renew the bolts one by one at the next service, to the maker’s torque.' },
      'bolts loose': { option: 'Bolts loose', because: 'Mounting bolts are loose.', remedy: 'Square the axle and torque the bolts before it is towed.' },
      'has shifted': { option: 'Has shifted', because: 'The axle has shifted in its clamps.', remedy: 'Set it back square and torque the clamps before it is towed; check the coupling load again.' },
      cracked: { option: 'Bracket or weld cracked', because: 'A bracket or weld of the axle is cracked.', remedy: 'Do not tow it. Have it repaired as the frame maker allows.' },
    },
  },
  'axles.frame-clearance': {
    title: 'Room above the axle',
    question: 'Can the axle and wheels move without striking frame or hull?',
    how: 'Look for polished or hammered places on axle, frame, keel and brake lines straight above the axle.',
    criterion: 'No sign of striking, and room left with the boat on.',
    consequence: 'A bottoming axle breaks springs, crushes brake lines and marks the hull.',
    outcomes: {
      clear: { option: 'Clear', because: 'There is room above the axle and no sign of striking.' },
      close: { option: 'Close', because: 'There is little room left above the axle with the boat on.', remedy: 'Check load and springs before the next trip.' },
      struck: { option: 'Has struck', because: 'The axle has struck what is above it.', remedy: 'Find out whether load or springs are at fault, and mend what was struck, before the next trip.' },
    },
  },
}
