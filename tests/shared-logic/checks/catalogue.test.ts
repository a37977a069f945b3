import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { en } from '../../../shared-logic/words/en'

const gaps = (text: string): string[] => [...text.matchAll(/\{(\w+)\}/g)].map((match) => match[1] ?? '')

describe('the catalogue', () => {
  it('has no id twice', () => {
    expect(new Set(catalogue.map((check) => check.id)).size).toBe(catalogue.length)
  })

  it.each(catalogue.map((check) => [check.id, check] as const))('%s has words for everything it can say', (id, check) => {
    const words = en.checks[id]
    expect(words).toBeDefined()
    if (!words) return
    expect(Object.keys(words.outcomes).toSorted()).toEqual(Object.keys(check.outcomes).toSorted())
    for (const [key, outcome] of Object.entries(check.outcomes)) {
      const finding = outcome.verdict === 'fail' || outcome.verdict === 'advisory'
      expect(words.outcomes[key]?.because, `${id} ${key}`).toMatch(/[.)]$/)
      expect(finding, `${id} ${key} has a by-when if and only if it is a finding`).toBe(outcome.by !== undefined)
      if (finding) expect(words.outcomes[key]?.remedy, `${id} ${key} remedy`).toMatch(/\.$/)
    }
    for (const field of check.fields) {
      if (field.kind !== 'choice') {
        expect(words.fields?.[field.id]?.label, `${id} ${field.id} label`).toBeTruthy()
        continue
      }
      for (const option of field.options) {
        const label = words.fields?.[field.id]?.options?.[option] ?? words.outcomes[option]?.option
        expect(label, `${id} ${field.id} option ${option}`).toBeTruthy()
      }
    }
    expect(gaps(words.question + words.how)).toEqual([])
  })
})
