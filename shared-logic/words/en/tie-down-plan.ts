import type { TieDownAdvice } from '../../lashing/advise'
import type { Standing } from '../../lashing/direction-hold'
import type { FrictionGround } from '../../lashing/friction'
import type { PullDirection } from '../../lashing/geometry'
import type { Method } from '../../lashing/methods'
import type { StandardPosition } from '../../lashing/would-do'
import type { RuleBook } from '../../rules/rule-book'

const standings: Readonly<Record<Standing, string>> = {
  holds: 'holds',
  short: 'falls short',
  'rests on the bow stop': 'rests on the bow stop',
  waits: 'cannot be worked out yet',
}

const directions: Readonly<Record<PullDirection, string>> = { forward: 'forward', rearward: 'rearward', left: 'to the left', right: 'to the right', up: 'upward' }

const grounds: Readonly<Record<FrictionGround, string>> = {
  measured: 'Friction {friction}, as measured.',
  carpet: 'Friction {friction} on carpeted bunks: the careful figure, from the nearest entry of a published table. None was found for a hull.',
  plastic: 'Friction {friction} on plastic-topped bunks: the careful figure, from the nearest entry of a published table. None was found for a hull.',
  wet: 'Friction {friction} on wet bunks: the careful figure, from the nearest entry of a published table. None was found for a hull.',
  'surface not known': 'Friction {friction}: what covers the bunks is not recorded, so they count as plastic-topped.',
  rollers: 'Rollers hold nothing by friction: 0 is reckoned with.',
  'supports not known': 'What the hull lies on is not recorded: friction 0 is reckoned with.',
}

const methods: Readonly<Record<Method['id'], { readonly name: string; readonly formula: string }>> = {
  'us working': {
    name: 'Forces against working load limits, 49 CFR 393.102(a)',
    formula: 'Needed: 0.435 of the boat’s weight forward, 0.5 rearward, 0.25 to each side, 0.2 upward. Held: each strap’s working load limit times its component against the movement, three quarters of the friction of the boat’s weight and of what the straps press down, and the bow stop.',
  },
  'us breaking': {
    name: 'Forces against breaking strength, 49 CFR 393.102(a)',
    formula: 'Needed: 0.8 of the boat’s weight forward, 0.5 rearward and to each side, 0.2 upward. Held: as above, with the breaking strength marked on each strap.',
  },
  eu: {
    name: 'Direct and over-top lashing, EN 12195-1',
    formula: 'Needed: 0.8 of the boat’s weight forward, 0.5 rearward and to each side. Held by direct straps at equal tension: tension times (component against the movement plus 0.75 of friction times component downward), and 0.75 of friction on the boat’s weight. Held over the top: 2 times friction times sine of the angle times the standard tension force, divided by 1.25 forward and 1.1 else. Upward the standard asks for nothing; 0.2 of the weight, from 49 CFR 393.102(b), is shown as a benchmark.',
  },
}

const advice: Readonly<Record<TieDownAdvice, string>> = {
  'transom strap pulls aft': '{strap} does not pull forward. A transom strap should lead down and forward, so that it holds the boat against its bow stop.',
  'transom strap does not pull down': '{strap} does not pull down. Move its trailer end lower.',
  'bow tie pulls forward': '{strap} does not pull aft. A bow tie should lead down and aft, so that it holds the boat when you brake.',
  'bow tie does not pull down': '{strap} does not pull down. Move its trailer end lower.',
  'winch strap does not pull forward': '{strap} does not pull forward. The winch strap should draw the stem into its stop.',
  'pulls up': '{strap} pulls up: it lifts the boat off its supports. Move its trailer end lower than its boat end.',
  steep: '{strap} stands at {angle} to the level. It presses the boat down but holds little along it; a flatter lead holds more.',
  'crosses the hull edge': '{strap} runs over an edge of the hull. Protect webbing and hull there.',
  'crosses under the hull': '{strap} crosses to the other side under the hull. Make sure that it does not bear on hull, bunk or drive.',
  'no rating': '{strap} has no rating recorded. It is not counted.',
  'no second bow tie': 'No bow tie beside the winch strap. Add one from the bow eye down and aft to the frame.',
  'no transom strap left': 'No transom strap on the left. Add one from the transom eye down and forward.',
  'no transom strap right': 'No transom strap on the right. Add one from the transom eye down and forward.',
}

const positions: Readonly<Record<StandardPosition, string>> = {
  'bow tie': '{count} from the bow eye down and aft at 45°, rated {rating}: each pulls {tension}',
  'transom pair': '{count} from the transom eyes down and forward at 30°, 20° off the long axis, rated {rating}: each pulls {tension}',
  'across, each side': '{count} on each side straight across at 45°, rated {rating}: each pulls {tension}',
}

const scopes: Readonly<Record<RuleBook, string>> = {
  us: 'A benchmark: 49 CFR 393.100 to 393.136 bind commercial carriers, not private towing. State law may ask for something else.',
  eu: 'A benchmark: EN 12195-1 is written for goods on road vehicles. It was read in a restatement, not in the original. National law may ask for something else.',
}

/** The tie-down plan as screen and report say it. */
export const tieDownPlanWords = {
  title: 'Tie-down plan',
  standings,
  directions,
  grounds,
  methods,
  advice,
  positions,
  scopes,
  boat: 'Boat as loaded: {mass}',
  boatAtMost: 'Boat as loaded: at most {mass}, tanks of unknown fill counted as full',
  boatAtLeast: 'Boat as loaded: at least {mass}; not all parts are known, so nothing can be said to hold',
  boatUnknown: 'Forces cannot be worked out: the mass of the boat is not known.',
  aggregate: 'Aggregate working load limit{without} {counted}; at least {needed}, half the boat’s weight. Direct straps, and straps back to the same side, count half; straps over to the other side count in full.',
  aggregateWaits: 'Aggregate working load limit{without} {counted}. What is needed cannot be worked out: the mass of the boat is not known.',
  count: '{fitted} straps fitted{without}; at least {least} for this length, {blocked}',
  countWaits: '{fitted} straps fitted{without}. How many are needed cannot be worked out: the length of the boat is not known.',
  without: ' without the winch strap',
  winchLeftOut: 'The winch strap is not counted as a tiedown, the stricter reading: winch and strap are for loading. Common practice, no source. Among the forces it counts with its own rating.',
  blocked: 'the bow stop blocking the boat forward',
  notBlocked: 'the boat not blocked forward',
  weakest: 'Weakest direction. {hold}',
  held: 'A pull {direction}: {held} held of {needed} needed, {share}.',
  heldWithWinch: 'A pull {direction}: {held} held of {needed} needed, {share}; {winch} of it by the winch strap.',
  stopMustBear: 'Bow stop and winch post must bear at least {force} when you brake hard; what they bear is not recorded.',
  noStrap: 'No strap fitted holds the boat {direction}.',
  wouldDo: 'By themselves these would hold the boat {direction}: {straps}.',
  toBuy: '{strap}: buy a strap rated at least {needed}; the next size commonly sold is {rating}.',
  toBuyNone: '{strap}: would need {needed}, more than any size commonly sold. Fit more straps.',
  equalTension: 'Straps of one direction are taken to share the load at equal tension; one too weak to keep up is not counted.',
  columns: { direction: 'Direction', needed: 'Needed', straps: 'Straps', friction: 'Friction', bowStop: 'Bow stop', held: 'Held', share: 'Share', strap: 'Strap', down: 'Below level', off: 'Off the long axis', length: 'Length', rating: 'Counts as' },
  caution: 'These sums assume sound anchors and tight, untwisted straps. Check the straps again after the first few miles or kilometres.',
  drawing: { strap: '{number} {strap}: needs {needed}', strapRated: '{number} {strap}: needs {needed}, counts as {rating}', plan: 'Plan', side: 'Side', sketch: 'Only the straps are to scale; trailer and boat are a sketch.', none: 'No strap has both ends recorded.' },
} as const
