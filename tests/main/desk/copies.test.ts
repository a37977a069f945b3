import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { openDeskToRead } from '../../../main/desk/open-to-read'
import type { OpenedDesk } from '../../../main/desk/open'
import { enterCopies } from '../../../main/store/photograph-log'
import { openYard } from '../../../main/store/yard'
import type { Problem } from '../../../shared-logic/proof/problem'
import { en } from '../../../shared-logic/words/en'
import { sayBeside, sayProblem } from '../../../shared-logic/words/say-proof'
import { asBeforeCopies } from './before-copies'
import { makeProvenYard, pictureFromTheCamera } from './proven-yard'
import { ask, newFolder, noon, open, sha256, signAs, startSurvey, writePlainReport } from './yard-on-disk'

const sizes = ['large', 'small'] as const
const copyOf = (folder: string, hash: string, size: 'large' | 'small'): string => join(folder, 'photographs', 'previews', size, hash.slice(0, 2), `${hash}.jpg`)
/** What somebody would rather have in the report: as many pixels, another picture. */
const forged = async (): Promise<Buffer> => sharp({ create: { width: 48, height: 32, channels: 3, background: { r: 3, g: 200, b: 3 } } }).jpeg().toBuffer()
const heic = (): Uint8Array => readFileSync(new URL('../photos/fixtures/scene-p3.heic', import.meta.url))

const problemsIn = async (folder: string): Promise<Problem[]> => {
  const reader = openDeskToRead(folder)
  try {
    const { surveys, problems } = await reader.verifyYard({ underWayMs: 0 })
    return [...surveys.flatMap(({ verified }) => verified.problems), ...problems]
  } finally {
    await reader.close()
  }
}
const inDatabase = <Value>(folder: string, work: (database: Database.Database) => Value): Value => {
  const database = new Database(join(folder, 'yard.sqlite'))
  try {
    return work(database)
  } finally {
    database.close()
  }
}
const originalsIn = (folder: string): string[] => inDatabase(folder, (database) => database.prepare<[], string>('SELECT sha256 FROM originals ORDER BY sha256').pluck().all())
const actsIn = (folder: string, surveyId: string): string[] =>
  inDatabase(folder, (database) => database.prepare<[string], string>("SELECT entry_json ->> 'what' FROM photograph_log WHERE survey_id = ? ORDER BY place").pluck().all(surveyId))

/** A yard with a survey of two photographs, one of them a HEIC; closed. */
const yardOfTwo = async (): Promise<{ folder: string; surveyId: string; hashes: string[] }> => {
  const folder = newFolder()
  const opened = await open(folder)
  await signAs(opened, 'Odile Varga')
  const { id: surveyId } = await startSurvey(opened)
  await ask(opened, 'photographs.add', { surveyId, fileName: 'hub.jpg' }, await pictureFromTheCamera(40))
  await ask(opened, 'photographs.add', { surveyId, fileName: 'strap.heic' }, heic())
  const { photographs } = await ask(opened, 'surveys.get', { surveyId })
  await opened.close()
  return { folder, surveyId, hashes: photographs.map(({ sha256: hash }) => hash) }
}

/** Issues with the program's own writer; the PDF's bytes. Pictures are embedded in it byte for byte. */
const issue = async (opened: OpenedDesk, surveyId: string): Promise<Buffer> => {
  const { report } = await ask(opened, 'reports.issue', { surveyId })
  return Buffer.from((await opened.reportPdf(report.id))?.bytes ?? [])
}

describe('a copy that was changed on the disk', () => {
  it('is named by verifying, with what became of the original', async () => {
    const { folder, hashes: [hub = '', strap = ''] } = await yardOfTwo()
    expect(await problemsIn(folder)).toEqual([])
    writeFileSync(copyOf(folder, hub, 'large'), await forged())
    rmSync(copyOf(folder, strap, 'small'))
    expect((await problemsIn(folder)).map((problem) => sayProblem(en, problem)).toSorted()).toEqual([
      '“hub.jpg”: the large copy, which is shown and printed, was changed. The original is as it came in, and the copy is made again from it before it is used.',
      '“strap.heic”: the small copy, which stands in lists, is missing. The original is as it came in, and the copy is made again from it before it is used.',
    ])
    rmSync(join(folder, 'photographs', 'originals', hub.slice(0, 2), `${hub}.jpg`))
    expect((await problemsIn(folder)).map((problem) => sayProblem(en, problem))).toContain('“hub.jpg”: the large copy, which is shown and printed, was changed. The original is not as it came in either, so no other copy can be made.')
  })

  it('is never printed: the report shows what the originals show', async () => {
    const { folder, surveyId, hashes } = await yardOfTwo()
    const right = hashes.map((hash) => readFileSync(copyOf(folder, hash, 'large')))
    const wrong = await forged()
    for (const hash of hashes) writeFileSync(copyOf(folder, hash, 'large'), wrong)
    const opened = await open(folder)
    const pdf = await issue(opened, surveyId)
    expect(right.map((bytes) => pdf.includes(bytes))).toEqual([true, true])
    expect(pdf.includes(wrong)).toBe(false)
    expect((await ask(opened, 'proof.verify', { surveyId })).problems).toEqual([])
    await opened.close()
  }, 60_000)

  it('is not printed either where the row was made to fit it: the record’s word counts', async () => {
    const { folder, surveyId, hashes: [hub = ''] } = await yardOfTwo()
    const right = readFileSync(copyOf(folder, hub, 'large'))
    const wrong = await forged()
    writeFileSync(copyOf(folder, hub, 'large'), wrong)
    inDatabase(folder, (database) => database.prepare('UPDATE originals SET large_preview_sha256 = ? WHERE sha256 = ?').run(sha256(wrong), hub))
    const opened = await open(folder)
    const pdf = await issue(opened, surveyId)
    expect([pdf.includes(right), pdf.includes(wrong)]).toEqual([true, false])
    await opened.close()
  }, 60_000)

  it.each(sizes)('is not shown: the window is given the %s one made again, from a HEIC too', async (size) => {
    const { folder, hashes } = await yardOfTwo()
    const opened = await open(folder)
    for (const hash of hashes) {
      const right = readFileSync(copyOf(folder, hash, size))
      writeFileSync(copyOf(folder, hash, size), await forged())
      expect(sha256((await opened.photograph(hash, size))?.bytes ?? '')).toBe(sha256(right))
      expect(readFileSync(copyOf(folder, hash, size)).equals(right)).toBe(true)
    }
    expect(await problemsIn(folder)).toEqual([])
    await opened.close()
  })
})

it('an original that was changed is not handed out, and nothing is made of it', async () => {
  const { folder, hashes: [hub = ''] } = await yardOfTwo()
  writeFileSync(join(folder, 'photographs', 'originals', hub.slice(0, 2), `${hub}.jpg`), await forged())
  rmSync(copyOf(folder, hub, 'small'))
  const opened = await open(folder)
  for (const size of ['original', 'small'] as const) await expect(opened.photograph(hub, size)).rejects.toMatchObject({ data: { code: 'photograph.original-changed' } })
  expect((await opened.photograph(hub, 'large'))?.bytes.byteLength).toBeGreaterThan(0)
  expect(existsSync(copyOf(folder, hub, 'small'))).toBe(false)
  await opened.close()
})

describe('copies made again that come out otherwise, as a newer imaging library makes them', () => {
  it('are entered anew in every survey that has the photograph, removed or issued, and are no tampering', async () => {
    const { folder, surveyIds } = await makeProvenYard()
    const before = surveyIds.map((surveyId) => actsIn(folder, surveyId))
    const byAnother = await forged()
    const yard = openYard(folder, { programVersion: '0.1.0', clock: () => noon })
    for (const hash of originalsIn(folder)) {
      for (const size of sizes) writeFileSync(copyOf(folder, hash, size), byAnother)
      await yard.write((db) => enterCopies(db, hash, { large: sha256(byAnother), small: sha256(byAnother) }, noon.toISOString()))
    }
    await yard.close()
    const rows = inDatabase(folder, (database) => database.prepare<[string], number>('SELECT count(*) FROM photographs WHERE survey_id = ?').pluck().all(surveyIds[0] ?? ''))
    expect(rows).toEqual([6])
    const entered = (): number[] => surveyIds.map((surveyId, index) => actsIn(folder, surveyId).length - (before[index]?.length ?? 0))
    expect(entered()).toEqual([6, 2])
    expect(await problemsIn(folder)).toEqual([])

    const opened = await open(folder)
    for (const hash of originalsIn(folder)) {
      expect(sha256((await opened.photograph(hash, 'large'))?.bytes ?? ''), 'what was made by another library is still what was recorded').toBe(sha256(byAnother))
      rmSync(copyOf(folder, hash, 'large'))
      await Promise.all([...sizes, ...sizes].map((size) => opened.photograph(hash, size)))
    }
    expect(entered()).toEqual([12, 4])
    expect(actsIn(folder, surveyIds[1] ?? '').slice(-2)).toEqual(['copies made', 'copies made'])
    expect(await problemsIn(folder)).toEqual([])
    await opened.close()
  })

  it('are not said to be changed where a crash came between their files and their entry', async () => {
    const { folder, surveyId, hashes } = await yardOfTwo()
    const byAnother = await forged()
    const yard = openYard(folder, { programVersion: '0.1.0', clock: () => noon })
    // As an older library made them: entered, and then made again by today's, of which nothing was entered.
    for (const hash of hashes) await yard.write((db) => enterCopies(db, hash, { large: sha256(byAnother), small: sha256(byAnother) }, noon.toISOString()))
    await yard.close()
    expect(await problemsIn(folder)).toEqual([])
    writeFileSync(copyOf(folder, hashes[0] ?? '', 'large'), byAnother.subarray(1))
    expect((await problemsIn(folder)).map(({ code, values }) => [code, values['name']])).toEqual([['copy-changed', 'hub.jpg']])
    const opened = await open(folder)
    for (const hash of hashes) await opened.photograph(hash, 'large')
    expect(actsIn(folder, surveyId).slice(-2)).toEqual(['copies made', 'copies made'])
    expect(await problemsIn(folder)).toEqual([])
    await opened.close()
  })

  it('are entered too where the same photograph comes in again', async () => {
    const { folder, surveyId, hashes: [hub = ''] } = await yardOfTwo()
    const byAnother = await forged()
    const yard = openYard(folder, { programVersion: '0.1.0', clock: () => noon })
    await yard.write((db) => enterCopies(db, hub, { large: sha256(byAnother), small: sha256(byAnother) }, noon.toISOString()))
    await yard.close()
    const opened = await open(folder)
    expect((await ask(opened, 'photographs.add', { surveyId, fileName: 'hub.jpg' }, await pictureFromTheCamera(40))).alreadyThere).toBe(true)
    expect(actsIn(folder, surveyId).slice(-2)).toEqual(['copies made', 'copies made'])
    expect(await problemsIn(folder)).toEqual([])
    await opened.close()
  })
})

describe('a yard from before copies and reports were recorded', () => {
  const oldYard = async (): Promise<{ folder: string; surveyIds: readonly string[] }> => {
    const yard = await makeProvenYard()
    asBeforeCopies(yard.folder)
    return yard
  }

  it('still verifies, says of what nothing is proven, and enters its reports', async () => {
    const { folder, surveyIds: [surveyId = ''] } = await oldYard()
    const opened = await open(folder)
    const verified = await ask(opened, 'proof.verify', { surveyId })
    expect(verified).toMatchObject({ problems: [], withoutCopies: 6, lateReports: { count: 1 } })
    expect(sayBeside(en, verified).slice(-1)).toEqual(['Of 6 photographs the copies for screen and report were never recorded: they are made anew from the originals before they are used.'])
    expect(await problemsIn(folder)).toEqual([])
    await opened.close()
  })

  it('holds an issued survey to what it was on the day of the step', async () => {
    const { folder, surveyIds: [, surveyId = ''] } = await oldYard()
    await (await open(folder)).close()
    inDatabase(folder, (database) => database.prepare("UPDATE answers SET answer_json = json_set(answer_json, '$.note', 'as good as new') WHERE survey_id = ?").run(surveyId))
    expect((await problemsIn(folder)).map((problem) => sayProblem(en, problem))).toEqual(['The survey was changed after report BW-2026-0002, revision 1, was issued, without being opened again: the answers are others.'])
  })

  it('believes no copy it finds: each is made from its original once, entered, and from then on proven', async () => {
    const { folder, surveyIds } = await oldYard()
    const hashes = originalsIn(folder)
    const right = new Map(hashes.map((hash) => [hash, readFileSync(copyOf(folder, hash, 'large'))]))
    for (const hash of hashes) writeFileSync(copyOf(folder, hash, 'large'), await forged())
    const opened = await open(folder, { writeReport: writePlainReport })
    for (const hash of hashes) expect(Buffer.from((await opened.photograph(hash, 'large'))?.bytes ?? []).equals(right.get(hash) ?? Buffer.alloc(0))).toBe(true)
    for (const surveyId of surveyIds) expect((await ask(opened, 'proof.verify', { surveyId })).withoutCopies).toBeUndefined()
    expect(await problemsIn(folder)).toEqual([])
    writeFileSync(copyOf(folder, hashes[0] ?? '', 'large'), await forged())
    expect((await problemsIn(folder)).map(({ code }) => code)).toContain('copy-changed')
    await opened.close()
  })

  it('has no hash of a copy slipped in: a row that knows one its record does not is found', async () => {
    const { folder } = await oldYard()
    await (await open(folder)).close()
    const [hash = ''] = originalsIn(folder)
    const wrong = await forged()
    writeFileSync(copyOf(folder, hash, 'large'), wrong)
    inDatabase(folder, (database) => database.prepare('UPDATE originals SET large_preview_sha256 = ?, small_preview_sha256 = ? WHERE sha256 = ?').run(sha256(wrong), sha256(wrong), hash))
    expect((await problemsIn(folder)).map(({ code, values }) => [code, values['fact']])).toEqual(expect.arrayContaining([['photograph-changed', 'largePreviewSha256'], ['photograph-changed', 'smallPreviewSha256']]))
  })
})

it('a report whose row no longer says where the record stood is found, and so is one whose verdict was changed', async () => {
  const { folder } = await makeProvenYard()
  inDatabase(folder, (database) => database.exec("DROP TRIGGER reports_are_frozen; UPDATE reports SET document_json = json_remove(document_json, '$.photographRecord') WHERE revision = 1 AND number = 'BW-2026-0001'"))
  expect((await problemsIn(folder)).map((problem) => sayProblem(en, problem))).toEqual(['Report BW-2026-0001, revision 1, was changed. What it says: not as recorded.'])
  inDatabase(folder, (database) => database.exec("UPDATE reports SET verdict = 'not applicable' WHERE number = 'BW-2026-0002'"))
  expect((await problemsIn(folder)).map((problem) => sayProblem(en, problem))).toContainEqual(expect.stringMatching(/^Report BW-2026-0002, revision 1, was changed\. Verdict: (Pass|Advisory|Fail|Not seen) in the record, Not applicable now\.$/))
})
