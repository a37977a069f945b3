import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { createHash } from 'node:crypto'
import { mkdtemp, readFile, readdir, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { writeReport } from '../../../main/report/write-report'
import type { ReportDocument } from '../../../shared-logic/report/document'
import { verdicts } from '../../../shared-logic/survey/verdict'
import { pageTexts, readPdf } from './read-pdf'
import { samplePicture, samplePictureOf, sampleReport, sampleSettings } from './sample-report'
import { fullRig, unknownRig } from './sample-survey'

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'report-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

const write = async (document: ReportDocument, name: string, pictureOf = samplePictureOf) => {
  const path = join(folder, name)
  const written = await writeReport(document, pictureOf, path)
  const pdf = await readPdf(path)
  return { path, written, pdf, texts: await pageTexts(pdf) }
}

/** How far down its text area a page is written, as a share; the running foot left out. */
const filledOf = async (pdf: PDFDocumentProxy, number: number): Promise<number> => {
  const page = await pdf.getPage(number)
  const { height } = page.getViewport({ scale: 1 })
  const { items } = await page.getTextContent()
  const baselines = items.flatMap((item) => ('transform' in item && item.str.trim() !== '' ? [Number(item.transform[5])] : [])).filter((y) => y > 60)
  return (height - 48 - Math.min(...baselines)) / (height - 48 - 60)
}

describe('an issued report', () => {
  const document = sampleReport({ findings: 0.1, photographs: 6 })

  it('reads back with its tallies, numbers, pages and bookmarks', async () => {
    const { pdf, texts, written, path } = await write(document, 'usual.pdf')
    const bytes = await readFile(path)
    expect(written).toEqual({ byteCount: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') })
    for (const verdict of verdicts) expect(texts[0]).toContain(`${document.tallies[verdict]} ${document.verdictWords[verdict]}`)
    expect(texts[0]).toContain(document.verdict.sentence)
    for (const thing of document.threeThings) expect(texts[0]).toContain(thing.what.slice(0, 20))
    const without = document.furtherFails.filter(({ where }) => !texts[0]?.includes(where.slice(0, 16))).flatMap(({ findings }) => findings)
    expect(document.furtherFails.length).toBeGreaterThan(3)
    expect(texts[0]).toContain(`${document.labels.furtherFailsMore} ${without.join(', ')}.`)
    for (const { word, meaning } of document.byWhenKey) expect(texts[1]).toContain(`${word} ${meaning.slice(0, 40)}`)
    texts.forEach((text, index) => {
      expect(text).toContain(`Page ${index + 1} of ${pdf.numPages}`)
      expect(text).toContain('BW-2026-0007, revision 1')
    })
    const outline = await pdf.getOutline()
    expect(outline.map(({ title }) => title)).toEqual(expect.arrayContaining(['Findings', 'The rig', 'Every check, by station', 'What was not seen', 'Cautions', 'Signature']))
    expect(outline.find(({ title }) => title === 'Findings')?.items).toHaveLength(document.findings.length)
    expect(texts.join(' ')).toContain(`The whole rig ${document.verdict.word} ${verdicts.map((verdict) => document.tallies[verdict]).join(' ')}`)
  }, 60_000)

  it('is tagged, titled, in a language, and carries itself as data', async () => {
    const { pdf } = await write(document, 'tagged.pdf')
    const { info, metadata } = await pdf.getMetadata()
    expect(info).toMatchObject({ Title: document.title, Author: 'Aslaug Renn', Language: 'en-GB' })
    expect(metadata?.get('pdfaid:part')).toBe('3')
    expect(metadata?.get('pdfuaid:part')).toBe('1')
    const tree = JSON.stringify(await (await pdf.getPage(1)).getStructTree())
    for (const tag of ['H1', 'H2', 'Figure', 'LBody']) expect(tree).toContain(`"role":"${tag}"`)
    expect([...((await pdf.getAttachments()) ?? new Map<string, unknown>()).keys()]).toEqual(['report.json'])
    const content: unknown = await pdf.getAttachmentContent('report.json')
    if (!(content instanceof Uint8Array)) throw new Error('report.json has no content')
    expect(JSON.parse(Buffer.from(content).toString('utf8'))).toEqual(JSON.parse(JSON.stringify(document)))
  }, 60_000)

  it('has the same bytes when written twice', async () => {
    const first = await write(document, 'first.pdf')
    const second = await write(document, 'second.pdf')
    expect(second.written).toEqual(first.written)
  }, 60_000)

  it('embeds the previews byte for byte', async () => {
    const picture = await samplePicture(3)
    const { path } = await write(document, 'pictures.pdf', async () => picture)
    expect((await readFile(path)).includes(Buffer.from(picture))).toBe(true)
  }, 60_000)

  it('says on its page that a picture cannot be read, and is written all the same', async () => {
    const { texts } = await write(document, 'missing.pdf', async (sha256) => (sha256.startsWith('00') ? Promise.reject(new Error('gone')) : Buffer.from('no picture')))
    expect(texts.join(' ')).toContain('could not be read')
    expect(texts.join(' ')).toContain('because the file is gone or damaged: photographs 1, 2, 3, 4, 5, 6.')
  }, 60_000)

  it('leaves nothing behind when it cannot be written', async () => {
    const before = await readdir(folder)
    await expect(writeReport({ ...document, issuedAt: 'never' }, samplePictureOf, join(folder, 'broken.pdf'))).rejects.toThrow(/[Ii]nvalid/)
    expect(await readdir(folder)).toEqual(before)
  }, 60_000)
})

const leastFilled = 0.7

describe('the pages of a report', () => {
  it.each([['A4', 'eu', 'metric'], ['Letter', 'us', 'us']] as const)('on %s are filled: findings leave little white, and the signature stands with other text', async (paper, ruleBook, units) => {
    const document = sampleReport({ ruleBook, findings: 0.15, photographs: 30 }, { settings: { ...sampleSettings, paper, units } })
    const { pdf, texts } = await write(document, `filled-${paper}.pdf`)
    const signature = texts.findIndex((text) => text.includes('Place and date'))
    expect(texts[signature]?.length).toBeGreaterThan(600)
    expect(signature).toBeLessThan(pdf.numPages - 1)
    const lastFinding = texts.findIndex((text) => /(?:^| )The rig Trailer Maker /.test(text))
    expect(lastFinding).toBeGreaterThan(2)
    for (let number = 2; number <= lastFinding; number += 1) expect([number, (await filledOf(pdf, number)) > leastFilled]).toEqual([number, true])
  }, 120_000)

  it('no heading stands alone at the foot of a page', async () => {
    const document = sampleReport({ findings: 0.1 })
    const { texts } = await write(document, 'headings.pdf')
    for (const { name } of document.stations) for (const text of texts) expect(text).not.toMatch(new RegExp(`${name} BW-2026-0007, revision 1`))
  }, 60_000)
})

describe('a report of an unusual survey', () => {
  it('carries Greek, Cyrillic, Polish and Vietnamese names, and shows a sign for letters no face has', async () => {
    const names = ['Ελένη Παπαδοπούλου', 'Дмитрий Щукин', 'Łukasz Żółć', 'Nguyễn Thị Ánh']
    const rig = { ...fullRig, name: 'Tern & <Co>', owner: { name: names.join(', '), address: 'ฉัตรชัย 漁港' } }
    const { texts, pdf } = await write(sampleReport({ rig }), 'names.pdf')
    for (const name of names) expect(texts[0]?.replaceAll(' ', '')).toContain(name.replaceAll(' ', ''))
    expect(texts[0]).toContain('□')
    expect((await pdf.getMetadata()).info).toMatchObject({ Title: 'Condition report BW-2026-0007: Tern & <Co>' })
  }, 60_000)

  it('with nothing known and nothing seen says so and calls nothing a pass', async () => {
    const { texts } = await write(sampleReport({ rig: unknownRig, open: 1 }), 'empty.pdf')
    expect(texts[0]).toContain('Not seen; nothing was judged')
    expect(texts[0]).toContain('0 Pass')
    expect(texts.join(' ')).toContain('No photographs belong to this survey.')
    expect(texts.join(' ')).toContain('not known')
  }, 60_000)

  it('with sixty findings and a note of 20,000 characters prints every word of it', async () => {
    const note = `${'Wording of a long note, word after word. '.repeat(490).slice(0, 19_980)} the note ends here`.slice(-20_000)
    const document = sampleReport({ findings: 0.3, note })
    expect(document.findings.length).toBeGreaterThan(59)
    const { texts, pdf } = await write(document, 'long.pdf')
    const all = texts.join(' ')
    expect(all).toContain('the note ends here')
    expect(all.match(/word after word/g)?.length).toBeGreaterThan(480)
    const outline = await pdf.getOutline()
    expect(outline.find(({ title }) => title === 'Findings')?.items).toHaveLength(document.findings.length)
  }, 60_000)

  it('on A4 has A4 pages', async () => {
    const { pdf } = await write(sampleReport({ ruleBook: 'eu' }, { settings: { ...sampleSettings, paper: 'A4', units: 'metric' } }), 'a4.pdf')
    const { width, height } = (await pdf.getPage(1)).getViewport({ scale: 1 })
    expect([Math.round(width), Math.round(height)]).toEqual([595, 842])
  }, 60_000)
})
