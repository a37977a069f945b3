import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { answerCall } from '../../../main/desk/answer-call'
import { openDesk, type OpenedDesk } from '../../../main/desk/open'
import { fillExample } from '../../../main/example/fill-example'
import { pictures } from '../../../main/example/pictures'
import { tandem } from '../../../main/example/rigs'
import { singleAxleStopsBefore, tandemScript } from '../../../main/example/scripts'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import type { Desk, ProcedureName } from '../../../shared-logic/contract/contract'
import type { Reply } from '../../../shared-logic/contract/reply'
import { trailsOf } from '../../../shared-logic/corrosion/trails'
import { askedChecks } from '../../../shared-logic/survey/assess'
import type { Settings } from '../../../shared-logic/survey/settings'

let folder = ''
let opened: OpenedDesk
let reply: Reply

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bunkwright-example-'))
  opened = await openDesk(folder)
  reply = await answerCall(opened.desk, 'yard.openExample', {})
}, 120_000)

afterAll(async () => {
  await opened.close()
  await rm(folder, { recursive: true, force: true })
})

describe('the example yard', () => {
  test('is made by one call', () => {
    expect(reply).toEqual({ ok: true, value: { rigCount: 3 } })
  })

  test('has one rig surveyed and reported, one with its survey under way, one with none', async () => {
    const { rigs } = await opened.desk['rigs.list']({ offset: 0, limit: 50 })
    expect(rigs.map((row) => row.latest?.status ?? 'none').toSorted()).toEqual(['issued', 'none', 'under way'])
  })

  test('holds the finished survey whole, with every picture at its place', async () => {
    const { surveys } = await opened.desk['surveys.list']({ offset: 0, limit: 50 })
    const issued = surveys.find((row) => row.surveyDate === tandemScript.surveyDate)
    if (!issued) throw new Error('no issued survey')
    const survey = await opened.desk['surveys.get']({ surveyId: issued.id })
    expect(survey.answers).toHaveLength(askedChecks(catalogue, tandemScript).length)
    expect(survey.summary.open).toBe(0)
    const kept = new Set(survey.photographs.map(({ fileName, checkId, position, takenAt }) => `${fileName}, ${checkId}, ${position}, ${takenAt}`))
    expect(kept).toEqual(new Set(pictures.map(({ file, checkId, position, takenAt }) => `${file}, ${checkId}, ${position}, ${takenAt}`)))
    expect(survey.photographs).toHaveLength(pictures.length)
    expect(survey.place).toContain('invented')
  })

  test('keeps the survey under way at the place where it was left', async () => {
    const { surveys } = await opened.desk['surveys.list']({ offset: 0, limit: 50 })
    const underWay = surveys.find((row) => row.status === 'under way')
    const survey = await opened.desk['surveys.get']({ surveyId: underWay?.id ?? '' })
    expect(survey.here?.checkId).toMatch(new RegExp(`^${singleAxleStopsBefore}\\.`))
    expect(survey.summary.open).toBeGreaterThan(20)
    expect(survey.answers.length).toBeGreaterThan(20)
  })

  test('has two reports whose files are PDFs', async () => {
    const { reports } = await opened.desk['reports.list']({ offset: 0, limit: 50 })
    expect(reports).toHaveLength(2)
    for (const { id } of reports) {
      const pdf = await opened.reportPdf(id)
      expect(Buffer.from(pdf?.bytes ?? []).subarray(0, 5).toString('latin1')).toBe('%PDF-')
    }
  })

  test('shows rust that was measured twice and has grown, one that was repaired, one that is new, and the zinc’s own rate', async () => {
    const { rigs } = await opened.desk['rigs.list']({ offset: 0, limit: 50 })
    const { rig, surveys } = await opened.desk['corrosion.history']({ rigId: rigs.find((row) => row.rig.name === tandem.name)?.id ?? '' })
    const trails = trailsOf(surveys, { trailer: rig.trailer })
    expect(trails.map(({ standing }) => standing).toSorted()).toEqual(['grown', 'healed', 'new'])
    const grown = trails.find(({ standing }) => standing === 'grown')
    expect(grown?.points.map(({ spot }) => spot.measurement?.outline.by)).toEqual(['polygon', 'polygon'])
    expect(grown?.forecast.kind).toBe('date')
    expect(grown?.life).toMatchObject({ kind: 'worked out', believed: 'measured rate' })
  })

  test('is not laid over a yard that holds something', async () => {
    expect(await answerCall(opened.desk, 'yard.openExample', {})).toMatchObject({ ok: false, refusal: { code: 'yard.not-empty' } })
  })
})

describe('an example that fails half way', () => {
  /** A yard of its own whose example failed at this step. */
  const afterFailure = async (name: ProcedureName, look: (desk: Desk, before: Settings) => Promise<void>): Promise<void> => {
    const own = await mkdtemp(join(tmpdir(), 'bunkwright-example-'))
    const { desk, close } = await openDesk(own)
    try {
      const { settings } = await desk['settings.get']({})
      await expect(fillExample({ ...desk, [name]: () => Promise.reject(new Error('the disk is full')) })).rejects.toThrow('the disk is full')
      await look(desk, settings)
    } finally {
      await close()
      await rm(own, { recursive: true, force: true })
    }
  }

  test.each(['surveys.answer', 'reports.issue'] as const)('leaves the yard as empty as it was when %s fails, and tells why', async (name) => {
    await afterFailure(name, async (desk, before) => {
      expect(await desk['yard.about']({})).toMatchObject({ rigCount: 0, surveyCount: 0 })
      expect((await desk['rigs.list']({ offset: 0, limit: 50 })).rigs).toEqual([])
      expect((await desk['settings.get']({})).settings).toEqual(before)
    })
  }, 120_000)

  test('can be opened again: no half of it stands in the way, and a name the surveyor saved is kept', async () => {
    await afterFailure('photographs.add', async (desk, settings) => {
      await desk['settings.save']({ settings: { ...settings, surveyorName: 'A Real Name' } })
      expect(await answerCall(desk, 'yard.openExample', {})).toEqual({ ok: true, value: { rigCount: 3 } })
      expect((await desk['settings.get']({})).settings.surveyorName).toBe('A Real Name')
    })
  }, 120_000)
})
