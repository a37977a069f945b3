import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { turnedMeasurement } from '../../../main/report/turned-measurement'
import { writeReport } from '../../../main/report/write-report'
import { measuredArea, type MeasurementGiven } from '../../../shared-logic/measuring/area'
import type { Measurement, Outline, PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import { reportDocumentSchema } from '../../../shared-logic/report/document'
import type { CorrosionSurvey, Survey } from '../../../shared-logic/survey/records'
import type { Spot } from '../../../shared-logic/survey/spot'
import { foundOn } from '../../../main/photos/outline-rings'
import { renderScene, type Scene } from '../../corrosion/scenes/render-scene'
import { pageTexts, readPdf } from './read-pdf'
import { samplePictureOf, sampleReport } from './sample-report'
import { sampleSurvey } from './sample-survey'

const sha256 = 'ab'.repeat(32)
let folder = ''
let scene: Scene
let picture: Uint8Array
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'corrosion-'))
  scene = await renderScene(3, { ground: 'zinc weathered', rust: 'spot', light: 'overcast' })
  const { data, width, height } = scene.pixels
  picture = await sharp(Buffer.from(data), { raw: { width, height, channels: 4 } }).removeAlpha().jpeg({ quality: 90 }).toBuffer()
}, 60_000)
afterAll(() => rm(folder, { recursive: true, force: true }))

const measurementBy = async (outline: Outline): Promise<Measurement> => {
  const given: MeasurementGiven = { widthPx: scene.pixels.width, heightPx: scene.pixels.height, scale: scene.scale, outline, face: scene.face }
  return { sha256, ...given, result: measuredArea(given, await foundOn(picture, given)) }
}

const spotsOf = (measurement: Measurement): Spot[] => {
  const { areaM2, uncertaintyM2, faceAreaM2 } = measurement.result
  return [
    { id: 'a', place: 'below the second bunk bracket', component: 'rail', material: 'galvanized steel', kind: 'red rust', areaM2, areaUncertaintyM2: uncertaintyM2, ...(faceAreaM2 !== undefined && { faceAreaM2 }), at: { view: 'plan', aftOfBallM: 3.1, toRightM: -0.9 }, measurement },
    { id: 'b', place: 'outer face by the spring hanger', component: 'rail', material: 'galvanized steel', kind: 'pitting', wallM: 0.004, pitDepthM: 0.0014, areaM2: 0.0009, nearMounting: true },
  ]
}

const survey = (spots: readonly Spot[]) => {
  const sample = sampleSurvey()
  return {
    ...sample,
    answers: [...sample.answers.filter(({ checkId }) => checkId !== 'frame.corrosion'), ...(spots.length === 0 ? [] : [{ checkId: 'frame.corrosion', position: 'left rail', answer: { values: { spots: [...spots] } }, answeredAt: '2026-11-24T10:00:00Z' }])],
  }
}

const write = async (outline: Outline, name: string) => {
  const spots = spotsOf(await measurementBy(outline))
  const document = sampleReport({}, { survey: survey(spots) })
  await writeReport(document, (hash) => (hash === sha256 ? Promise.resolve(picture) : samplePictureOf(hash)), join(folder, name))
  const pdf = await readPdf(join(folder, name))
  return { document, spots, pdf, text: (await pageTexts(pdf)).join(' ') }
}

describe('the corroded spots in a report', () => {
  it('stand on the drawing by number, in a table with area, share, depth, grade and remedy, and each in full', async () => {
    const { document, text, pdf } = await write({ by: 'finder', finder: 'rust 1', sensitivity: 0.5, strokes: [] }, 'found.pdf')
    expect(reportDocumentSchema.safeParse(JSON.parse(JSON.stringify(document))).success).toBe(true)
    const { corrosion } = document
    expect(corrosion?.table.rows.map((row) => row[0]?.text)).toEqual(['1', '2'])
    expect(corrosion?.figure.drawing.places.map(({ id }) => id)).toEqual(['spot 1', 'spot 2'])
    for (const cell of corrosion?.table.rows.flat() ?? []) expect(text).toContain(cell.text.split('\n')[0]?.split(' ').slice(0, 3).join(' ') ?? '')
    for (const spot of corrosion?.spots ?? []) {
      expect(text).toContain(spot.heading)
      for (const { text: line } of spot.lines) expect(text).toContain(line.split(' ').slice(0, 6).join(' '))
    }
    for (const paragraph of corrosion?.method ?? []) expect(text).toContain(paragraph.split(' ').slice(0, 6).join(' '))
    expect(text).toMatch(/Rp \d/)
    expect(text).not.toMatch(/\{\w+\}|undefined|NaN/)
    expect((await pdf.getOutline()).map(({ title }) => title)).toContain('Corroded spots')
  }, 90_000)

  it('show the photograph they were measured on as a marked copy with its area and how sure it is', async () => {
    const { document, text } = await write({ by: 'polygon', points: [[200, 150], [500, 150], [500, 420], [200, 420]] }, 'outlined.pdf')
    const [first, second] = document.corrosion?.spots ?? []
    expect(first?.picture?.caption).toMatch(/give or take .*Outlined by hand/)
    expect(second?.picture).toBeUndefined()
    expect(text).toContain('the original is untouched')
    expect(text).not.toContain(document.labels.missingPicture)
  }, 90_000)

  it('show it as the photograph was turned, with its own marks over it', async () => {
    const [spot] = spotsOf(await measurementBy({ by: 'polygon', points: [[200, 150], [500, 150], [500, 420], [200, 420]] }))
    if (spot === undefined) throw new Error('no spot')
    const { width: widthPx, height: heightPx } = scene.pixels
    const sample = survey([spot])
    const [photograph] = sampleSurvey({ photographs: 1 }).photographs
    if (photograph === undefined) throw new Error('no photograph')
    const taken = { ...photograph, sha256, widthPx, heightPx, quarterTurns: 1, marks: { widthPx, heightPx, marks: [{ kind: 'text' as const, at: [100, 100] as [number, number], text: 'begins here' }] } }
    const document = sampleReport({}, { survey: { ...sample, photographs: [taken] } })
    expect(reportDocumentSchema.safeParse(JSON.parse(JSON.stringify(document))).success).toBe(true)
    expect(document.corrosion?.spots[0]?.picture).toMatchObject({ quarterTurns: 1, alternative: expect.stringContaining('; marked: “begins here”') })
    await writeReport(document, (hash) => (hash === sha256 ? Promise.resolve(picture) : samplePictureOf(hash)), join(folder, 'turned.pdf'))
    const pdf = await readPdf(join(folder, 'turned.pdf'))
    const texts = await pageTexts(pdf)
    // Once over the photograph among the others, once over the measured copy.
    expect(texts.join(' ').split('begins here')).toHaveLength(3)
    expect(texts.join(' ')).not.toContain(document.labels.missingPicture)
  }, 90_000)

  it('are drawn at the same places of the turned picture: lengths and areas in the surface stay what they are', async () => {
    for (const by of ['length', 'rectangle'] as const) {
      const scale: Scale = by === 'length' ? { kind: 'length', from: [120, 90], to: [520, 260], lengthM: 0.2 } : { kind: 'rectangle', corners: [[100, 80], [620, 120], [600, 500], [90, 440]], widthM: 0.3, heightM: 0.2 }
      const ring: PixelPoint[] = [[200, 150], [500, 150], [470, 420], [220, 400]]
      const given = { widthPx: scene.pixels.width, heightPx: scene.pixels.height, scale, outline: { by: 'polygon' as const, points: ring } }
      const measurement: Measurement = { sha256, ...given, result: measuredArea(given, undefined) }
      for (const quarterTurns of [1, 2, 3]) {
        const turned = turnedMeasurement(measurement, [ring], quarterTurns)
        const again = measuredArea({ ...turned.measurement, outline: { by: 'polygon', points: [...(turned.rings[0] ?? [])] } }, undefined)
        expect(again.areaM2 / measurement.result.areaM2).toBeCloseTo(1, 6)
      }
    }
  })

  describe('that an earlier survey measured as well', () => {
    const zinc: Spot = { id: 'a', trail: 'first', place: 'below the second bunk bracket', component: 'tongue', material: 'galvanized steel', kind: 'red rust', areaM2: 0.0009, areaUncertaintyM2: 0.000_05, faceAreaM2: 0.4, coatingReadingsM: [60e-6, 64e-6] }
    const before: Spot = { ...zinc, id: 'first', trail: undefined, areaM2: 0.0005, coatingReadingsM: [75e-6, 79e-6] }
    const other: Spot = { id: 'other', place: 'front end', material: 'galvanized steel', kind: 'red rust', areaM2: 0.0002 }
    const earlier = (more: Partial<CorrosionSurvey> = {}): CorrosionSurvey => ({ surveyId: '01900000-0000-7000-8000-000000000077', date: '2024-11-20', status: 'issued', places: [{ position: 'left rail', spots: [before, other] }], ...more })
    const withExposure = (): Survey => {
      const made = survey([zinc])
      return { ...made, rig: { ...made.rig, trailer: { ...made.rig.trailer, exposure: 'coast' } } }
    }
    const partOf = (...corrosion: CorrosionSurvey[]) => sampleReport({}, { survey: withExposure(), corrosion }).corrosion
    const textOf = (part: ReturnType<typeof partOf>): string => part?.spots.flatMap(({ lines }) => lines.map(({ text }) => text)).join(' ') ?? ''

    it('are followed: growth, the day of the next grade, the measured rate of the zinc, a curve of each', () => {
      const part = partOf(earlier())
      expect(textOf(part)).toContain('Grown since 20 November 2024.')
      expect(textOf(part)).toMatch(/is reached (?:between|after) \d/)
      expect(textOf(part)).toContain('Life left in the zinc. Lowest reading 2.4 mil.')
      expect(textOf(part)).toContain('The measured rate is believed')
      expect(part?.spots[0]?.curves?.map(({ caption }) => caption.split('.')[0])).toEqual(['Area over the surveys', 'Coating over the surveys'])
    })

    it('say once that they are repaired, and how they were', () => {
      const repaired = sampleReport({}, { survey: survey([{ ...zinc, state: 'repaired' }]), corrosion: [earlier()] }).corrosion?.spots[0]?.lines.map(({ text }) => text) ?? []
      expect(repaired.filter((text) => /repaired/i.test(text))).toEqual(['Repaired, and sound.', '24 November 2026: repaired.'])
      expect(repaired.join(' ')).toContain('20 November 2024: ')
    })

    it('name what was noted before and not looked at again', () => {
      expect(partOf(earlier())?.introduction).toContain('front end (20 November 2024)')
      expect(partOf()?.introduction).not.toContain('not looked at again')
    })

    it('are not followed from a survey that is not issued, comes later, or is this one', () => {
      for (const more of [{ status: 'under way' as const }, { date: '2026-11-25' }, { surveyId: survey([]).id }]) {
        const part = partOf(earlier(more))
        expect(textOf(part)).toContain('Only the table can be used until a second survey')
        expect(part?.spots[0]?.curves).toBeUndefined()
        expect(part?.introduction).not.toContain('not looked at again')
      }
    })

    it('print their curves with what they tell in words', async () => {
      const document = sampleReport({}, { survey: withExposure(), corrosion: [earlier()] })
      expect(reportDocumentSchema.safeParse(JSON.parse(JSON.stringify(document))).success).toBe(true)
      await writeReport(document, samplePictureOf, join(folder, 'followed.pdf'))
      const text = (await pageTexts(await readPdf(join(folder, 'followed.pdf')))).join(' ')
      for (const { caption } of document.corrosion?.spots[0]?.curves ?? []) expect(text).toContain(caption.split(' ').slice(0, 6).join(' '))
      expect(text).toContain('Grown since 20 November 2024.')
    }, 60_000)
  })

  it('tell of a spot without a place of its own that it stands at its part', () => {
    const [placed] = [{ id: 'a', place: 'front', material: 'galvanized steel', kind: 'red rust', areaM2: 0.001, at: { view: 'plan', aftOfBallM: 3, toRightM: -0.9 } } satisfies Spot]
    const captionOf = (...spots: Spot[]): string | undefined => sampleReport({}, { survey: survey(spots) }).corrosion?.figure.caption
    expect(captionOf(placed)).not.toContain('not put on the drawing')
    expect(captionOf(placed, { ...placed, id: 'b', at: undefined })).toContain('not put on the drawing')
  })

  it('are left out where none was recorded', () => {
    expect(sampleReport({}, { survey: survey([]) }).corrosion).toBeUndefined()
  })
})
