import type { CorrosionFinding } from '../../corrosion/findings'

export interface FindingWords {
  /** Follows the place and a colon; a line by itself begins it with a capital. */
  readonly because: string
  readonly remedy?: string
}

/** What each finding says and what is to be done. Gaps are filled from `findingValues`. */
export const corrosionFindings: Readonly<Record<CorrosionFinding, FindingWords>> = {
  hole: { because: 'rusted or eaten through.', remedy: 'Do not tow it: have it repaired by a qualified welder as the maker allows, or renew it.' },
  'deep pit': { because: 'a pit {depth} of the wall deep, more than 30 %.', remedy: 'Do not tow it: have it judged, and repaired by a qualified welder as the maker allows, or renew it.' },
  'eaten away': { because: 'metal eaten away {across} across, more than {limit}.', remedy: 'Do not tow it: have it repaired by a qualified welder as the maker allows, or renew it.' },
  'too thin': { because: '{left} left of {wall}: {loss} lost over an area, more than 25 %.', remedy: 'Do not tow it: have it repaired by a qualified welder as the maker allows, or renew it.' },
  'pit by the weld': { because: 'beside a weld a pit {depth} of the wall deep, in metal of about half strength.', remedy: 'Do not tow it before a repair by a qualified aluminium welder.' },
  'near a mounting': { because: 'corroded within 30 cm of a mounting, where the load goes in.', remedy: 'Scrape to metal and have the wall judged there before it is towed.' },
  'pits not measured': { because: 'pits or loss of wall without all its measures; what is left of the wall is not known.', remedy: 'Measure the deepest pit and the sound wall before it is towed.' },
  'galvanic, large cathode': { because: 'eaten where it touches a nobler metal of larger area, {difference} apart (up to {coupleLimit} is usually accepted outdoors).', remedy: 'Measure what is left before it is towed; isolate the two metals, or use a fastener of the same metal.' },
  thinned: { because: '{left} left of {wall}: {loss} lost over an area.', remedy: 'Have it judged by a trailer workshop before the next trip; clean and coat it.' },
  pitted: { because: 'pits, {depth} of the wall deep.', remedy: 'Clean and coat it, and measure again before the next trip.' },
  'aluminium pits': { because: 'pits in aluminium, {depth} of the wall deep.', remedy: 'Clean and treat them before the next trip; measure again before the next season.' },
  scale: { because: 'corroded in layers; under them more is lost than it looks.', remedy: 'Scrape to metal and measure the wall before the next trip.' },
  galvanic: { because: 'attack where unlike metals meet.', remedy: 'Take the joint apart before the next trip; clean it, isolate the fastener with sleeve and washers, and refit it.' },
  crevice: { because: 'attack in a tight joint.', remedy: 'Take the joint apart before the next trip; clean, seal and refit it.' },
  'red rust past spot repair': {
    because: 'red rust on {share} of the face, protection rating {rating} (ISO 10289; by formula {formula}): beyond what a galvanizer may mend by spot repair on new work ({bareShare}, and {bareSpot} a spot).',
    remedy: 'Plan to galvanize again or to coat the whole member; repair the worst places before the next trip.',
  },
  blistered: { because: 'the coating is blistered; metal may be eaten away under it.', remedy: 'Open the blisters before the next trip, see what is beneath, then clean and coat it.' },
  'galvanic, other part': { because: 'the part it touches is the baser metal and is used up first, {difference} apart (up to {coupleLimit} is usually accepted outdoors).', remedy: 'Look after the fastener within a month: isolate it, or renew it once its coating is gone.' },
  'holed, no load': { because: 'a hole in a part that bears no load.', remedy: 'Renew or mend it within a month, before it tears or comes loose.' },
  'paint broken down': { because: '{share} of the face is rusted: degree Ri {ri} (ISO 4628-3). The paint has broken down.', remedy: 'Blast and paint the whole member within a month.' },
  'painted rust': { because: '{share} of the face is rusted: degree Ri {ri} (ISO 4628-3), grade {grade} (ASTM D610).', remedy: 'Blast or brush to sound metal and paint again within a month.' },
  'red rust on zinc': { because: 'red rust on {share} of the face: protection rating {rating} (ISO 10289; by formula {formula}).', remedy: 'Clean it and repair the zinc (cold galvanize), at least {zincRepair}, within a month.' },
  'large bare spot': { because: 'one rusted spot of {area} on zinc; the share of the face was not measured.', remedy: 'Measure the face; clean the spot and repair the zinc within a month.' },
  'weld rust': { because: 'edges or welds are rusting: more than 20 % of their length, or not measured.', remedy: 'Clean and coat them within a month, and look for cracks meanwhile.' },
  'heavy white product': { because: 'white product, and the zinc under it is down to {lowest}; at least {localMinimum} was called for when new.', remedy: 'Clean it, let it dry and coat it within a month.' },
  'bare steel': { because: 'uncoated steel rusts.', remedy: 'Clean and coat it within a month.' },
  'not measured': { because: 'rust whose area or face was not measured; it cannot be graded.', remedy: 'Measure spot and face within a month, and record them.' },
  'thin zinc': { because: 'zinc down to {lowest}; at least {localMinimum} was called for when new. There is little in reserve.', remedy: 'Plan to coat the member within a year.' },
  'small loss': { because: 'less than 10 % of the wall lost.' },
  slight: { because: 'slight.' },
  'white product': { because: 'white product of the zinc: appearance only.' },
  bloom: { because: 'white bloom on aluminium, no pits found.' },
  'foreign rust': { because: 'red rust on aluminium comes from another part: clean it off and look where it comes from.' },
  'foreign white': { because: 'a white deposit on steel without zinc is no corrosion of it: wash it off and look again.' },
  'not structural': { because: 'this part bears no load.' },
  'zinc alone': { because: 'the zinc is attacked, not the steel.' },
  sound: { because: 'repaired, and sound.' },
  'sound metal': { because: 'repaired, and sound.' },
  'depth not measured': { because: 'depth was not measured; what is left of the wall is not known.' },
  'no area scale': { because: 'no scale by area was found for bare aluminium; pits, holes and joints are judged instead.' },
}
