import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { OpenedDesk } from '../../../main/desk/open'
import { originalsNamed } from '../../../main/desk/harmed-originals'
import type { RecordedPhotograph } from '../../../shared-logic/proof/acts'
import { checked } from '../desk/proven-yard'
import { ask, newFolder, open, picture, refusalOf, sha256, signAs, startSurvey } from '../desk/yard-on-disk'
import { pageTexts, readPdf } from './read-pdf'
import { en } from '../../../shared-logic/words/en'

const folder = newFolder()
const originals = join(folder, 'photographs', 'originals')
let opened: OpenedDesk
let surveyId: string
/** Where each original lies, by the name it came with: found by its hash, worked out here. */
const fileOf = new Map<string, string>()
const place = (name: string): string => fileOf.get(name) ?? ''

beforeAll(async () => {
  opened = await open(folder)
  await signAs(opened, 'Odile Varga')
  surveyId = (await startSurvey(opened)).id
  for (const [index, name] of ['hub.jpg', 'strap.jpg', 'lamp.jpg', 'private.jpg'].entries()) {
    const bytes = await picture(40 * index)
    const { photograph } = await ask(opened, 'photographs.add', { surveyId, ...(index < 2 && checked), fileName: name }, bytes)
    if (name === 'private.jpg') await ask(opened, 'photographs.choose', { photographIds: [photograph.id], isPrinted: false })
    fileOf.set(name, join(originals, readdirSync(originals, { recursive: true, encoding: 'utf8' }).find((file) => file.includes(sha256(bytes))) ?? ''))
  }
})
afterAll(() => opened.close())

const issuedPages = async (wanted: { readonly isHarmKnown?: boolean } = {}): Promise<string[]> => {
  const { report } = await ask(opened, 'reports.issue', { surveyId, ...wanted })
  await ask(opened, 'surveys.reopen', { surveyId })
  return (await pageTexts(await readPdf(join(folder, 'reports', `${report.pdfSha256}.pdf`)))).map((text) => text.replaceAll(/\s+/g, ' '))
}
const issuedText = async (wanted: { readonly isHarmKnown?: boolean } = {}): Promise<string> => (await issuedPages(wanted)).join(' ')
/** What the window shows beside the newest report. */
const saidInTheWindow = async (): Promise<string | undefined> => (await ask(opened, 'reports.list', { surveyId })).reports[0]?.harmSaid

/** As many bytes as before, one of them another. */
const changeAByte = (file: string): void => {
  const bytes = readFileSync(file)
  bytes[bytes.length - 3] = (bytes.at(-3) ?? 0) ^ 1
  writeFileSync(file, bytes)
}

describe('a report whose originals are all as they came in', { timeout: 60_000 }, () => {
  it('vouches for them, and says that they were read anew when it was issued', async () => {
    const text = await issuedText()
    expect(text).toContain('kept unaltered under their SHA-256 fingerprint and printed from reduced copies: every original was read anew when this report was issued, and found so.')
    expect(text).not.toContain('as they came in')
    expect(text).not.toMatch(/Original (missing|changed)/)
    expect(text).not.toContain('the original was not found as it came in')
    expect(await saidInTheWindow()).toBeUndefined()
  })
})

describe('originals that were lost and changed', { timeout: 60_000 }, () => {
  beforeAll(() => {
    renameSync(place('hub.jpg'), join(folder, 'hub kept.jpg'))
    renameSync(place('private.jpg'), join(folder, 'private kept.jpg'))
    changeAByte(place('strap.jpg'))
  })

  it('are told to who issues, by name and by what is wrong with each, and nothing is issued', async () => {
    const before = readdirSync(join(folder, 'reports'))
    const { code, sentence } = await refusalOf(opened, 'reports.issue', { surveyId })
    expect(code).toBe('report.originals-harmed')
    expect(sentence).toContain('Original missing: “hub.jpg”, “private.jpg”. Original changed: “strap.jpg”.')
    expect(sentence).not.toContain('lamp.jpg')
    expect(readdirSync(join(folder, 'reports'))).toEqual(before)
    expect((await ask(opened, 'surveys.get', { surveyId })).status).toBe('under way')
  })

  it('are named by a report issued all the same: it vouches for none of them, and says so beside each', async () => {
    const pages = await issuedPages({ isHarmKnown: true })
    const text = pages.join(' ')
    expect(text).not.toContain('kept unaltered')
    expect(text).toContain('Not all originals were found as they came in. Original missing: photograph 1. Original missing of photographs not printed: 1. Original changed: photograph 2.')
    expect(text).toContain('held to its SHA-256 fingerprint, and not all were found as they came in. Original missing: photograph 1.')
    expect(text.match(/Not as it came in: its original was missing when this report was issued\./g)).toHaveLength(1)
    expect(text.match(/Not as it came in: its original had been changed when this report was issued\./g)).toHaveLength(1)
    // Not every one was there to be read, and of each that prints the copy does.
    expect(text).not.toMatch(/every original was read/i)
    expect(text).toContain('Every original that was there and could be read was read anew')
    expect(text).toContain('Where the picture of one of these is printed, it is from the copy made before.')
    expect(text).not.toContain(en.report.labels.missingPicture)
    // Who reads the first page alone is told.
    const inShort = 'Of 3 photographs the original was not found as it came in: see “Method and limits”.'
    expect(pages[0]).toContain(inShort)
    expect(await saidInTheWindow()).toBe(inShort)
    // What was left out of the report is not named in it.
    expect(text).not.toContain('private.jpg')
  })

  it('whose copies are gone or changed too are told to who issues, and the report has words in the place of the picture', async () => {
    const copyOf = (name: string): string => place(name).replace(join('photographs', 'originals'), join('photographs', 'previews', 'large'))
    for (const name of ['strap.jpg', 'private.jpg']) rmSync(copyOf(name))
    const one = await refusalOf(opened, 'reports.issue', { surveyId })
    // Of “hub.jpg” the copy is whole, and “private.jpg” does not print.
    expect(one.sentence).toContain('The copy of these is gone or changed too, so a box with words is printed in place of the picture: “strap.jpg”. Nothing was issued yet.')
    changeAByte(copyOf('hub.jpg'))
    expect((await refusalOf(opened, 'reports.issue', { surveyId })).sentence).toContain('in place of the picture: “hub.jpg”, “strap.jpg”. Nothing was issued yet.')
    const text = await issuedText({ isHarmKnown: true })
    expect(text.split('No picture: neither its original nor a copy could be used when this report was written.')).toHaveLength(3)
    expect(text).not.toContain('from the copy made before')
  })

  it('brought back as they were are vouched for again', async () => {
    renameSync(join(folder, 'hub kept.jpg'), place('hub.jpg'))
    renameSync(join(folder, 'private kept.jpg'), place('private.jpg'))
    changeAByte(place('strap.jpg'))
    expect(existsSync(place('hub.jpg'))).toBe(true)
    expect(await issuedText()).toContain('every original was read anew when this report was issued, and found so.')
  })
})

describe('the originals a report rests on', () => {
  const recorded = (sha: string, removedAt: string | null): RecordedPhotograph => ({ photographId: sha, sha256: sha, byteCount: 1, facts: { removedAt } as RecordedPhotograph['facts'] })
  const measuredOn = (sha: string) => ({ answers: [{ ...checked, answeredAt: '2026-06-15T12:00:00Z', answer: { values: { spots: [{ id: 'a', place: 'rail', measurement: { sha256: sha } }] } } }] }) as unknown as Parameters<typeof originalsNamed>[0]

  it('are those of the survey, each once; one that was taken out of it only where a spot was measured on it', () => {
    const all = [recorded('a', null), recorded('a', null), recorded('b', '2026-06-15T12:00:00Z'), recorded('c', '2026-06-15T12:00:00Z')]
    expect(originalsNamed(measuredOn('c'), all).map((each) => each.sha256)).toEqual(['a', 'c'])
  })
})
