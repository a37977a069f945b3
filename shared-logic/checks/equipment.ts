import type { Trailer } from '../rig/trailer'
import type { RuleBook } from '../rules/rule-book'
import type { Applies, Check } from './check'

/** Says whether a check is asked of a rig, from what the rig is fitted with. */
export type Condition = NonNullable<Check['applies']>

const fittedWith = <Key extends keyof Trailer>(key: Key, holds: (value: NonNullable<Trailer[Key]>) => boolean): Condition => (rig): Applies => {
  const value = rig.trailer[key]
  return value === undefined || value === null ? 'unknown' : holds(value)
}

/** False when any is false, else 'unknown' when any is. */
export const allOf = (...conditions: readonly Condition[]): Condition => (rig, ruleBook): Applies => {
  const answers = conditions.map((condition) => condition(rig, ruleBook))
  if (answers.includes(false)) return false
  return answers.includes('unknown') ? 'unknown' : true
}

export const suspendedOn = (form: NonNullable<Trailer['suspension']>): Condition => fittedWith('suspension', (value) => value === form)
export const sprung: Condition = fittedWith('suspension', (value) => value !== 'none')
export const lubricatedBy = (form: NonNullable<Trailer['hubLubrication']>): Condition => fittedWith('hubLubrication', (value) => value === form)
export const braked: Condition = fittedWith('brakes', (value) => value !== 'none')
export const brakedBy = (...forms: readonly NonNullable<Trailer['brakes']>[]): Condition => fittedWith('brakes', (value) => forms.includes(value))
export const hydraulic: Condition = brakedBy('surge', 'electric over hydraulic')
const brakeForm = (form: NonNullable<Trailer['brakeForm']>): Condition => fittedWith('brakeForm', (value) => value === form)
export const discBraked: Condition = allOf(braked, brakeForm('disc'))
export const drumBraked: Condition = allOf(braked, brakeForm('drum'))
export const severalAxles: Condition = fittedWith('axleCount', (value) => value > 1)
export const underRuleBook = (wanted: RuleBook): Condition => (_rig, ruleBook) => ruleBook === wanted
/** At least this wide, m. */
export const asWideAs = (widthM: number): Condition => fittedWith('widthM', (value) => value >= widthM - 1e-9)
export const heavierThan = (massKg: number): Condition => fittedWith('maximumMassKg', (value) => value > massKg)
