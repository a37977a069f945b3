import { inchM } from '../units/unit-table'
import type { RuleBook } from './rule-book'

/**
 * Least tread depth, m. 2/32 in is 1.5875 mm: a groove of 1.59 mm meets the one and not the other.
 * Sources: us 49 CFR 393.75(c) and 49 CFR 570.62(a); eu the UK's Construction and Use Regulations, regulation 27.
 */
export const leastTreadM: Readonly<Record<RuleBook, number>> = { us: (2 / 32) * inchM, eu: 0.0016 }

/** Queensland's practice note asks 1.5 mm: shown for comparison, judged by in neither rule book. */
export const queenslandLeastTreadM = 0.0015

export const isTreadBelow = (depthM: number, leastM: number): boolean => depthM < leastM - 1e-9

/** Worn, but legal: less than twice the least depth. Common practice, no source. */
export const isTreadLow = (depthM: number, leastM: number): boolean => depthM < 2 * leastM - 1e-9
