import { assertNever } from '../assert-never'
import { Refusal, type RefusalData } from '../contract/refusal'
import { loadOfIndexKg } from '../rules/tyre-load-index'
import { rigSchema, type Rig } from '../rig/rig'
import type { Weighing } from '../rig/weighings'

/** An outboard hangs behind the transom: this much may lie aft of it, m. Common practice, no source. */
const behindTransomM = 1.5

/** Stem to transom is never longer than the boat; so much is let pass for the tape. Common practice, no source. */
const tapeErrorM = 0.3

const fault = (code: string, field: string, values?: RefusalData['values']): RefusalData => ({ code, field, ...(values && { values }) })

const axleFaults = ({ trailer, stance }: Rig): RefusalData[] => {
  const { ballToAxleM, axleCount } = trailer
  const frontM = ballToAxleM === undefined ? undefined : ballToAxleM - (((axleCount ?? 1) - 1) / 2) * (stance?.axleSpacingM ?? 0)
  return frontM !== undefined && frontM <= 0 ? [fault('sums.axle-ahead-of-ball', 'trailer.ballToAxleM')] : []
}

const hullFaults = ({ boat, loading }: Rig): RefusalData[] => {
  const { stemAftOfBallM: stem, transomAftOfBallM: transom } = loading ?? {}
  if (stem === undefined || transom === undefined) return []
  if (stem >= transom) return [fault('sums.stem-behind-transom', 'loading.stemAftOfBallM')]
  return boat?.lengthM !== undefined && transom - stem > boat.lengthM + tapeErrorM ? [fault('sums.longer-than-the-boat', 'loading.stemAftOfBallM')] : []
}

/** Places in the boat that lie behind it. */
const placeFaults = ({ boat, loading }: Rig): RefusalData[] => {
  const lengthM = boat?.lengthM
  if (lengthM === undefined || loading === undefined) return []
  const places: [string, number | undefined, number][] = [
    ['loading.boatCentreAftOfStemM', loading.boatCentreAftOfStemM, 0],
    ['loading.engineAftOfStemM', loading.engineAftOfStemM, behindTransomM],
    ...(loading.tanks ?? []).map(({ aftOfStemM }, index): [string, number | undefined, number] => [`loading.tanks.${index}.aftOfStemM`, aftOfStemM, 0]),
    ...(loading.gear ?? []).map(({ aftOfStemM }, index): [string, number | undefined, number] => [`loading.gear.${index}.aftOfStemM`, aftOfStemM, behindTransomM]),
  ]
  return places.flatMap(([field, atM, spareM]) => (atM !== undefined && atM > lengthM + spareM ? [fault('sums.behind-the-transom', field)] : []))
}

const tankFaults = ({ boat, loading }: Rig): RefusalData[] =>
  (loading?.tanks ?? []).flatMap(({ fill, contentsM3 }, index): RefusalData[] => {
    const tank = boat?.tanks?.[index]
    const isSaid = fill !== undefined || contentsM3 !== undefined
    if (tank === undefined) return isSaid ? [fault('sums.no-such-tank', `loading.tanks.${index}`, { number: index + 1 })] : []
    if (contentsM3 !== undefined && contentsM3 > tank.capacityM3 * (1 + 1e-9)) return [fault('sums.tank-overfull', `loading.tanks.${index}.contentsM3`, { number: index + 1 })]
    const both = fill !== undefined && contentsM3 !== undefined && Math.abs(fill * tank.capacityM3 - contentsM3) > 0.01 * tank.capacityM3
    return both ? [fault('sums.tank-said-twice', `loading.tanks.${index}.contentsM3`, { number: index + 1 })] : []
  })

const tyreFaults = ({ trailer }: Rig): RefusalData[] => {
  const loadIndex = trailer.tyre?.loadIndex
  return loadIndex !== undefined && loadOfIndexKg(loadIndex) === undefined ? [fault('sums.no-such-load-index', 'trailer.tyre.loadIndex', { index: loadIndex })] : []
}

/** The figure of the wheels that shows nothing at all: a scale not switched on, or read before the trailer stood on it. */
const emptyScale = (weighing: Weighing): string | undefined => {
  switch (weighing.method) {
    case 'pads':
      return weighing.leftKg + weighing.rightKg === 0 ? 'leftKg' : undefined
    case 'weighbridge':
      return weighing.trailerAxlesKg === 0 ? 'trailerAxlesKg' : undefined
    case 'tongue and axles':
      return weighing.axlesKg === 0 ? 'axlesKg' : undefined
    case 'each axle':
      return weighing.axles.every(({ leftKg, rightKg, massKg }) => leftKg !== undefined && rightKg !== undefined ? leftKg + rightKg === 0 : massKg === 0) ? 'axles' : undefined
    case 'nose raised':
      return undefined
    default:
      return assertNever(weighing)
  }
}

const weighingFaults = ({ weighings, trailer }: Rig): RefusalData[] =>
  (weighings ?? []).flatMap((weighing, index): RefusalData[] => {
    const field = `weighings.${index}`
    if (weighing.method === 'nose raised' && (weighing.couplingLevelKg > weighing.totalKg || weighing.couplingRaisedKg > weighing.totalKg)) return [fault('sums.part-over-whole', `${field}.totalKg`)]
    const empty = emptyScale(weighing)
    if (empty !== undefined) return [fault('sums.scale-empty', `${field}.${empty}`)]
    if (weighing.method !== 'each axle') return []
    if (trailer.axleCount !== undefined && weighing.axles.length !== trailer.axleCount)
      return [fault('sums.axles-do-not-match', `${field}.axles`, { weighed: weighing.axles.length, axles: trailer.axleCount })]
    return weighing.axles.flatMap(({ leftKg, rightKg, massKg }, axle) =>
      massKg === undefined && (leftKg === undefined || rightKg === undefined) ? [fault('sums.half-missing', `${field}.axles.${axle}.${leftKg === undefined ? 'leftKg' : 'rightKg'}`, { axle: axle + 1 })] : [])
  })

const brakeFaults = ({ brakeTest }: Rig): RefusalData[] => {
  const { actuatorTravelM, actuatorStrokeM } = brakeTest ?? {}
  const overTravel = actuatorTravelM !== undefined && actuatorStrokeM !== undefined && actuatorTravelM > actuatorStrokeM ? [fault('sums.travel-over-stroke', 'brakeTest.actuatorTravelM')] : []
  const halves = (brakeTest?.axles ?? []).flatMap(({ leftN, rightN }, axle) =>
    (leftN === undefined) === (rightN === undefined) ? [] : [fault('sums.half-missing', `brakeTest.axles.${axle}.${leftN === undefined ? 'leftN' : 'rightN'}`, { axle: axle + 1 })])
  return [...overTravel, ...halves]
}

/** What cannot be right though each field by itself may be: one refusal a field. Zero and negative masses are refused by the schema before. */
export const faultsOf = (rig: Rig): RefusalData[] => [
  ...axleFaults(rig), ...hullFaults(rig), ...placeFaults(rig), ...tankFaults(rig), ...tyreFaults(rig), ...weighingFaults(rig), ...brakeFaults(rig),
]

/** Refuses the first of them. */
export const refuseFaultsOf = (rig: Rig): void => {
  const [first] = faultsOf(rig)
  if (first) throw new Refusal(first)
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value)

/** A copy without what stands at the path; a row of a list is emptied, a weighing or brake reading goes as a whole. */
const without = (value: unknown, path: readonly string[]): unknown => {
  const [name, ...rest] = path
  if (name === undefined) return undefined
  if (Array.isArray(value)) return value.map((each: unknown, index) => (String(index) === name ? (rest.length === 0 ? {} : without(each, rest)) : each))
  if (!isGroup(value)) return value
  if (rest.length > 0) return { ...value, [name]: without(value[name], rest) }
  return Object.fromEntries(Object.entries(value).filter(([key]) => key !== name))
}

const dropped = (rig: Rig, field: string): unknown => {
  const path = field.split('.')
  if (path[0] === 'weighings') return { ...rig, weighings: rig.weighings?.filter((_, index) => String(index) !== path[1]) }
  // A tank said twice, or with more in it than it holds: neither of the two figures can be trusted.
  if (path[1] === 'tanks' && path[3] === 'contentsM3') return without(without(rig, path), [...path.slice(0, 3), 'fill'])
  // Half a pair of brake forces: the whole axle list goes, for the sum of forces rests on it.
  if (path[0] === 'brakeTest' && path[1] === 'axles') return { ...rig, brakeTest: { ...rig.brakeTest, axles: undefined } }
  return without(rig, path)
}

/** The rig without the faulty fields, so that no number rests on them: what needed them waits for them. */
export const withoutFaults = (rig: Rig, faults: readonly RefusalData[]): Rig => {
  // From the last to the first, so that an index still means the same row.
  const left = faults.toReversed().reduce<Rig>((so, { field }) => {
    const parsed = field === undefined ? undefined : rigSchema.safeParse(dropped(so, field))
    return parsed?.success ? parsed.data : so
  }, rig)
  return left
}
