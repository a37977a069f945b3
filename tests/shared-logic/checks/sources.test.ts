import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import type { Check } from '../../../shared-logic/checks/check'
import { lashingSources } from '../../../shared-logic/lashing/sources'
import { commercialRule, isBenchmark, law } from '../../../shared-logic/rules/cite'
import { ruleBooks, type RuleBook, type Source } from '../../../shared-logic/rules/rule-book'
import { saySource, sourcesOf } from '../../../shared-logic/words/check-sentences'

const asked = (ruleBook: RuleBook): readonly Check[] => catalogue.filter((check) => check.applies?.({ name: 'Rig', trailer: {} }, ruleBook) !== false)
const cited = (ruleBook: RuleBook): { readonly of: string; readonly source: Source }[] => asked(ruleBook).flatMap((check) => sourcesOf(check, ruleBook).map((source) => ({ of: check.id, source })))
const everywhere = [...ruleBooks.flatMap(cited), ...Object.entries(lashingSources).map(([of, source]) => ({ of, source }))]

/** Names by which a regulation gives itself away. */
const regulation = /\bCFR\b|COMAR\), |\bCode, |\bRSA\b|Directive|Regulation|\bregulation\b|inspection requirements|inspection manual|\bNHTSA\b/
const commercial = /^49 CFR 39\d/
/** What has no title and clause to look up. */
const literature = /articles?\b|guides?\b|guidance|guidelines|manuals?\b|pages\b|bulletin|\btables?\b/i

const kindOf = (source: Source) => ('title' in source ? source.title : '')

describe('the sources named beside a criterion', () => {
  it('say whom they bind, where they are regulations', () => {
    const unsaid = everywhere.filter(({ source }) => source.kind === 'published' && source.binds === undefined && regulation.test(`${source.title}, `))
    expect(unsaid.map(({ of, source }) => `${of}: ${saySource(source)}`)).toEqual([])
  })

  it('49 CFR 393 and 396 bind commercial vehicles only, 570 is written for heavy ones', () => {
    const rules = everywhere.flatMap(({ source }) => (source.kind === 'published' ? [source] : []))
    expect(rules.filter(({ title, binds }) => commercial.test(title) !== (binds === 'commercial')).map(saySource)).toEqual([])
    expect(rules.filter(({ title, binds }) => title.startsWith('49 CFR 570') !== (binds === 'heavy')).map(saySource)).toEqual([])
    expect(rules.filter(({ binds }) => binds === 'commercial').length).toBeGreaterThan(20)
  })

  it.each(ruleBooks)('are marked under the %s book where they bind nobody it speaks to', (ruleBook) => {
    const rules = cited(ruleBook).filter(({ source }) => source.kind === 'published' && source.binds !== undefined && source.binds !== ruleBook)
    expect(rules.length).toBeGreaterThan(20)
    expect(rules.filter(({ source }) => !isBenchmark(source) || !/\((benchmark|binds only there|by analogy)/.test(saySource(source))).map(({ of }) => of)).toEqual([])
  })

  it('a rule of the book itself is not called a benchmark', () => {
    const own = ruleBooks.flatMap((ruleBook) => cited(ruleBook).filter(({ source }) => source.kind === 'published' && source.binds === ruleBook))
    expect(own.length).toBeGreaterThan(10)
    expect(own.filter(({ source }) => isBenchmark(source)).map(({ of }) => of)).toEqual([])
  })

  it('articles, guides and manuals are called trade literature: nobody can look them up', () => {
    const passedOff = everywhere.filter(({ source }) => source.kind === 'published' && source.binds === undefined && literature.test(kindOf(source)))
    expect(passedOff.map(({ of, source }) => `${of}: ${saySource(source)}`)).toEqual([])
  })

  it('read plainly', () => {
    expect(saySource(commercialRule('393.104(b)', 'no damaged component'))).toBe('49 CFR 393.104(b), no damaged component (benchmark: binds commercial vehicles only)')
    expect(saySource(law('us', '49 CFR 571.108'))).toBe('49 CFR 571.108')
    expect(saySource({ kind: 'common practice' })).toBe('common practice, no source')
    expect(saySource({ kind: 'trade literature', title: 'wheel nut torque tables' })).toBe('trade literature: wheel nut torque tables')
  })

  /** Brakes fail only where the surveyor names the place whose law asks for them. */
  const failsByTheLawNamed = ['brakes.required']
  it.each(ruleBooks)('never let a benchmark alone decide a fail under the %s book', (ruleBook) => {
    const resting = asked(ruleBook).filter((check) => Object.values(check.outcomes).some(({ verdict }) => verdict === 'fail') && sourcesOf(check, ruleBook).every((source) => source.kind === 'from memory' || isBenchmark(source)))
    expect(resting.map(({ id }) => id).filter((id) => !failsByTheLawNamed.includes(id))).toEqual([])
  })
})
