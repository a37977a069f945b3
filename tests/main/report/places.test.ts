import { load } from 'exifreader'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import sharp from 'sharp'
import { reportDocumentSchema, type ReportDocument } from '../../../shared-logic/report/document'
import type { ReportRow } from '../../../shared-logic/survey/records'
import type { OpenedDesk } from '../../../main/desk/open'
import { checked, pictureFromTheCamera } from '../desk/proven-yard'
import { ask, newFolder, open, picture, signAs, startSurvey } from '../desk/yard-on-disk'
import { pageTexts, readPdf } from './read-pdf'

const folder = newFolder()
let opened: OpenedDesk
let surveyId: string
beforeAll(async () => {
  opened = await open(folder)
  await signAs(opened, 'Odile Varga')
  surveyId = (await startSurvey(opened)).id
  await ask(opened, 'photographs.add', { surveyId, ...checked, fileName: 'hub.jpg' }, await pictureFromTheCamera(40))
  const turned = await ask(opened, 'photographs.add', { surveyId, fileName: 'strap.jpg' }, await pictureFromTheCamera(90))
  await ask(opened, 'photographs.turn', { photographId: turned.photograph.id, quarterTurns: 1 })
  await ask(opened, 'photographs.mark', { photographId: turned.photograph.id, layer: { widthPx: 48, heightPx: 32, marks: [{ kind: 'arrow', from: [5, 5], to: [20, 20] }] } })
  await ask(opened, 'photographs.add', { surveyId, fileName: 'nowhere.jpg' }, await picture(140))
})
afterAll(() => opened.close())

interface Issued {
  readonly report: ReportRow
  readonly bytes: Buffer
  readonly text: string
  readonly document: ReportDocument
}

const issue = async (wanted: { readonly withPlaces?: boolean }): Promise<Issued> => {
  const { report } = await ask(opened, 'reports.issue', { surveyId, ...wanted })
  await ask(opened, 'surveys.reopen', { surveyId })
  const path = join(folder, 'reports', `${report.pdfSha256}.pdf`)
  const pdf = await readPdf(path)
  const attached = await pdf.getAttachmentContent('report.json')
  return { report, bytes: await readFile(path), text: (await pageTexts(pdf)).join(' '), document: reportDocumentSchema.parse(JSON.parse(Buffer.from(attached ?? []).toString('utf8'))) }
}

/** The JPEG files in a PDF, as they lie there: streams under the filter DCTDecode. Source: ISO 32000-1:2008, 7.3.8 and 7.4.8. */
const jpegsIn = (pdf: Buffer): Buffer[] => {
  const text = pdf.toString('latin1')
  return [...text.matchAll(/<<((?:(?!<<|stream)[^])*?\/DCTDecode(?:(?!stream)[^])*?)>>\s*stream\r?\n/g)].map((match) => {
    const length = Number(/\/Length (\d+)/.exec(match[1] ?? '')?.[1])
    const from = match.index + match[0].length
    return pdf.subarray(from, from + length)
  })
}

const latitude = '38.70710'
const longitude = '9.13550'

describe('a report for sale', () => {
  it('carries none of the places its photographs were taken at: not in print, not as data, not in a picture', async () => {
    const { bytes, text, document } = await issue({})
    const pictures = jpegsIn(bytes)
    expect(pictures).toHaveLength(3)
    for (const jpeg of pictures) {
      expect((await sharp(jpeg).metadata()).format).toBe('jpeg')
      const { exif, gps, xmp, iptc, file } = load(jpeg, { expanded: true })
      expect([exif, gps, xmp, iptc]).toEqual([undefined, undefined, undefined, undefined])
      expect(file).toBeDefined()
      for (const mark of ['Exif\0\0', 'http://ns.adobe.com/', 'Photoshop 3.0', 'invented']) expect(jpeg.includes(mark)).toBe(false)
    }
    for (const figure of ['38.707', '9.1355', latitude, longitude]) {
      expect(text).not.toContain(figure)
      expect(JSON.stringify(document)).not.toContain(figure)
    }
    expect(document.photographs.every(({ placeFromTheCamera }) => placeFromTheCamera === undefined)).toBe(true)
  }, 60_000)

  it('prints them in the register where they are wanted, from the camera, and holds them frozen; the pictures stay without', async () => {
    const { bytes, text, document } = await issue({ withPlaces: true })
    const place = `${latitude}° N, ${longitude}° W`
    expect(document.photographs.map(({ fileName, placeFromTheCamera }) => [fileName, placeFromTheCamera])).toEqual([['hub.jpg', place], ['strap.jpg', place], ['nowhere.jpg', undefined]])
    expect(text.replaceAll(/\s/g, '').split(place.replaceAll(/\s/g, ''))).toHaveLength(3)
    for (const jpeg of jpegsIn(bytes)) expect(load(jpeg, { expanded: true }).gps).toBeUndefined()
  }, 60_000)

  it('leaves the originals theirs', async () => {
    const { photographs } = await ask(opened, 'surveys.get', { surveyId })
    const original = await opened.photograph(photographs[0]?.sha256 ?? '', 'original')
    const { gps } = load(Buffer.from(original?.bytes ?? []), { expanded: true })
    expect([gps?.Latitude, gps?.Longitude]).toEqual([expect.closeTo(38.7071, 4), expect.closeTo(-9.1355, 4)])
    expect(photographs[0]).toMatchObject({ latitude: expect.closeTo(38.7071, 4), longitude: expect.closeTo(-9.1355, 4) })
  })

  it('prints where the record of its photographs stood, whole, to be held to it', async () => {
    const { end } = await ask(opened, 'proof.verify', { surveyId })
    const { text, document } = await issue({})
    expect(document.photographRecord).toMatchObject({ entryCount: end?.entryCount, lastSha256: end?.lastSha256 })
    const pressed = text.replaceAll(/\s/g, '')
    expect(pressed).toContain(`${end?.entryCount}entries`)
    expect(pressed).toContain(end?.lastSha256)
    expect((await ask(opened, 'proof.verify', { surveyId })).problems).toEqual([])
  }, 60_000)
})
