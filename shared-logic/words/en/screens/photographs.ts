/** What may be wrong with a photograph, said while the surveyor still stands there. */
export const photographWords = {
  warnings: {
    blurred: 'Blurred: even its sharpest edges are {width} px wide, and for this {limit} px is the most. Hold still and let it focus.',
    tooDark: 'Too dark: half of it has {light} % of full light or less. Bring a lamp.',
    burntOut: 'Burnt out: {share} % of it is plain white. Turn away from the light, or shade it.',
    tooSmall: 'Small for this: {width} × {height} px, and {limit} px along its long edge are wanted. Go closer, or set the camera to its full size.',
  },
  /** In lists, beside the picture. */
  short: { blurred: 'Blurred', tooDark: 'Too dark', burntOut: 'Burnt out', tooSmall: 'Small' },
  same: 'The same picture also stands at “{place}”.',
  sameOfNone: 'The same picture also stands without a check.',
  alike: 'It looks like the one at “{place}”.',
  alikeOfNone: 'It looks like one without a check.',
  alikeHere: 'It looks like another one here.',
  heading: 'Look again at these photographs',
  onlySaid: 'Kept either way.',
  more: 'And {count} more, told where each is opened.',
  takeAgain: 'Take it again',
  takeAgainOf: 'Take it again: {name}',
  waiting: 'Goes when the new one is in',
  waitingOf: 'Goes when the new one is in: {name}',
  understood: 'Noted',
  warned: '{name} ({warnings})',
}
