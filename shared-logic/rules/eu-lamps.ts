import type { LampRow } from './lamp-row'

const always = { if: 'always' } as const

/**
 * Lamps and reflectors of a light trailer, European practice.
 * Source: guides to the Road Vehicles Lighting Regulations 1989 (UK), as a model of European practice;
 * national rules prevail. Reversing lamps came in October 2012, front reflectors after September 1990. Side markers are
 * called for from 6 m without the drawbar, boat trailers excepted.
 */
export const euLamps: { readonly lamps: readonly LampRow[]; readonly reflectors: readonly LampRow[] } = {
  lamps: [
    { position: 'lamp tail left', colour: 'red', when: always },
    { position: 'lamp tail right', colour: 'red', when: always },
    { position: 'lamp stop left', colour: 'red', when: always },
    { position: 'lamp stop right', colour: 'red', when: always },
    { position: 'lamp turn left', colour: 'amber', when: always },
    { position: 'lamp turn right', colour: 'amber', when: always },
    { position: 'lamp plate', colour: 'white', when: always },
    { position: 'lamp fog', colour: 'red', when: { if: 'width over', m: 1.3 } },
    { position: 'lamp reversing', colour: 'white', when: { if: 'braked and built from within', year: 2012 } },
    { position: 'lamp front marker left', colour: 'white', when: { if: 'width at least', m: 1.6 } },
    { position: 'lamp front marker right', colour: 'white', when: { if: 'width at least', m: 1.6 } },
  ],
  reflectors: [
    { position: 'reflector triangle left', colour: 'red', when: always },
    { position: 'reflector triangle right', colour: 'red', when: always },
    { position: 'reflector front left', colour: 'white', when: { if: 'built from within', year: 1990 } },
    { position: 'reflector front right', colour: 'white', when: { if: 'built from within', year: 1990 } },
  ],
}
