import { describe, expect, it } from 'vitest'
import { bandsAt, standingOf, standingOfShare, verdictOfStanding } from '../../../shared-logic/balance/bands'
import { settingsSchema } from '../../../shared-logic/survey/settings'
import { bandsOf, defaultSumsSettings, sumsSettingsSchema } from '../../../shared-logic/sums/settings'
import { sumsFileJsonSchema } from '../../../shared-logic/sums/sums-file'
import { sumsOf } from '../../../shared-logic/sums/sums'
import { en } from '../../../shared-logic/words/en'
import { saySums } from '../../../shared-logic/words/sums'
import { wholeRig, without } from './a-rig'

/** The bands as every yard kept them before Europe had its own. */
const earlier = { target: 0.1, passFrom: 0.07, passTo: 0.15, noticeFrom: 0.05, noticeTo: 0.18, failBelow: 0.04 }
const { us, eu } = defaultSumsSettings.balance

// Practice, not law. A vehicle maker's handbook: about 7 %, at least 4 %; a published UK towing guide: 5 to 7 %;
// definition of the centre-axle trailer (UN regulations, ISO vocabulary): at most 10 % or 1,000 kg, whichever is less.
describe('the bands of Europe', () => {
  it.each([
    [0.0399, 'too light', 'fail'], [0.04, 'light', 'advisory'], [0.0499, 'light', 'advisory'], [0.05, 'within', 'pass'], [0.07, 'within', 'pass'], [0.1, 'within', 'pass'],
    [0.1001, 'heavy', 'advisory'], [0.15, 'heavy', 'advisory'], [0.1501, 'very heavy', 'advisory'],
  ] as const)('a share of %d is %s: %s', (share, standing, verdict) => {
    expect(standingOfShare(share, eu)).toBe(standing)
    expect(verdictOfStanding[standing]).toBe(verdict)
  })
  it('aim at 7 %, those of the United States at 10 %', () => expect([eu.target, us.target]).toEqual([0.07, 0.1]))
  it.each([[999, 'within'], [1000, 'within'], [1001, 'heavy']] as const)('of a trailer of 12,500 kg %i kg on the coupling are %s: 1,000 kg come before a tenth', (couplingKg, standing) => {
    expect(standingOf(couplingKg / 12_500, couplingKg, eu, undefined)).toBe(standing)
  })
  it('set no such limit in the United States', () => expect(standingOf(0.1, 2000, us, undefined)).toBe('within'))
  it('carry the smaller of both as their upper end, and never aim above it', () => {
    expect(bandsAt(eu, 5_000)).toEqual(eu)
    expect(bandsAt(eu, 20_000)).toMatchObject({ passTo: 0.05, target: 0.05 })
    expect(bandsAt(us, 20_000)).toEqual(us)
  })
  it('judge the same rig otherwise than those of the United States', () => {
    const [here, there] = (['us', 'eu'] as const).map((book) => sumsOf(wholeRig(), book, defaultSumsSettings).balance)
    // 10.9 % of its total.
    expect([here?.standing, there?.standing]).toEqual(['within', 'heavy'])
    expect([here?.goal?.share, there?.goal?.share]).toEqual([0.1, 0.07])
  })
})

describe('bands that are kept', () => {
  it('before Europe had its own become Europe’s own', () => {
    expect(sumsSettingsSchema.parse({ reserve: 0.2, balance: { us: earlier, eu: earlier } })).toEqual({ reserve: 0.2, balance: { us, eu } })
    expect(settingsSchema.parse({ sums: { balance: { us: earlier, eu: earlier } } }).sums.balance.eu).toEqual(eu)
  })
  it('as somebody set them stay as they are', () => {
    const own = { ...earlier, passTo: 0.12 }
    expect(sumsSettingsSchema.parse({ balance: { eu: own } }).balance.eu).toEqual({ ...own, mostKg: 1000 })
    expect(sumsSettingsSchema.parse({ balance: { eu: { ...earlier, mostKg: 2000 } } }).balance.eu).toEqual({ ...earlier, mostKg: 2000 })
  })
  it('may name one figure and leave the rest to the rule book', () => expect(sumsSettingsSchema.parse({ balance: { eu: { target: 0.08 } } }).balance).toEqual({ us, eu: { ...eu, target: 0.08 } }))
  it('read again give the same', () => {
    for (const given of [{}, { balance: { eu: earlier } }, { balance: { eu: { ...earlier, mostKg: 40_000 } } }]) {
      const once = sumsSettingsSchema.parse(given)
      expect(sumsSettingsSchema.parse(JSON.parse(JSON.stringify(once)))).toEqual(once)
    }
  })
  it.each([{ mostKg: 0 }, { mostKg: -5 }, { passTo: 0.6 }, { target: -0.1 }])('are refused: %j', (bad) => expect(sumsSettingsSchema.safeParse({ balance: { eu: bad } }).success).toBe(false))
  it('stand in the file’s schema with a mass that may carry its unit', () => expect(JSON.stringify(sumsFileJsonSchema())).toMatch(/"mostKg":\{"anyOf":\[\{"type":"number"/))
})

describe('whose bands they are', () => {
  const said = (settings = defaultSumsSettings, book: 'us' | 'eu' = 'eu'): string => saySums(en, sumsOf(wholeRig(), book, settings), 'metric', '2026-11-25').find(({ id }) => id === 'balance')?.sources.join('; ') ?? ''
  it('is told with their sources', () => {
    expect(said()).toContain('At most 10 % or 1,000 kg, whichever is less')
    expect(said()).toContain('practice, not law')
    expect(said(defaultSumsSettings, 'us')).toContain('common practice, no source')
  })
  it('is told where they were set by hand', () => {
    const own = { ...defaultSumsSettings, balance: { us, eu: { ...eu, target: 0.08 } } }
    expect(bandsOf(own, 'eu').target).toBe(0.08)
    expect(said(own)).toContain('as set in this yard or file')
  })
})

// Twelve months: common practice, no source.
describe('a weighing in words', () => {
  const weighed = (date: string) => without(wholeRig(), (copy) => { copy.weighings = [{ method: 'tongue and axles', date, couplingKg: 190, axlesKg: 1500 }] })
  const lines = (date: string, today: string | undefined) => saySums(en, sumsOf(weighed(date), 'us', defaultSumsSettings), 'metric', today).flatMap((section) => section.lines)
  const isOld = (date: string, today: string | undefined): boolean => lines(date, today).some(({ text, verdict }) => verdict === 'advisory' && text.includes('is more than 12 months old'))
  it.each([
    ['2025-11-25', '2026-11-25', false], ['2025-11-24', '2026-11-25', true], ['2026-11-25', '2026-11-25', false], ['2027-01-01', '2026-11-25', false], ['2024-02-29', '2025-02-28', false], ['2024-02-29', '2025-03-01', true],
  ])('of %s is told to be old on %s: %s', (date, today, old) => expect(isOld(date, today)).toBe(old))
  it('is not called old where the day of reading is not known', () => expect(isOld('2001-01-01', undefined)).toBe(false))
  it('that stands in for a sum is named with its day', () => {
    const rig = without(weighed('2025-05-01'), (copy) => { copy.boat = { ...copy.boat, dryMassKg: undefined } })
    expect(saySums(en, sumsOf(rig, 'us', defaultSumsSettings), 'metric', '2026-11-25').flatMap((section) => section.lines).map(({ text }) => text).find((text) => text.startsWith('Limits are held'))).toContain('2025')
  })
})
