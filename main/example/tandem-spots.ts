import type { Spot } from '../../shared-logic/survey/spot'
import { measured } from './measured-spots'

/** The rear cross-member where a strap anchor has chafed through the zinc: found, and found again two years later. Invented. */
const chafed = { place: 'rear cross-member, upper face, right of the middle', component: 'cross-member', material: 'galvanized steel', kind: 'red rust', at: { view: 'plan', aftOfBallM: 7.92, toRightM: 0.34 }, faceAreaM2: 0.12, wallM: 0.0048 } as const
const atBracket = { place: 'left rail, outer face, at the second bunk bracket', component: 'rail', material: 'galvanized steel', kind: 'red rust', at: { view: 'side', aftOfBallM: 4.3, heightM: 0.6 }, faceAreaM2: 0.86 } as const
const µm = 1e-6

export const spotsBefore: Readonly<Record<'cross-members' | 'left rail', readonly Spot[]>> = {
  'cross-members': [measured({ ...chafed, id: 'rear-1', coatingReadingsM: [80 * µm, 76 * µm, 79 * µm] })],
  'left rail': [{ ...atBracket, id: 'rail-1', areaM2: 0.0011 }],
}

export const spotsNow: typeof spotsBefore = {
  'cross-members': [
    measured({ ...chafed, id: 'rear-1 again', trail: 'rear-1', pitDepthM: 0.0003, coatingReadingsM: [62 * µm, 71 * µm, 58 * µm] }),
    { id: 'rear-2', place: 'rear cross-member, lower edge at the hanger', component: 'cross-member', material: 'galvanized steel', kind: 'red rust', at: { view: 'plan', aftOfBallM: 7.95, toRightM: -0.62 }, areaM2: 0.0003, faceAreaM2: 0.12 },
  ],
  'left rail': [{ ...atBracket, id: 'rail-1 again', trail: 'rail-1', state: 'repaired' }],
}
