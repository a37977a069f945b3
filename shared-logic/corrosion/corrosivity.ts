import { assertNever } from '../assert-never'
import type { exposures } from '../rig/trailer'

type Exposure = (typeof exposures)[number]

/** Corrosivity of a place, mild to extreme. */
export const corrosivityClasses = ['C1', 'C2', 'C3', 'C4', 'C5', 'CX'] as const
export type CorrosivityClass = (typeof corrosivityClasses)[number]

interface Scale {
  /** Upper ends of C1 to C5, inclusive, then the top of CX, in µm a year (aluminium, which pits: g/m2 a year). */
  readonly upTo: readonly [number, number, number, number, number, number]
  /** Classes whose figures no text was found to confirm. */
  readonly remembered: readonly CorrosivityClass[]
}

/**
 * ISO 9223:2012, loss in the first year. Steel and zinc C1 to C5 from a handbook's table after ISO 12944-2, steel CX from a page on the
 * classes; zinc CX, copper and aluminium from memory. Aluminium has no upper end at CX.
 */
const firstYear = {
  'carbon steel': { upTo: [1.3, 25, 50, 80, 200, 700], remembered: [] },
  zinc: { upTo: [0.1, 0.7, 2.1, 4.2, 8.4, 25], remembered: ['CX'] },
  copper: { upTo: [0.1, 0.6, 1.3, 2.8, 5.6, 10], remembered: corrosivityClasses },
  aluminium: { upTo: [0, 0.6, 2, 5, 10, Number.POSITIVE_INFINITY], remembered: corrosivityClasses },
} as const satisfies Readonly<Record<string, Scale>>
export type CorrodingMetal = keyof typeof firstYear

const noise = 1e-9

/** The class a first year's loss falls into; undefined where it is worse than the table. Loss in µm (aluminium g/m2). */
export const classOfLoss = (metal: CorrodingMetal, loss: number): CorrosivityClass | undefined => corrosivityClasses[firstYear[metal].upTo.findIndex((top) => loss <= top * (1 + noise))]

/** Highest loss a year of the class: µm (aluminium g/m2). */
export const topRate = (metal: CorrodingMetal, of: CorrosivityClass): number => firstYear[metal].upTo[corrosivityClasses.indexOf(of)] ?? Number.POSITIVE_INFINITY

export const isRememberedRate = (metal: CorrodingMetal, of: CorrosivityClass): boolean => firstYear[metal].remembered.some((each) => each === of)

/** Classes a place may be, mildest and worst. */
export interface ClassRange {
  readonly mildest: CorrosivityClass
  readonly worst: CorrosivityClass
}

const range = (mildest: CorrosivityClass, worst: CorrosivityClass): ClassRange => ({ mildest, worst })

/**
 * The class by exposure, after the places ISO 9223 Table C.1 names: inland C2 to C3, coast C4 to C5. A trailer launched in salt water:
 * the parts that go under C5 to CX, C4 to C5 where they are rinsed each time; the rest C4, or C4 to C5 unrinsed. Common practice; estimating instead of measuring
 * is uncertain by about a class.
 */
export const classesOf = (exposure: Exposure, isDipped: boolean): ClassRange => {
  switch (exposure) {
    case 'inland':
      return range('C2', 'C3')
    case 'inland, fresh water':
      return isDipped ? range('C3', 'C4') : range('C2', 'C3')
    case 'coast':
      return range('C4', 'C5')
    case 'salt water, rinsed':
      return isDipped ? range('C4', 'C5') : range('C4', 'C4')
    case 'salt water, not rinsed':
      return isDipped ? range('C5', 'CX') : range('C4', 'C5')
    default:
      return assertNever(exposure)
  }
}

/** Wetting and drying by sea water keeps the zinc's protective layer from forming: no slowing is credited then. */
export const slowsDown = (exposure: Exposure, isDipped: boolean): boolean => !(isDipped && exposure.startsWith('salt water'))
