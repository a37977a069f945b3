import type { LampRow } from './lamp-row'

const always = { if: 'always' } as const
/** 80 in. */
const wide = { if: 'width at least', m: 2.032 } as const
/** 30 ft. */
const long = { if: 'length at least', m: 9.144 } as const

/**
 * Lamps and reflectors of a boat trailer. Clearance lamps as a boat trailer may have them: one double-faced lamp each
 * side near mid-length, at the widest point; separate front and rear ones do as well. Not in the table: relief for
 * trailers under 30 in wide or 6 ft long, which carry no boat that needs a survey.
 * Source: 49 CFR 571.108 (agency letters and restatements; Table I-b itself was not read); clearance option: agency letter
 * of 1974 to a trailer makers' association.
 */
export const usLamps: { readonly lamps: readonly LampRow[]; readonly reflectors: readonly LampRow[] } = {
  lamps: [
    { position: 'lamp tail left', colour: 'red', when: always },
    { position: 'lamp tail right', colour: 'red', when: always },
    { position: 'lamp stop left', colour: 'red', when: always },
    { position: 'lamp stop right', colour: 'red', when: always },
    { position: 'lamp turn left', colour: 'red or amber', when: always },
    { position: 'lamp turn right', colour: 'red or amber', when: always },
    { position: 'lamp plate', colour: 'white', when: always },
    { position: 'lamp side marker front left', colour: 'amber', when: always },
    { position: 'lamp side marker front right', colour: 'amber', when: always },
    { position: 'lamp side marker rear left', colour: 'red', when: always },
    { position: 'lamp side marker rear right', colour: 'red', when: always },
    { position: 'lamp side marker middle left', colour: 'amber', when: long },
    { position: 'lamp side marker middle right', colour: 'amber', when: long },
    { position: 'lamp clearance left', colour: 'amber to the front, red to the rear', when: wide },
    { position: 'lamp clearance right', colour: 'amber to the front, red to the rear', when: wide },
    { position: 'lamp identification', colour: 'red', when: wide },
  ],
  reflectors: [
    { position: 'reflector rear left', colour: 'red', when: always },
    { position: 'reflector rear right', colour: 'red', when: always },
    { position: 'reflector side front left', colour: 'amber', when: always },
    { position: 'reflector side front right', colour: 'amber', when: always },
    { position: 'reflector side rear left', colour: 'red', when: always },
    { position: 'reflector side rear right', colour: 'red', when: always },
    { position: 'reflector side middle left', colour: 'amber', when: long },
    { position: 'reflector side middle right', colour: 'amber', when: long },
  ],
}
