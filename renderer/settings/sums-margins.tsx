import { useState } from 'react'
import type { RuleBook } from '../../shared-logic/rules/rule-book'
import { bandsOf, bandsOutOfOrder, defaultSumsSettings, sumsSettingsSchema, type BalanceBands, type SumsSettings } from '../../shared-logic/sums/settings'
import type { Settings } from '../../shared-logic/survey/settings'
import { measured, type UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { QuantityField } from '../parts/quantity-field'
import { useWords } from '../parts/use-words'
import style from './settings-page.module.css'
import type { KeepSettings } from './use-keep-settings'

type Margin = 'reserve' | keyof BalanceBands
const shareNames = ['failBelow', 'noticeFrom', 'passFrom', 'target', 'passTo', 'noticeTo'] as const
const marginNames = ['reserve', ...shareNames, 'mostKg'] as const satisfies readonly Margin[]

/** Typed and not kept yet; `undefined` where the field stands empty or cannot be read. */
type Typed = Readonly<Partial<Record<Margin, number | undefined>>>

const withTyped = (sums: SumsSettings, ruleBook: RuleBook, typed: Typed): unknown => {
  const { reserve = sums.reserve, ...bands } = typed
  return { reserve, balance: { ...sums.balance, [ruleBook]: { ...bandsOf(sums, ruleBook), ...bands } } }
}

const labelOf = ({ fields, screens: { settings } }: Words, name: Margin): string => (name === 'reserve' ? (fields['sums.reserve'] ?? '') : settings.bands[name])

const mostShare = 0.5
const mostMassKg = 40_000

/** What is wrong with one figure by itself. */
const problemOf = (words: Words, name: Margin, value: number | undefined, ruleBook: RuleBook, units: UnitSystem): string | undefined => {
  const { settings: said } = words.screens
  const field = labelOf(words, name)
  const isMass = name === 'mostKg'
  if (value === undefined) return isMass && ruleBook === 'us' ? undefined : say(said.marginMissing, { field }, units)
  if (value < 0 || (isMass && value === 0)) return say(said.marginAtLeast, { field, limit: measured(isMass ? 'mass' : 'ratio', 0) }, units)
  return value > (isMass ? mostMassKg : mostShare) ? say(said.marginAtMost, { field, limit: isMass ? measured('mass', mostMassKg) : measured('ratio', mostShare) }, units) : undefined
}

/** Why what was typed cannot be kept, by field. */
const problemsOf = (words: Words, sums: SumsSettings, ruleBook: RuleBook, typed: Typed, units: UnitSystem): Readonly<Partial<Record<Margin, string>>> => {
  const { settings: said } = words.screens
  const single = marginNames.flatMap((name): [Margin, string][] => {
    const problem = name in typed ? problemOf(words, name, typed[name], ruleBook, units) : undefined
    return problem === undefined ? [] : [[name, problem]]
  })
  if (single.length > 0) return Object.fromEntries(single)
  const bands = bandsOf(sumsSettingsSchema.parse(withTyped(sums, ruleBook, typed)), ruleBook)
  const wrong = bandsOutOfOrder(bands)
  if (!wrong) return {}
  const { lower, upper } = wrong
  return { [lower in typed ? lower : upper]: say(said.outOfOrder, { lower: labelOf(words, lower), upper: labelOf(words, upper), limit: measured('ratio', bands[upper] ?? 0) }, units) }
}

interface SumsMarginsProps {
  readonly settings: Settings
  readonly onChange: KeepSettings
}

/** What the sums are judged by; kept when a field is left, once all of them go together. */
export const SumsMargins = ({ settings: { sums, ruleBook, units }, onChange }: SumsMarginsProps) => {
  const words = useWords()
  const { settings: said } = words.screens
  const [typed, setTyped] = useState<Typed>({})
  const [left, setLeft] = useState<Typed>({})
  const problems = problemsOf(words, sums, ruleBook, left, units)
  const leave = (): void => {
    setLeft(typed)
    if (Object.keys(typed).length === 0 || Object.keys(problemsOf(words, sums, ruleBook, typed, units)).length > 0) return
    onChange((kept) => ({ sums: sumsSettingsSchema.parse(withTyped(kept.sums, ruleBook, typed)) }))
    setTyped({})
    setLeft({})
  }
  const bands = bandsOf(sums, ruleBook)
  const field = (name: Margin) => (
    <QuantityField
      key={`${ruleBook} ${name}`} label={labelOf(words, name)} name={`sums.${name}`} quantity={name === 'mostKg' ? 'mass' : 'ratio'} value={name in typed ? typed[name] : name === 'reserve' ? sums.reserve : bands[name]} error={problems[name]}
      onChange={(share) => setTyped({ ...typed, [name]: share })}
    />
  )
  const common = { ...sums, reserve: defaultSumsSettings.reserve, balance: { ...sums.balance, [ruleBook]: defaultSumsSettings.balance[ruleBook] } }
  const isCommon = sums.reserve === common.reserve && [...shareNames, 'mostKg' as const].every((name) => bands[name] === common.balance[ruleBook][name])
  return (
    <section className={style.part} aria-labelledby="part-margins">
      <div className={style.head}><h2 id="part-margins">{said.margins}</h2><p>{said.marginsText}</p></div>
      <div className={style.fields} onBlur={leave}>
        <div className={style.grid}>{field('reserve')}</div>
        <h3>{say(said.bandsOf, { ruleBook: said.ruleBooks[ruleBook] }, units)}</h3>
        <p className={style.state}>{said.bandsText}</p>
        <div className={style.grid}>{[...shareNames, 'mostKg' as const].map(field)}</div>
        {!isCommon && <div><Button onPress={() => { setTyped({}); setLeft({}); onChange({ sums: common }) }}>{said.asCommon}</Button></div>}
      </div>
    </section>
  )
}
