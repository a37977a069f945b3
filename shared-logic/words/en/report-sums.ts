/** The sums as a report prints them. Gaps in braces. */
export const reportSums = {
  title: 'Load, balance, coupling and tie-down',
  introduction:
    'Worked out from the rig’s record on the day of issue. A sum is no better than its figures: what was weighed goes before what was added up, what is not known is named and not guessed, and no sum raises a rating. Figures are rounded one by one for reading; totals and differences are worked from the unrounded ones.',
  labels: { inputs: 'Worked from', formula: 'How', sources: 'By', caution: 'Caution' },
  columns: {
    what: 'What', mass: 'Mass', behindBall: 'Behind the ball', height: 'Above ground', limit: 'Limit', load: 'Load on it', rating: 'Rating', reserve: 'Reserve', used: 'Of the rating', standing: 'Standing',
    weighed: 'Weighed', reckoned: 'Reckoned', difference: 'Difference', onBoat: 'Holds the boat at', onTrailer: 'Holds the trailer at', route: 'Leads',
  },
  rows: { total: 'Total', coupling: 'On the coupling', axles: 'On the axles', share: 'Share on the coupling' },
  total: 'Total',
  between: '{low} to {high}',
  atLeast: 'at least {low}',
  limits: 'Every limit with what rests on it',
  reserveWanted: 'Reserve wanted under each limit',
  band: 'Coupling load wanted',
  bandFrom: '{from} to {to}, best {target}',
  compared: 'Weighed against reckoned',
  axleLoads: 'Axle loads',
  asBefore: 'as weighed or reckoned under “Balance”',
  masses: 'Masses',
  asListed: 'as listed above',
  boatMass: 'Mass of the boat as loaded',
  straps: 'Straps as they lead',
  strapEnds: 'Where each strap holds: behind the ball, beside the middle, above the ground',
  point: { middle: '{aft}; in the middle; {up}', left: '{aft}; {aside} left; {up}', right: '{aft}; {aside} right; {up}' },
  side: {
    toScale: 'From the side, coupler at the left, to scale along its length. Arrows down: masses; arrows up: what coupling and axles bear.',
    sketch: 'From the side, coupler at the left: a sketch, because lengths are not known. Arrows down: masses; arrows up: what coupling and axles bear.',
    alternative: 'The rig from the side with its loads as arrows: {coupling} on the coupling, {share} of the total; {axles} on the axles; centre of mass {centre} behind the ball.',
    alternativeWaits: 'The rig from the side with its known loads as arrows; what rests on the coupling is known only within bounds.',
  },
  curve: {
    caption: 'Share on the coupling as the tanks fill. Shaded: the good band; dashed: target, and the lightest and heaviest of all combinations; the red line: too little to tow with.',
    alternative: 'Curve of the share on the coupling over the level of the tanks: from {least} to {most}.',
  },
  lashing: {
    toScale: 'Straps from the side and from above, ball at the left, to scale. In the middle: the share of the need that is held each way.',
    sketch: 'Straps from the side and from above, ball at the left; trailer and boat are a sketch. In the middle: the share of the need that is held each way.',
    alternative: '{count} straps from the side and from above. {weakest}',
  },
}
