import type { Source } from './rule-book'

export const commonPractice: Source = { kind: 'common practice' }
export const published = (title: string, clause?: string): Source => (clause === undefined ? { kind: 'published', title } : { kind: 'published', title, clause })
export const fromMemory = (title: string): Source => ({ kind: 'from memory', title })

/** Binds commercial vehicles; a benchmark for a boat towed privately. */
export const commercialRule = (clause: string): Source => published('49 CFR Part 393 (commercial vehicles; here a benchmark)', clause)
/** Written for vehicles over 10,000 lb; a benchmark for lighter ones. */
export const inUseStandard = (clause: string): Source => published('49 CFR Part 570, vehicle in use inspection standards (here a benchmark)', clause)
export const maryland = (clause: string): Source => published('Maryland vehicle inspection rules (COMAR)', clause)
export const quebec = (clause: string): Source => published('Quebec regulation C-24.2, r. 32', clause)
export const roadworthiness = (item: string): Source => published('Directive 2014/45/EU, Annex I', `item ${item}`)

export const bearingArticles = published('Bearing and hub articles, boating education magazine and trailer maker’s manual')
export const careArticles = published('Boat trailer maintenance articles')
export const surgeManuals = published('Surge brake manuals of two trailer makers')
export const wheelNutTables = published('Wheel nut torque tables')
export const lampRule = (clause?: string): Source => published('49 CFR 571.108', clause)
export const ukLampGuides = published('Guides to the Road Vehicles Lighting Regulations 1989 (UK)')
export const ukBrakeGuide = published('UK trailer trade association, brake rules')
