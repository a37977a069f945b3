import { describe, expect, it } from 'vitest'
import { catalogue, checkOf } from '../../../shared-logic/checks/catalogue'
import type { Check, Field } from '../../../shared-logic/checks/check'
import { instrumentDrawings } from '../../../shared-logic/checks/check'
import { walkRoundChecks } from '../../../shared-logic/checks/depth'
import { positionsOf } from '../../../shared-logic/checks/positions'
import { ruleBooks } from '../../../shared-logic/rules/rule-book'
import { stations } from '../../../shared-logic/survey/station'
import type { CheckWords } from '../../../shared-logic/words/check-words'
import { criterionOf, saySource, sourcesOf } from '../../../shared-logic/words/check-sentences'
import { en } from '../../../shared-logic/words/en'
import { isPlainChoice } from './judged'

const gap = /\{\w+\}/
const rows = catalogue.map((check) => [check.id, check] as const)

/** Each fault in one line; none means the words say all that the check can come to. */
const faultsOf = (check: Check, words: CheckWords): string[] => [
  ...outcomeFaults(check, words),
  ...check.fields.flatMap((field) => fieldFaults(field, words)),
  ...(['title', 'question', 'how', 'consequence'] as const).flatMap((part) => (words[part].trim() === '' || gap.test(words[part]) ? [`${part} is empty or has a gap`] : [])),
  ...(words.question.endsWith('?') ? [] : ['the question is no question']),
  ...(check.caution === true && !words.caution ? ['a caution without words'] : []),
  ...(words.caution !== undefined && check.caution !== true ? ['words of caution that are never shown'] : []),
]

const outcomeFaults = (check: Check, words: CheckWords): string[] =>
  Object.entries(check.outcomes).flatMap(([key, outcome]) => {
    const said = words.outcomes[key]
    const finding = outcome.verdict === 'fail' || outcome.verdict === 'advisory'
    return [
      ...(/[.)]$/.test(said?.because ?? '') ? [] : [`${key}: no sentence why`]),
      ...(finding === (outcome.by !== undefined) ? [] : [`${key}: a by-when if and only if it is a finding`]),
      ...(finding && !(said?.remedy ?? '').endsWith('.') ? [`${key}: a finding without remedy`] : []),
      ...(!finding && said?.remedy !== undefined ? [`${key}: a remedy for no finding`] : []),
      ...(said?.consequence === undefined || (finding && /^[^{}]+\.$/.test(said.consequence)) ? [] : [`${key}: a consequence for no finding, or with a gap`]),
    ]
  })

const fieldFaults = (field: Field, words: CheckWords): string[] => {
  if (field.kind !== 'choice') return words.fields?.[field.id]?.label ? [] : [`${field.id}: no label`]
  const labels = field.options.map((option) => words.fields?.[field.id]?.options?.[option] ?? words.outcomes[option]?.option)
  return [...(labels.every((label) => label) ? [] : [`${field.id}: an option without label`]), ...(new Set(labels).size === labels.length ? [] : [`${field.id}: two options read alike`])]
}

const gateFaults = (check: Check): string[] =>
  check.fields.flatMap((field) => {
    const gate = field.when
    if (gate === undefined) return []
    const master = check.fields.find((candidate) => candidate.id === gate.field)
    return master?.kind === 'choice' && gate.oneOf.every((option) => master.options.includes(option)) ? [] : [`${field.id} waits for what cannot be chosen`]
  })

const rangeFaults = (check: Check): string[] =>
  check.fields.flatMap((field) => ((field.kind === 'reading' || field.kind === 'count') && !(field.min < field.max) ? [`${field.id} has no range`] : []))

describe('the catalogue', () => {
  it('has no id twice, and each id begins with its station', () => {
    expect(new Set(catalogue.map((check) => check.id)).size).toBe(catalogue.length)
    expect(catalogue.filter((check) => !check.id.startsWith(`${check.station}.`)).map((check) => check.id)).toEqual([])
    expect(catalogue.map((check) => checkOf(check.id))).toEqual(catalogue)
  })

  it('asks something at every station, and no fewer than 80 questions in all', () => {
    expect(stations.filter((station) => !catalogue.some((check) => check.station === station))).toEqual([])
    expect(catalogue.length).toBeGreaterThanOrEqual(80)
  })

  it('has no words without a check', () => {
    expect(Object.keys(en.checks).filter((id) => checkOf(id) === undefined)).toEqual([])
  })

  it.each(rows)('%s has words for everything it can say, and no others', (id, check) => {
    const words = en.checks[id]
    expect(words && faultsOf(check, words)).toEqual([])
    expect(Object.keys(words?.outcomes ?? {}).toSorted()).toEqual(Object.keys(check.outcomes).toSorted())
    const labelled = Object.keys(words?.fields ?? {})
    expect(labelled.filter((field) => !check.fields.some((own) => own.id === field))).toEqual([])
  })

  it.each(rows)('%s names its source and criterion under both rule books', (_id, check) => {
    for (const ruleBook of ruleBooks) {
      expect(sourcesOf(check, ruleBook).map(saySource).filter((source) => source.trim() !== '')).not.toEqual([])
      expect(criterionOf(en, check, ruleBook)).toMatch(/\S.*[.)]$/)
    }
  })

  it('nothing only remembered is ever the ground of a fail', () => {
    const onMemoryAlone = catalogue.filter(
      (check) => Object.values(check.outcomes).some(({ verdict }) => verdict === 'fail') && ruleBooks.some((ruleBook) => sourcesOf(check, ruleBook).every(({ kind }) => kind === 'from memory')),
    )
    expect(onMemoryAlone.map((check) => check.id)).toEqual([])
  })

  it.each(rows)('%s can come out without a finding, and asks only what can be answered', (_id, check) => {
    expect(Object.values(check.outcomes).some(({ verdict }) => verdict === 'pass' || verdict === 'not seen')).toBe(true)
    expect([...gateFaults(check), ...rangeFaults(check)]).toEqual([])
    expect(new Set(check.fields.map((field) => field.id)).size).toBe(check.fields.length)
  })

  it('every outcome of a plain choice is an option of it', () => {
    const choices = catalogue.filter(isPlainChoice)
    expect(choices.length).toBeGreaterThan(50)
    const reached = choices.flatMap((check) => Object.keys(check.outcomes).map((outcome) => check.judge({ [check.fields[0]?.id ?? '']: outcome }, { rig: { name: 'Rig', trailer: {} }, ruleBook: 'us', position: 'rig', surveyDate: '2025-06-01' })?.outcome === outcome))
    expect(reached.every(Boolean)).toBe(true)
  })

  it('every drawing named is one of the instruments', () => {
    const named = catalogue.flatMap((check) => [check.drawing, ...check.fields.map((field) => (field.kind === 'reading' ? field.drawing : undefined))]).filter((drawing) => drawing !== undefined)
    expect(named.filter((drawing) => !instrumentDrawings.includes(drawing))).toEqual([])
  })

  it('a check of spots names the button that says there is none', () => {
    const spots = catalogue.filter(({ fields }) => fields.some(({ kind }) => kind === 'spots'))
    expect(spots.length).toBeGreaterThan(0)
    expect(spots.filter(({ id }) => en.checks[id]?.how.includes(`“${en.screens.survey.spots.noneSeen}”`) !== true).map(({ id }) => id)).toEqual([])
  })

  it('every check of the walk-round is in the catalogue', () => {
    expect([...walkRoundChecks].filter((id) => checkOf(id) === undefined)).toEqual([])
  })

  it('every check has a place on a rig of which nothing is known', () => {
    const nowhere = ruleBooks.flatMap((ruleBook) => catalogue.filter((check) => positionsOf(check.positions, { name: 'Rig', trailer: {} }, ruleBook).length === 0))
    expect(nowhere.map((check) => check.id)).toEqual([])
  })
})
