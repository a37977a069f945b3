import type { FieldWords, OutcomeWords } from '../../check-words'

/** Said alike of the winch strap and of every tie-down strap. */
export const webbingFieldWords: Readonly<Record<string, FieldWords>> = {
  damage: {
    label: 'Worst damage',
    options: {
      none: 'None',
      'light wear': 'Light surface wear',
      fraying: 'Fraying',
      cut: 'Cut',
      split: 'Split or hole',
      burn: 'Burn or melting',
      chemical: 'Chemical damage',
      sun: 'Faded and stiff from sun',
      missing: 'Strap missing',
    },
  },
  length: { label: 'Damage across the strap', hint: 'All damage across the width added up, not the largest alone.' },
  width: { label: 'Width of the strap' },
}

export const webbingOutcomeWords: Readonly<Record<string, OutcomeWords>> = {
  none: { because: 'The webbing is free of damage.' },
  'light wear': { because: 'The surface is fuzzy from use; no yarn is broken.' },
  'small fraying': { because: 'Frayed over {length} of {width}: {share} of the width, within {limit}.', remedy: 'Renew the strap before the next trip: no damage that weakens is allowed.' },
  'small cut': { because: 'Cut over {length} of {width}: {share} of the width, within {limit}.', remedy: 'Renew the strap before the next trip: no cut that weakens is allowed.' },
  'small split': { because: 'Split over {length} of {width}: {share} of the width, within {limit}.', remedy: 'Renew the strap before the next trip: no damage that weakens is allowed.' },
  sun: { because: 'The webbing is faded and stiff from the sun; how much strength is left cannot be seen.', remedy: 'Renew the strap before the next trip.' },
  'frayed too far': { because: 'Frayed over {length} of {width}: {share} of the width, more than {limit}.', remedy: 'Renew the strap before it is towed.' },
  'cut too far': { because: 'Cut over {length} of {width}: {share} of the width, more than {limit}.', remedy: 'Renew the strap before it is towed.' },
  'split too far': { because: 'Split over {length} of {width}: {share} of the width, more than {limit}.', remedy: 'Renew the strap before it is towed.' },
  'out of service': { because: 'Damaged over {length} of {width}: {share} of the width, past {limit} and past the {service} at which a commercial vehicle is put out of service (that figure from memory).', remedy: 'Renew the strap before it is towed and cut the old one through.' },
  burn: { because: 'The webbing is burned or melted over {length} of {width}: heat damage is not measured off, it fails.', remedy: 'Renew the strap before it is towed; keep it clear of the exhaust.' },
  chemical: { because: 'The webbing is attacked by chemicals, acid or fuel.', remedy: 'Renew the strap before it is towed.' },
  missing: { because: 'The strap is missing.', remedy: 'Fit the strap before it is towed.' },
}
