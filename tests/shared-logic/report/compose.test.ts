import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { cautionsThatApply, type CautionFacts } from '../../../shared-logic/report/cautions'
import { reportDocumentSchema } from '../../../shared-logic/report/document'
import { showsOf } from '../../../shared-logic/report/photographs-part'
import { sayInstant } from '../../../shared-logic/report/survey-facts'
import { verdictSentence } from '../../../shared-logic/report/verdict-part'
import { byWhens, verdicts } from '../../../shared-logic/survey/verdict'
import { en } from '../../../shared-logic/words/en'
import { sayCameraTime } from '../../../shared-logic/words/say-camera'
import { sampleReport } from '../../main/report/sample-report'
import { fullRig, sampleSurvey } from '../../main/report/sample-survey'

const none = { pass: 0, advisory: 0, fail: 0, 'not seen': 0, 'not applicable': 0 }

describe('a composed report', () => {
  const report = sampleReport({ findings: 0.2, photographs: 12 })

  it('is plain JSON that its own schema takes back unchanged', () => {
    const plain: unknown = JSON.parse(JSON.stringify(report))
    expect(reportDocumentSchema.parse(plain)).toEqual(plain)
  })

  it('has no gap left in any sentence and no field without its label', () => {
    expect(JSON.stringify(report)).not.toMatch(/\{[a-z]\w*\}/)
    expect(JSON.stringify(report.rig)).not.toMatch(/"(trailer|boat)\.\w+/)
  })

  it('counts every check once, in the whole and by station', () => {
    for (const verdict of verdicts) {
      expect(report.stations.reduce((sum, { tallies }) => sum + tallies[verdict], 0)).toBe(report.tallies[verdict])
      expect(report.stations.flatMap(({ checks }) => checks).filter((line) => line.verdict === verdict)).toHaveLength(report.tallies[verdict])
    }
    expect(report.findings).toHaveLength(report.tallies.fail + report.tallies.advisory)
    expect(report.notSeen).toHaveLength(report.tallies['not seen'])
  })

  it('orders findings by seriousness and urgency and numbers them from one', () => {
    const rank = report.findings.map(({ verdict, by }) => (verdict === 'fail' ? 0 : 100) + byWhens.indexOf(by))
    expect(rank).toEqual(rank.toSorted((a, b) => a - b))
    expect(report.findings.map(({ number }) => number)).toEqual(report.findings.map((_, index) => index + 1))
    expect(report.threeThings[0]?.findings[0]).toBe(1)
  })

  it('hides no fail behind the first page: what the three things leave out stands there in short', () => {
    const many = sampleReport({ findings: 0.5 })
    const fails = many.findings.filter(({ verdict }) => verdict === 'fail').map(({ number }) => number)
    const shown = [...many.threeThings, ...many.furtherFails].filter(({ verdict }) => verdict === 'fail').flatMap(({ findings }) => findings)
    expect(fails.length).toBeGreaterThan(5)
    expect(shown.toSorted((a, b) => a - b)).toEqual(fails)
    expect(many.furtherFails.every(({ verdict }) => verdict === 'fail')).toBe(true)
  })

  it('says what each by-when of its findings means, and no other', () => {
    const used = byWhens.filter((by) => report.findings.some((finding) => finding.by === by))
    expect(report.byWhenKey).toEqual(used.map((by) => ({ word: en.byWhens[by], meaning: en.report.byWhenMeanings[by] })))
    expect(sampleReport({ findings: 0, open: 0, aside: 0 }).findings.length > 0 || sampleReport({ findings: 0, open: 0, aside: 0 }).byWhenKey.length === 0).toBe(true)
  })

  it('says which findings want a photograph and have none', () => {
    const none = sampleReport({ findings: 0.2, photographs: 0 })
    const wanting = none.findings.filter(({ checkId }) => catalogue.find(({ id }) => id === checkId)?.photograph === true).map(({ number }) => number)
    expect(wanting.length).toBeGreaterThan(1)
    expect(none.photographsWanted).toBe(`Findings that want a photograph and have none: ${wanting.join(', ')}.`)
    expect(none.findings.filter(({ withoutPhotograph }) => withoutPhotograph !== undefined).map(({ number }) => number)).toEqual(wanting)
    for (const { photographs, withoutPhotograph } of report.findings) expect(photographs.length > 0 && withoutPhotograph !== undefined).toBe(false)
  })

  it('joins subject and caption without a stop and a semicolon beside each other', () => {
    expect(showsOf('Oil condition, right rear', 'Milky oil. Illustration, invented.')).toBe('Oil condition, right rear: Milky oil. Illustration, invented.')
    expect(showsOf('', 'Seen from the left')).toBe('Seen from the left')
    expect(showsOf('Jack', '')).toBe('Jack')
    for (const { shows, alternative } of report.photographs) expect(`${shows} ${alternative}`).not.toMatch(/[.;:,][;:,]/)
  })

  it('marks every finding once on the plan', () => {
    expect(report.plan.marks.flatMap(({ numbers }) => numbers).toSorted((a, b) => a - b)).toEqual(report.findings.map(({ number }) => number))
  })

  it('prints both verdicts and the reason where the surveyor overruled', () => {
    const survey = sampleSurvey({ findings: 0, aside: 0, open: 0 })
    const [first] = survey.answers
    if (first === undefined) throw new Error('no answers')
    const overruled = { ...survey, answers: [{ ...first, answer: { ...first.answer, overrule: { verdict: 'fail' as const, reason: 'Seen moving under load.' } } }, ...survey.answers.slice(1)] }
    const finding = sampleReport({}, { survey: overruled }).findings.find(({ checkId, position }) => checkId === first.checkId && position === first.position)
    expect(finding).toMatchObject({ verdict: 'fail', overruled: { reason: 'Seen moving under load.' } })
    expect(finding?.overruled?.judged?.word).toBeTruthy()
  })
})

describe('the verdict in a sentence', () => {
  it.each([
    ['fail', { ...none, fail: 1 }, 'Fail'],
    ['fail', { ...none, fail: 1, 'not seen': 3 }, 'Fail; 3 not seen'],
    ['pass', { ...none, pass: 9 }, 'Pass'],
    ['pass', { ...none, pass: 9, 'not seen': 3 }, 'Pass of what was seen; 3 not seen'],
    ['not seen', { ...none, 'not seen': 3 }, 'Not seen; nothing was judged'],
  ] as const)('%s of %o reads %s', (verdict, tallies, sentence) => {
    expect(verdictSentence(verdict, tallies, en)).toBe(sentence)
  })
})

describe('times', () => {
  it.each([
    ['2026:11:24 10:05:00', '24 November 2026, 10:05'],
    ['2026-11-24T10:05:00+02:00', '24 November 2026, 10:05 +02:00'],
    ['2026-00-24T10:05:00', '2026-00-24T10:05:00'],
    ['yesterday', 'yesterday'],
  ])('the camera’s %s is printed as %s', (written, printed) => expect(sayCameraTime(written)).toBe(printed))

  it('an issue is dated by the clock where the survey was made', () => {
    expect(sayInstant('2026-11-25T23:30:00Z', 'Asia/Tokyo', { words: en, units: 'metric' })).toBe('26 November 2026, 08:30, Asia/Tokyo')
    expect(sayInstant('2026-11-25T23:30:00Z', 'Nowhere/Land', { words: en, units: 'metric' })).toBe('25 November 2026, 23:30, UTC')
  })
})

describe('cautions', () => {
  const facts: CautionFacts = { rig: fullRig, survey: sampleSurvey(), asked: () => false, balanceSpokenOf: false, tieDownPrinted: false, dangerous: false, spotsRecorded: false, thicknessRead: false }
  const ids = (more: Partial<CautionFacts>): string[] => cautionsThatApply({ ...facts, ...more }).map(({ id }) => id)

  it('forbid towing only where a finding is to be put right before it is towed', () => {
    expect(ids({})).not.toContain('do not tow')
    expect(ids({ dangerous: true })[0]).toBe('do not tow')
  })

  it('say in bold that the plate is missing, in place of the plain sentence', () => {
    const bare = { ...fullRig, trailer: { ...fullRig.trailer, maximumMassKg: undefined } }
    expect(ids({})).toContain('plate decides')
    expect(cautionsThatApply({ ...facts, rig: bare })).toContainEqual({ id: 'plate missing', strong: true })
    expect(ids({ rig: bare })).not.toContain('plate decides')
  })

  it('speak of each axle only on a tandem without an equalizer', () => {
    expect(ids({})).not.toContain('each axle weighed')
    expect(ids({ rig: { ...fullRig, trailer: { ...fullRig.trailer, suspension: 'torsion arms' } } })).toContain('each axle weighed')
  })

  it('speak of straps, tyres and brakes where their stations were asked', () => {
    expect(ids({ asked: (station) => station === 'tie-down' })).toContain('straps')
    expect(ids({ asked: (station) => station === 'wheels' })).toContain('tyre age')
    expect(ids({ asked: (station) => station === 'brakes' })).toContain('brakes at rest')
  })

  it('always say that it is no certificate and tells of one day', () => {
    expect(ids({})).toEqual(expect.arrayContaining(['this day and place', 'limits quoted', 'outside the report', 'not a certificate']))
  })
})
