import { readFile, symlink } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { photograph } from '../host/running-host'
import { openWorkplace, tandem, type Workplace } from './command-line'

let at: Workplace
beforeAll(async () => {
  at = await openWorkplace()
  await at.put('survey.json', tandem)
})
afterAll(() => at.clear())

const judgedSchema = z.object({
  verdict: z.string(),
  asked: z.number(),
  open: z.number(),
  tallies: z.record(z.string(), z.number()),
  findings: z.array(z.object({ check: z.string(), position: z.string(), verdict: z.string(), judged: z.string().optional(), because: z.string().optional(), remedy: z.string().optional(), by: z.string().optional() })),
  notSeen: z.array(z.object({ check: z.string(), position: z.string(), open: z.boolean(), reason: z.string().optional() })),
  checks: z.array(z.object({ check: z.string(), verdict: z.string() })),
})

describe('judge', () => {
  it('answers verdict, tallies and findings; what nobody answered is not seen, never a pass', async () => {
    const { code, out } = await at.run('judge', 'survey.json', '--json')
    const judged = judgedSchema.parse(JSON.parse(out))
    expect(code).toBe(0)
    expect(judged.verdict).toBe('advisory')
    expect(judged.tallies).toMatchObject({ pass: 1, advisory: 2, fail: 0 })
    expect(Object.values(judged.tallies).reduce((a, b) => a + b, 0)).toBe(judged.asked)
    expect(judged.checks).toHaveLength(judged.asked)
    expect(judged.open).toBe(judged.asked - 4)
    expect(judged.notSeen.find(({ open }) => !open)).toMatchObject({ check: 'hubs.oil-level', position: 'axle 2 left', reason: 'cap painted over' })
  })

  it('shows an overruled verdict beside the judged one', async () => {
    const { out } = await at.run('judge', 'survey.json', '--json')
    const overruled = judgedSchema.parse(JSON.parse(out)).findings.find(({ check }) => check === 'hubs.oil-condition')
    expect(overruled).toMatchObject({ verdict: 'advisory', judged: 'fail' })
    expect((await at.run('judge', 'survey.json')).out).toContain('Judged Fail; overruled: wash water under the cap, oil below it clear')
  })

  it('says to a person what was found, what to do and by when', async () => {
    const { code, out, error } = await at.run('judge', 'survey.json')
    expect([code, error]).toEqual([0, ''])
    expect(out).toMatch(/^Verdict: Advisory\n1 pass, 2 advisory, 0 fail; \d+ not seen, 0 not applicable; \d+ checks, \d+ of them open/)
    expect(out).toContain('right front')
    expect(out).not.toMatch(/\{\w+\}|undefined/)
  })
})

const refused: readonly [what: string, file: unknown, sentence: RegExp][] = [
  ['no JSON', 'rig: Tern', /is not JSON/],
  ['nothing', '', /is not JSON/],
  ['a list', [], /^wrong\.json should be a record/],
  ['a negative mass', { ...tandem, rig: { name: 'Tern', trailer: { massKg: -1 } } }, /rig\.trailer\.massKg/],
  ['a mass that is no number', { ...tandem, rig: { name: 'Tern', trailer: { massKg: 'heavy' } } }, /rig\.trailer\.massKg/],
  ['a rig without a name', { ...tandem, rig: { name: '', trailer: {} } }, /rig\.name/],
  ['a field that is misspelt', { ...tandem, anwsers: [] }, /anwsers/],
  ['a date to come', { ...tandem, surveyDate: '2026-06-17' }, /2026-06-17 is still to come/],
  ['a date that is none', { ...tandem, surveyDate: '2026-02-30' }, /surveyDate/],
  ['a purpose that is none', { ...tandem, purpose: 'fun' }, /purpose/],
  ['a check that is none', { ...tandem, answers: [{ check: 'hubs.colour' }] }, /“hubs\.colour” is not a check/],
  ['a check this rig is not asked', { ...tandem, rig: { name: 'Tern', trailer: { hubLubrication: 'grease', axleCount: 1 } } }, /“hubs\.oil-level” is not asked of this rig/],
  ['a position this rig has not', { ...tandem, answers: [{ check: 'hubs.oil-level', position: 'axle 3 left', values: { level: 1 } }] }, /axle 1 left, axle 1 right, axle 2 left, axle 2 right/],
  ['an answer given twice', { ...tandem, answers: [tandem.answers[0], tandem.answers[0]] }, /answered twice/],
  ['a reading beyond belief', { ...tandem, answers: [{ check: 'hubs.oil-level', position: 'axle 1 left', values: { level: 2 } }] }, /^answers\.0 \(hubs\.oil-level, axle 1 left\), level: at most 100 %/],
  ['a note of 4 MB', { ...tandem, answers: [{ check: 'hubs.oil-level', position: 'axle 1 left', note: 'n'.repeat(4_000_000) }] }, /note/],
  ['a set-aside without a reason', { ...tandem, answers: [{ check: 'hubs.oil-level', position: 'axle 1 left', aside: { as: 'not seen', reason: ' ' } }] }, /reason/],
]

describe('a survey file', () => {
  it.each(refused)('with %s is refused in one sentence, exit code 1', async (_what, file, sentence) => {
    await at.put('wrong.json', file)
    const { code, out, error } = await at.run('judge', 'wrong.json')
    expect(code).toBe(1)
    expect(out).toBe('')
    expect(error).toMatch(sentence)
    expect(error).not.toMatch(/\{\w+\}|undefined|\n/)
  })

  it('that is not there, or is a folder, or is too large, is refused by its name', async () => {
    expect((await at.run('judge', 'nowhere.json')).error).toContain('nowhere.json cannot be read')
    expect((await at.run('judge', '.')).error).toContain('cannot be read')
    await at.put('large.json', ' '.repeat(8_000_001))
    expect((await at.run('judge', 'large.json')).error).toContain('larger than 8 MB')
  })

  it('refused with --json says so as data on standard output too', async () => {
    await at.put('wrong.json', { ...tandem, purpose: 'fun' })
    const { code, out } = await at.run('judge', 'wrong.json', '--json')
    expect(code).toBe(1)
    expect(JSON.parse(out)).toMatchObject({ refusal: { field: 'purpose' } })
  })
})

describe('report of a survey file', () => {
  it('is written as a PDF, with its photographs, and takes no other file’s place', async () => {
    await at.put('photographs/hub.jpg', await photograph(5))
    await at.put('with-photograph.json', { ...tandem, reportNumber: 'TEST-1', photographs: [{ path: 'photographs/hub.jpg', check: 'hubs.oil-level', position: 'axle 1 right', caption: 'Right front hub' }] })
    const { code, error } = await at.run('report', 'with-photograph.json', '-o', 'out.pdf')
    expect([code, error]).toEqual([0, ''])
    const pdf = await readFile(join(at.folder, 'out.pdf'))
    expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-')
    expect(pdf.subarray(-8).toString('latin1')).toContain('%%EOF')
    const again = await at.run('report', 'with-photograph.json', '-o', 'out.pdf')
    expect(again.code).toBe(1)
    expect(again.error).toContain('is there already')
  })

  it.each(['../outside.jpg', '/etc/hostname', 'photographs/../../outside.jpg', 'link.jpg'])('refuses the photograph %s, outside the file’s folder or not there', async (path) => {
    await symlink('/etc/hostname', join(at.folder, 'link.jpg')).catch(() => undefined)
    await at.put('outside.json', { ...tandem, photographs: [{ path }] })
    const { code, error } = await at.run('report', 'outside.json', '-o', 'never.pdf')
    expect(code).toBe(1)
    expect(error).toMatch(/outside the survey file’s folder|cannot be read/)
  })

  it('refuses a text file named .jpg by its name, and writes nothing', async () => {
    await at.put('text.jpg', 'not a picture')
    await at.put('text.json', { ...tandem, photographs: [{ path: 'text.jpg' }] })
    const { code, error } = await at.run('report', 'text.json', '-o', 'text.pdf')
    expect(code).toBe(1)
    expect(error).toContain('“text.jpg”')
    await expect(readFile(join(at.folder, 'text.pdf'))).rejects.toThrow('ENOENT')
  })

  it('refuses a place that cannot be written', async () => {
    const { code, error } = await at.run('report', 'survey.json', '-o', 'no/such/folder/out.pdf')
    expect(code).toBe(1)
    expect(error).toContain('cannot be written')
  })
})

describe('schema survey', () => {
  it('prints a JSON Schema that names the same fields as the file has', async () => {
    const { code, out } = await at.run('schema', 'survey')
    const schema = z.object({ $schema: z.string(), type: z.literal('object'), properties: z.record(z.string(), z.unknown()), required: z.array(z.string()), additionalProperties: z.literal(false) }).parse(JSON.parse(out))
    expect(code).toBe(0)
    expect(schema.$schema).toContain('2020-12')
    expect(Object.keys(schema.properties)).toEqual(expect.arrayContaining(Object.keys(tandem)))
    expect(schema.required).toEqual(['rig', 'purpose', 'surveyDate'])
  })
})

describe('catalogue', () => {
  it('prints every check with a criterion and at least one source for both rule books', async () => {
    const { code, out } = await at.run('catalogue', '--json')
    const criterion = z.object({ criterion: z.string().min(1), sources: z.array(z.string().min(1)).min(1) })
    const printed = z.object({ checks: z.array(z.object({ id: z.string(), ruleBooks: z.object({ us: criterion, eu: criterion }) })) }).parse(JSON.parse(out))
    expect(code).toBe(0)
    expect(printed.checks.map(({ id }) => id)).toEqual(catalogue.map(({ id }) => id))
    const text = (await at.run('catalogue')).out
    for (const { id } of catalogue) expect(text).toContain(`${id}  `)
  })
})
