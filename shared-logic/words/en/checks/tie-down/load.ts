import type { StationCheckWords } from '../../../check-words'

export const tieDownLoadWords: StationCheckWords = {
  'tie-down.engine': {
    title: 'Engine or drive support',
    question: 'Is the outboard or drive supported for the road?',
    how: 'Look for a transom saver or wedge; shake the leg. Measure the skeg above the ground with the rig loaded.',
    criterion: 'Held by a support or the maker\'s trailering lock, clear of the ground, not by its hydraulics alone.',
    consequence: 'An engine bouncing on its tilt loads the transom and bursts the trim rams.',
    caution: 'Keep clear of a tilted engine: it drops if the rams leak.',
    outcomes: {
      'supported and locked': { option: 'Supported and locked', because: 'The drive is supported and locked.' },
      'on its tilt lock': { option: 'On its tilt lock', because: 'The engine stands on its tilt lock, which is made for storage.', remedy: 'Fit a transom saver before the next trip, as the engine maker says.' },
      'on its hydraulics': { option: 'On its hydraulics', because: 'The drive hangs on its hydraulics.', remedy: 'Fit a support before it is towed.' },
      'support loose': { option: 'Support loose', because: 'The support is loose or can fall off.', remedy: 'Fix it before it is towed.' },
      'hangs low': { option: 'Hangs low', because: 'The skeg hangs low over the road.', remedy: 'Tilt and support it before it is towed.' },
    },
  },
  'tie-down.propeller': {
    title: 'Propeller and overhang',
    question: 'Is the propeller covered or marked where it stands out behind the lamps?',
    how: 'Look from astern and measure what stands out behind the lamp board.',
    criterion: 'Covered or flagged where it stands out; local law says from what length.',
    consequence: 'A bare propeller at knee height behind a rig wounds people.',
    outcomes: {
      'covered or flagged': { option: 'Covered or flagged', because: 'The propeller is covered or flagged.' },
      'inside the lamps': { option: 'Inside the lamps', because: 'The propeller stands inside the line of the lamps.' },
      'sticks out bare': { option: 'Sticks out bare', because: 'The propeller sticks out bare.', remedy: 'Cover and flag it before it is towed.' },
    },
  },
  'tie-down.loose-gear': {
    title: 'Loose gear',
    question: 'Is everything in the boat stowed?',
    how: 'Look under seats and on deck: anchors, batteries, cushions, hatches, fuel cans.',
    criterion: 'Nothing can blow out, slide or spill.',
    consequence: 'A cushion on the road makes the next car swerve; an anchor goes through it.',
    outcomes: {
      stowed: { option: 'Stowed', because: 'All gear is stowed.' },
      'could blow out': { option: 'Could blow out', because: 'Light gear could blow out.', remedy: 'Stow it before it is towed.' },
      'heavy and loose': { option: 'Heavy and loose', because: 'Heavy gear lies loose.', remedy: 'Tie or unload it before it is towed.' },
      'fuel cans loose': { option: 'Fuel cans loose', because: 'Fuel cans lie loose or open.', remedy: 'Close and secure or unload them before it is towed.' },
    },
  },
  'tie-down.cover': {
    title: 'Cover and tops',
    question: 'Are cover, canvas and tops fit for the road?',
    how: 'Try seams, straps and poles by hand against the wind.',
    criterion: 'A cover made for towing, tight; or none. Canvas and tops down and tied.',
    consequence: 'Cover or canvas that flogs tears off, polishes the gelcoat and blinds the driver behind.',
    outcomes: {
      'none, nothing to blow': { option: 'None, nothing to blow', because: 'No cover is on, and nothing can blow.' },
      'made for the road, tight': { option: 'Made for the road, tight', because: 'The cover is made for the road and tight.' },
      'canvas or top up': { option: 'Canvas or top up', because: 'Canvas or top is up.', remedy: 'Take it down and tie it before it is towed.' },
      'loose or torn': { option: 'Loose or torn', because: 'The cover is loose or torn.', remedy: 'Tie it, or take it off, before it is towed.' },
    },
  },
  'tie-down.mast-and-aerials': {
    title: 'Mast, tower and aerials',
    question: 'Are mast, tower and aerials down and tied?',
    how: 'Measure the highest point above the road.',
    criterion: 'Down and tied; overall height known and within what the route allows.',
    consequence: 'A mast that meets a wire kills; a tower meets a bridge.',
    outcomes: {
      'none fitted': { option: 'None fitted', because: 'No mast, tower or aerials are fitted.' },
      'down and tied': { option: 'Down and tied', because: 'Mast, tower and aerials are down and tied.' },
      'height not known': { option: 'Height not known', because: 'The overall height is not known.', remedy: 'Measure it and write it where the driver sees it, before it is towed.' },
      standing: { option: 'Standing', because: 'Mast, tower or aerials stand up.', remedy: 'Lower and tie them before it is towed.' },
    },
  },
  'tie-down.drain-plug': {
    title: 'Drain plug and water on board',
    question: 'Is the hull drained, and is the plug on board?',
    how: 'Look at transom drain and bilge; look for weed and mud.',
    criterion: 'No water in the hull: each litre is a kilogram on the axles. Many waters ask for the plug to be out on the road, against carried species. Plug kept with the keys.',
    consequence: 'Water on board overloads the trailer and carries weed and mussels to the next lake.',
    outcomes: {
      'out, hull drained': { option: 'Out, drained', because: 'The plug is out and the hull is drained.' },
      'in, hull dry': { option: 'In, hull dry', because: 'The plug is in and the hull is dry.' },
      'water in the hull': { option: 'Water in the hull', because: 'There is water in the hull.', remedy: 'Drain it before it is towed.' },
      'plug missing': { option: 'Plug missing', because: 'The drain plug is missing.', remedy: 'Put a plug with the keys before the next launch.', consequence: 'Launched without its plug, the boat fills.' },
      'weed or mud on board': { option: 'Weed or mud', because: 'Weed or mud hangs on boat or trailer.', remedy: 'Clean, drain and dry it before it is towed to another water.' },
    },
  },
}
