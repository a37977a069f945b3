import type { Source } from '../rules/rule-book'
import { fromMemory, tradeLiterature } from '../rules/cite'
import { isOver } from '../rules/beyond'
import type { Spot, touchingMetals } from '../survey/spot'

type Metal = (typeof touchingMetals)[number]

/** Volts below gold; two figures where the published copies give a range. */
interface AnodicIndex {
  readonly nobler: number
  readonly baser: number
  /** No text confirming the figure was found. */
  readonly fromMemory?: true
}

const index = (nobler: number, baser = nobler): AnodicIndex => ({ nobler, baser })

/**
 * Anodic index, as republished under the name of MIL-STD-889; the copies of that standard that were read hold an ordered
 * series without voltages, so the table is trade literature. Hot-dip galvanized steel (1.20) is from memory.
 */
export const anodicIndex: Readonly<Record<Metal, AnodicIndex>> = {
  'nickel alloy': index(0.3),
  copper: index(0.35),
  'brass or bronze': index(0.4, 0.45),
  'stainless steel': index(0.5),
  lead: index(0.7),
  'carbon steel': index(0.85),
  aluminium: index(0.9),
  'galvanized steel': { ...index(1.2), fromMemory: true },
  'zinc plated': index(1.25),
  magnesium: index(1.75),
}

/**
 * Potential in sea water against calomel, V. Source: US Naval Research Laboratory, seawater potential data (public domain): AISI 316 passive,
 * AA 6061-T, naval brass; zinc for either zinc coating. Metals it does not hold are left out.
 */
export const seawaterPotentialV: Readonly<Partial<Record<Metal, number>>> = {
  'stainless steel': -0.05, copper: -0.36, 'brass or bronze': -0.4, 'carbon steel': -0.61, aluminium: -0.76, 'galvanized steel': -1.03, 'zinc plated': -1.03, magnesium: -1.64,
}

export const galvanicPlaces = ['outdoors', 'unheated store', 'heated store'] as const
export type GalvanicPlace = (typeof galvanicPlaces)[number]

/** Greatest difference usually accepted, V. A trailer stands outdoors. */
export const galvanicLimitV: Readonly<Record<GalvanicPlace, number>> = { outdoors: 0.15, 'unheated store': 0.25, 'heated store': 0.5 }

export const galvanicSources: readonly Source[] = [
  tradeLiterature('anodic index tables', 'as republished under the name of MIL-STD-889; 0.15 V outdoors in salt'),
  { kind: 'published', title: 'US Naval Research Laboratory, seawater potentials' },
  { kind: 'published', title: 'MIL-DTL-14072F', clause: '3.13: the metal of the higher index corrodes; the smaller part should be the cathode' },
]
export const rememberedIndex = fromMemory('anodic index of hot-dip galvanized steel, 1.20 V')

/** Two metals touching in the wet. `anode` is the one that is eaten; 'neither' where they are alike. */
export interface Couple {
  readonly differenceV: number
  readonly limitV: number
  readonly accepted: boolean
  readonly anode: 'member' | 'other part' | 'neither'
  readonly isRemembered: boolean
  /** Measured between the two in sea water; undefined where the data do not hold one of them. */
  readonly seawaterGapV: number | undefined
}

const seawaterGap = (member: Metal, other: Metal): number | undefined => {
  const [a, b] = [seawaterPotentialV[member], seawaterPotentialV[other]]
  return a === undefined || b === undefined ? undefined : Math.abs(a - b)
}

/** The couple of a member with another part. Where the table gives a range the greater difference counts. */
export const coupleOf = (member: Metal, other: Metal, place: GalvanicPlace = 'outdoors'): Couple => {
  const own = anodicIndex[member]
  const touching = anodicIndex[other]
  const differenceV = member === other ? 0 : Math.max(Math.abs(own.baser - touching.nobler), Math.abs(touching.baser - own.nobler))
  const limitV = galvanicLimitV[place]
  return {
    differenceV, limitV, accepted: !isOver(differenceV, limitV),
    anode: differenceV === 0 ? 'neither' : own.baser > touching.baser ? 'member' : 'other part',
    seawaterGapV: seawaterGap(member, other),
    isRemembered: own.fromMemory === true || touching.fromMemory === true,
  }
}

/** The metal that lies at a spot's surface. Paint is no metal: what lies under it counts. */
const surfaceMetal: Readonly<Record<Spot['material'], Metal>> = {
  'galvanized steel': 'galvanized steel', 'painted over zinc': 'galvanized steel', 'zinc-plated steel': 'zinc plated',
  'painted steel': 'carbon steel', 'bare steel': 'carbon steel', aluminium: 'aluminium',
}

/** The couple recorded at a spot; undefined while the other metal is not. */
export const coupleAt = ({ material, touches }: Pick<Spot, 'material' | 'touches'>): Couple | undefined => (touches === undefined ? undefined : coupleOf(surfaceMetal[material], touches))
