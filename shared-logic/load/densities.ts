import type { Source } from '../rules/rule-book'
import type { tankContents } from '../rig/boat'

/** Mass of a tank's contents by volume, kg/m3: `middle` for the sum, `low` and `high` where the standard gives a band. */
export interface Density {
  readonly low: number
  readonly middle: number
  readonly high: number
  readonly source: Source
}

const water: Density = { low: 998, middle: 1000, high: 1000, source: { kind: 'from memory', title: 'fresh water, 1,000 kg/m³ (998.2 at 20 °C)' } }

/** What each kind of tank holds. Waste water counts as fresh, live well and ballast as sea water. */
export const densities: Readonly<Record<(typeof tankContents)[number], Density>> = {
  petrol: { low: 720, middle: 747.5, high: 775, source: { kind: 'from memory', title: 'EN 228, density at 15 °C, 720 to 775 kg/m³' } },
  diesel: { low: 820, middle: 832.5, high: 845, source: { kind: 'published', title: 'EN 590, density at 15 °C, temperate grades (three restatements)' } },
  'fresh water': water,
  'waste water': water,
  'live well': { low: 1000, middle: 1025, high: 1030, source: { kind: 'from memory', title: 'sea water, 1,025 kg/m³' } },
  ballast: { low: 1000, middle: 1025, high: 1030, source: { kind: 'from memory', title: 'sea water, 1,025 kg/m³' } },
}

/** Share of a tank's capacity that counts as full. Source: ISO 14946:2021 clause 5 d), f); ballast e). */
export const fullShare = (contents: (typeof tankContents)[number]): number => (contents === 'ballast' ? 1 : 0.95)
