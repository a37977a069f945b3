import { inchM } from '../units/unit-table'
import type { RuleBook } from './rule-book'

interface HeightBand {
  readonly fromM: number
  readonly toM: number
}

/**
 * Heights above the ground, m: rear lamps, and rear reflectors.
 * Sources: us 49 CFR 571.108 as restated (15 to 72 in, 15 to 60 in); eu guides to the Road Vehicles Lighting Regulations 1989
 * (indicators 350 to 1500 mm, triangles 250 to 900 mm).
 */
export const rearLampHeights: Readonly<Record<RuleBook, HeightBand>> = { us: { fromM: 15 * inchM, toM: 72 * inchM }, eu: { fromM: 0.35, toM: 1.5 } }
export const reflectorHeights: Readonly<Record<RuleBook, HeightBand>> = { us: { fromM: 15 * inchM, toM: 60 * inchM }, eu: { fromM: 0.25, toM: 0.9 } }

/** Centres of the three identification lamps, m: 6 to 12 in. Source: 49 CFR 571.108, agency letter 00433.ztv. */
export const identificationSpacing: HeightBand = { fromM: 6 * inchM, toM: 12 * inchM }
export const identificationLampCount = 3

export const isInBand = (band: HeightBand, valueM: number): boolean => valueM >= band.fromM - 1e-6 && valueM <= band.toM + 1e-6

/** Flashes a minute. Sources: guides to the Road Vehicles Lighting Regulations 1989; UN Regulation 48 (90, 30 more or less). */
export const flashRatePerMinute = { least: 60, most: 120 } as const
