import { law, tradeLiterature } from './cite'
import type { Source } from './rule-book'

export const bearingArticles = tradeLiterature('bearing and hub articles of a boating education magazine, and a trailer maker’s manual')
export const careArticles = tradeLiterature('boat trailer maintenance articles')
export const surgeManuals = tradeLiterature('surge brake manuals of two trailer makers')
export const wheelNutTables = tradeLiterature('wheel nut torque tables')
export const boatSecuring = (says: string): Source => tradeLiterature('boat securing articles', says)
export const lashingScrapping = (says: string): Source => tradeLiterature('lashing equipment scrapping guidelines of a vehicle shipping line', says)
export const towBallGuides = (says: string): Source => tradeLiterature('tow ball guides', says)
export const lampRule = (clause?: string): Source => law('us', '49 CFR 571.108', clause)
export const ukLampRules = law('one place', 'Road Vehicles Lighting Regulations 1989 (UK)', 'as restated in guides')
export const ukBrakeGuide = tradeLiterature('brake rules as told by the UK trailer trade association')
