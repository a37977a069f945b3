import type { Rig } from '../../shared-logic/rig/rig'
import { weighingSchema, type Weighing, type WeighingMethod } from '../../shared-logic/rig/weighings'
import { faultsOf } from '../../shared-logic/sums/check-input'
import type { Quantity, UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { labelOf } from './label-of'
import { valueAt, withValueAt } from './rig-paths'
import { sayIssue } from './say-issue'

/** One figure of a weighing, by its path within it: 'axles.0.leftKg'. */
export interface WeighingInput {
  readonly path: string
  readonly quantity: Quantity
  readonly isOptional?: true
}

/** How a weighing stands while it is entered: figures by their path, and what decides which are asked. */
export interface WeighingDraft {
  readonly method: WeighingMethod
  readonly date: string | undefined
  readonly figures: Readonly<Record<string, number | undefined>>
  /** Paths of figures that stand there and cannot be read. */
  readonly unread: readonly string[]
  readonly axleCount: number
  /** Each axle as a whole, or its two sides. */
  readonly bySide: boolean
}

const mass = (path: string): WeighingInput => ({ path, quantity: 'mass' })
const length = (path: string): WeighingInput => ({ path, quantity: 'length' })

const plain: Readonly<Record<Exclude<WeighingMethod, 'each axle'>, readonly WeighingInput[]>> = {
  pads: [mass('standKg'), length('standAftOfBallM'), mass('leftKg'), mass('rightKg')],
  weighbridge: [mass('towAloneKg'), mass('towCoupledKg'), mass('trailerAxlesKg')],
  'tongue and axles': [mass('couplingKg'), mass('axlesKg')],
  'nose raised': [mass('totalKg'), mass('couplingLevelKg'), mass('couplingRaisedKg'), length('couplingHeightM'), { path: 'raisedRad', quantity: 'angle' }],
}

/** In the order in which they are easiest to come by. */
export const weighingMethods: readonly WeighingMethod[] = ['tongue and axles', 'weighbridge', 'pads', 'each axle', 'nose raised']

export const weighingInputs = ({ method, axleCount, bySide }: Pick<WeighingDraft, 'method' | 'axleCount' | 'bySide'>): readonly WeighingInput[] => {
  if (method !== 'each axle') return plain[method]
  const axles = Array.from({ length: axleCount }, (_, axle) => (bySide ? [mass(`axles.${axle}.leftKg`), mass(`axles.${axle}.rightKg`)] : [mass(`axles.${axle}.massKg`)]))
  return [...axles.flat(), { ...mass('couplingKg'), isOptional: true }, { ...length('ballHeightM'), isOptional: true }]
}

/** What a figure is called: 'Axle 2, left wheel'. */
export const labelOfFigure = (words: Words, path: string): string => {
  const axle = /^axles\.(\d+)\./.exec(path)?.[1]
  const label = labelOf(words, `weighings.${path}`)
  return axle === undefined ? label : say(words.screens.sums.weighing.ofAxle, { axle: Number(axle) + 1, label: label.toLowerCase() }, 'metric')
}

/** A kept weighing as it was entered, to be put right. */
export const draftOf = (weighing: Weighing, axleCount: number): WeighingDraft => {
  const axles = weighing.method === 'each axle' ? weighing.axles : []
  const shape = { method: weighing.method, axleCount: axles.length === 0 ? axleCount : axles.length, bySide: axles.length === 0 || axles.some(({ leftKg, rightKg }) => leftKg !== undefined && rightKg !== undefined) }
  const figures = weighingInputs(shape).map(({ path }) => [path, valueAt(weighing, path)] as const)
  return { ...shape, date: weighing.date, unread: [], figures: Object.fromEntries(figures.flatMap(([path, value]) => (typeof value === 'number' ? [[path, value]] : []))) }
}

/** What a draft comes to: the weighing once all is there, else what is missing and what cannot be right, by path. */
export interface ReadDraft {
  readonly weighing?: Weighing
  readonly missing: readonly string[]
  readonly problems: Readonly<Record<string, string>>
}

const candidateOf = ({ method, date, figures, axleCount }: WeighingDraft, inputs: readonly WeighingInput[]): unknown => {
  const axles = Array.from({ length: axleCount }, () => ({}))
  return inputs.reduce<unknown>((so, { path }) => withValueAt(so, path, figures[path]), { method, date, ...(method === 'each axle' && { axles }) })
}

/** Reads a draft as the weighing of this rig at `index` of its list. */
export const readDraft = (draft: WeighingDraft, rig: Rig, index: number, { words, units, today }: { readonly words: Words; readonly units: UnitSystem; readonly today: string }): ReadDraft => {
  const inputs = weighingInputs(draft)
  const missing = [...(draft.date === undefined ? ['date'] : []), ...inputs.filter(({ path, isOptional }) => draft.unread.includes(path) || (isOptional !== true && draft.figures[path] === undefined)).map(({ path }) => path)]
  const late: Readonly<Record<string, string>> = draft.date !== undefined && draft.date > today ? { date: say(words.screens.sums.problems.future, { field: labelOf(words, 'weighings.date') }, units) } : {}
  const parsed = weighingSchema.safeParse(candidateOf(draft, inputs))
  if (!parsed.success) {
    const wrong = inputs.flatMap(({ path, quantity }) => {
      const issue = draft.figures[path] === undefined ? undefined : parsed.error.issues.find((each) => each.path.join('.') === path)
      return issue ? [[path, sayIssue(words, issue, { label: labelOfFigure(words, path), quantity }, units)] as const] : []
    })
    return { missing, problems: { ...late, ...Object.fromEntries(wrong) } }
  }
  if (missing.length > 0) return { missing, problems: late }
  const weighings = [...(rig.weighings ?? [])]
  weighings[index] = parsed.data
  const fault = faultsOf({ ...rig, weighings }).find(({ field }) => field?.startsWith(`weighings.${index}.`))
  const problems = { ...late, ...(fault?.field !== undefined && { [fault.field.replace(`weighings.${index}.`, '')]: sayRefusal(words, fault) }) }
  return Object.keys(problems).length > 0 ? { missing, problems } : { missing, problems, weighing: parsed.data }
}
