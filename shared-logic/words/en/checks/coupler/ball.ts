import type { StationCheckWords } from '../../../check-words'

export const couplerBallWords: StationCheckWords = {
  'coupler.ball-size': {
    title: 'Ball size',
    question: 'Is the ball the size marked on the coupler?',
    how: 'Read the size stamped on the coupler and the one on top of the ball. 50 mm and 2 in (50.8 mm) are not the same.',
    criterion: {
      us: 'Ball and coupler are marked with one size, not below the smallest for the trailer: 1-7/8 in to 2,000 lb, 2 in to 5,000 lb.',
      eu: 'Ball and coupler are of one size, normally 50 mm.',
    },
    consequence: 'A ball too small lets the coupler jump off; one too large keeps the latch from closing.',
    fields: { socket: { label: 'Size marked on the coupler' }, ball: { label: 'Size marked on the ball', hint: 'Left empty, the ball entered for this rig is taken.' } },
    outcomes: {
      matches: { because: 'Coupler {socket}, ball {ball}: they match.' },
      'small for the class': { because: 'Coupler and ball match at {ball}, but a trailer of this rating needs {least} or more.', remedy: 'Fit the larger coupler and ball, or have the maker confirm this one.', consequence: 'A small ball and coupler are made for a lighter trailer than this one may be.' },
      'ball slightly small': { because: 'Coupler {socket}, ball {ball}: close, but not the same size.', remedy: 'Fit the ball marked for this coupler before it is towed.' },
      'ball too small': { because: 'Coupler {socket}, ball {ball}: the ball is too small and can jump out.', remedy: 'Fit the right ball before it is towed.' },
      'ball too large': { because: 'Coupler {socket}, ball {ball}: the ball is too large to seat.', remedy: 'Fit the right ball before it is towed.' },
      'ball unknown': { because: 'The coupler is marked {socket}, but the size of the ball is not known.' },
    },
  },
  'coupler.ball-wear': {
    title: 'Ball wear',
    question: 'How thick is the ball where it is worn most?',
    how: 'Wipe off the grease. Measure with a calliper along and across the line of travel and take the smallest reading.',
    criterion: 'A 50 mm ball: as new from 49.61 mm, worn below that, renewed below 49.0 mm. Other balls: renewed when more than 5 % is worn away, unless the maker says sooner.',
    consequence: 'A worn ball rattles, wears the socket and can let the coupler go.',
    fields: { diameter: { label: 'Smallest diameter' }, surface: { label: 'Surface', options: { smooth: 'Smooth', 'flat or grooved': 'Flat spots or grooves', pitted: 'Pitted by rust' } } },
    outcomes: {
      'as new': { because: '{measured} measured on a {nominal} ball, smooth; the limit is {least}.' },
      marked: { because: '{measured} measured on a {nominal} ball, but its surface is marked.', remedy: 'Renew the ball before the next trip; look at the socket too.' },
      worn: { because: '{measured} measured: below a new ball ({fresh}), above the limit ({least}).', remedy: 'Measure it again before the next trip, and plan a new ball.' },
      'worn out': { because: '{measured} measured on a {nominal} ball: worn by {wear}, below the limit of {least}.', remedy: 'Renew the ball before it is towed; inspect the socket.' },
      'size unknown': { because: '{measured} measured, but wear cannot be worked out, because the size of the ball when new is not known.' },
    },
  },
  'coupler.ball-nut': {
    title: 'Ball nut',
    question: 'Is the ball tight on its mount, with lock washer and thread beyond the nut?',
    how: 'Try to turn the ball by hand and with a wrench. Count the threads beyond the nut. Ask when it was last tightened to torque.',
    criterion: "Tight to the maker's torque, lock washer fitted, at least two threads beyond the nut.",
    consequence: 'A ball that unscrews drops the trailer.',
    caution: 'Do not lie under a coupled rig that is not chocked.',
    outcomes: {
      tight: { option: 'Tight', because: 'The ball nut is tight, with washer and thread beyond the nut.' },
      'torque not known': { option: 'Tight, torque not known', because: 'The ball nut is tight by hand, but nobody knows its torque.', remedy: "Tighten it to the maker's torque with a wrench that reads it." },
      'thread short': { option: 'Thread too short', because: 'Fewer than two threads stand beyond the nut.', remedy: 'Fit a ball with a longer shank before it is towed.' },
      'washer missing': { option: 'Lock washer missing', because: 'The lock washer is missing.', remedy: 'Fit the washer and tighten to torque before it is towed.' },
      loose: { option: 'Loose', because: 'The ball is loose on its mount.', remedy: 'Do not tow it: renew nut and washer and tighten to torque.' },
    },
  },
}
