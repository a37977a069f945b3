import Database from 'better-sqlite3'
import { readdirSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { runCommandLine } from '../../../main/cli/run-command-line'
import { canonicalJson, type Json } from '../../../shared-logic/proof/canonical-json'
import { makeProvenYard, remember } from '../desk/proven-yard'
import { disarm } from '../desk/tampering'
import { ask, newFolder, open, sha256, signAs, startSurvey } from '../desk/yard-on-disk'
import { today } from './command-line'

let folder: string
let underWay: string
let issued: string
let bringBack: () => void
beforeAll(async () => {
  const yard = await makeProvenYard()
  folder = yard.folder
  const [first = '', second = ''] = yard.surveyIds
  underWay = first
  issued = second
  disarm(folder)
  bringBack = remember(folder)
})
beforeEach(() => bringBack())

const verify = async (yard: string, ...args: string[]): Promise<{ code: number; lines: string[] }> => {
  const out: string[] = []
  const code = await runCommandLine(['verify', ...args, '--folder', yard], { out: (text) => out.push(text), error: (text) => out.push(text), workingFolder: dirname(yard), now: () => today })
  return { code, lines: out.join('\n').split('\n').map((line) => line.trim()) }
}
const run = (...args: string[]) => verify(folder, ...args)
const alterIn = (yard: string, ...statements: string[]): void => {
  const database = new Database(join(yard, 'yard.sqlite'))
  for (const pragma of ['foreign_keys = OFF', 'ignore_check_constraints = ON']) database.pragma(pragma)
  database.exec(statements.join(';\n'))
  database.close()
}
const alter = (...statements: string[]): void => alterIn(folder, ...statements)
const entriesOf = (surveyId: string): { place: number; entry_json: string; sha256: string }[] => {
  const database = new Database(join(folder, 'yard.sqlite'), { readonly: true })
  const found = database.prepare<[string], { place: number; entry_json: string; sha256: string }>('SELECT place, entry_json, sha256 FROM photograph_log WHERE survey_id = ? ORDER BY place').all(surveyId)
  database.close()
  return found
}
const belongings = ['answers', 'frozen_rigs', 'photographs', 'reports']
const record = ['photograph_log', 'photograph_log_ends']
const without = (tables: readonly string[]): string[] => tables.map((table) => `DELETE FROM ${table} WHERE survey_id = '${issued}'`)

/** Whole yard and the one survey, by the number printed on its report or by its id: each answers 1 and says all of this. */
const expectFoundOut = async (sentences: readonly string[], named = 'BW-2026-0002'): Promise<void> => {
  for (const args of [[], [named]]) {
    const { code, lines } = await run(...args)
    expect([code, ...sentences.filter((sentence) => !lines.includes(sentence))], `${args.join(' ')}:\n${lines.join('\n')}`).toEqual([1])
    expect(lines.some((line) => line.startsWith('What to do: change nothing in this yard'))).toBe(true)
  }
}

it('a yard nobody tampered with answers 0, and tells nobody what to do', async () => {
  for (const args of [[], ['BW-2026-0002']]) {
    const { code, lines } = await run(...args)
    expect(code).toBe(0)
    expect(lines.some((line) => line.startsWith('What to do'))).toBe(false)
  }
})

describe('a survey that was taken out is missed', () => {
  it('when its row is gone, and all that belonged to it', async () => {
    const sentence = 'This survey is missing: the yard does not have it any more. Its record tells of photographs: 2; reports: 1.'
    alter(`DELETE FROM surveys WHERE id = '${issued}'`)
    await expectFoundOut(['The survey of report BW-2026-0002, which the yard does not have any more', sentence])
    alter(...without(belongings))
    await expectFoundOut(['The survey of report BW-2026-0002, which the yard does not have any more', sentence])
  })

  it('when its record went with it, by the yard’s list of surveys', async () => {
    alter(...without([...belongings, ...record]), `DELETE FROM surveys WHERE id = '${issued}'`)
    for (const named of ['BW-2026-0002', issued])
      await expectFoundOut(['The survey of report BW-2026-0002, which the yard does not have any more', 'This survey is missing, and its record too. By the yard’s list of surveys it was there on 15 June 2026.'], named)
  })

  it('and so is the record of one that was emptied and left standing', async () => {
    alter(...without([...belongings, ...record]), `UPDATE surveys SET status = 'under way', revision = 0, report_number = NULL WHERE id = '${issued}'`)
    await expectFoundOut(['The record is gone. Photographs in this survey: 0; reports: 0.'], issued)
  })

  it('but not one that the surveyor discarded in the program: that is in the list', async () => {
    const own = newFolder()
    const opened = await open(own)
    await signAs(opened, 'Odile Varga')
    const { id } = await startSurvey(opened)
    await ask(opened, 'surveys.discard', { surveyId: id })
    await opened.close()
    expect((await verify(own)).code).toBe(0)
    alterIn(own, 'UPDATE surveys SET discarded_at = NULL')
    const { code, lines } = await verify(own)
    expect([code, lines.includes('This survey was discarded in the program, and is back without it.')]).toEqual([1, true])
  })
})

describe('an issued survey that was altered is found out', () => {
  const changed = 'The survey was changed after report BW-2026-0002, revision 1, was issued, without being opened again:'
  const head = `${changed} its date, place, purpose, verdict, number or state is another.`

  it('set back to under way and discarded', async () => {
    alter(`UPDATE surveys SET status = 'under way', discarded_at = '2026-06-20T09:00:00.000Z' WHERE id = '${issued}'`)
    await expectFoundOut([head, 'This survey is discarded, and nobody discarded it in the program.'])
  })

  it.each(["report_number = 'BW-2026-0077'", "survey_date = '2025-06-14'", "verdict = 'fail'"])('with %s', async (column) => {
    alter(`UPDATE surveys SET ${column} WHERE id = '${issued}'`)
    await expectFoundOut([head])
  })

  it('with all answers emptied, or its rig written anew', async () => {
    alter(`UPDATE answers SET answer_json = '{"values":{}}' WHERE survey_id = '${issued}'`, `UPDATE frozen_rigs SET rig_json = json_set(rig_json, '$.name', 'Other')`)
    await expectFoundOut([`${changed} the answers are others.`, `${changed} the rig of that day is another.`])
  })

  it('with its report’s date and verdict changed, said as people read them', async () => {
    alter(`UPDATE reports SET date = '2026-01-02', verdict = 'fail', issued_at = '2026-01-02T10:00:00.000Z' WHERE survey_id = '${issued}'`)
    await expectFoundOut([
      'Report BW-2026-0002, revision 1, was changed. Date: 15 June 2026 in the record, 2 January 2026 now.',
      'Report BW-2026-0002, revision 1, was changed. Verdict: Pass in the record, Fail now.',
      'Report BW-2026-0002, revision 1, was changed. Issued: 15 June 2026, 12:00 UTC in the record, 2 January 2026, 10:00 UTC now.',
    ])
  })
})

describe('a photograph whose row was altered is told of in words', () => {
  it('checks by their titles, places and times as they are read, marks without a hash', async () => {
    alter(`UPDATE photographs SET check_id = 'hubs.oil-level', position = 'axle 1 left', quarter_turns = 1, is_printed = 0, marks_json = '{"marks":[]}', caption = 'as new', removed_at = '2026-06-20T09:05:00.000Z' WHERE survey_id = '${issued}' AND file_name = 'strap 77.jpg'`)
    await expectFoundOut([
      '“strap 77.jpg” was changed. Check: none in the record, “Oil level” now.', '“strap 77.jpg” was changed. Place: none in the record, left now.', '“strap 77.jpg” was changed. Turned: 0° in the record, 90° now.',
      '“strap 77.jpg” was changed. Prints: yes in the record, no now.', '“strap 77.jpg” was changed. Marks: not as recorded.', '“strap 77.jpg” was changed. Caption: none in the record, “as new” now.',
      '“strap 77.jpg” was changed. Removed: none in the record, 20 June 2026, 09:05 UTC now.',
    ])
  })
})

describe('a record that was altered is what is blamed', () => {
  it('at a changed entry, and what differs from it is not said to be changed', async () => {
    alter(`UPDATE photograph_log SET entry_json = replace(entry_json, '"caption":""', '"caption":"as new"') WHERE survey_id = '${issued}' AND place = 2`)
    const sentences = ['The record was altered: entry 2 was changed. What it says from there on cannot be relied on.', '“strap 0.jpg” and the altered record differ. Caption: “as new” in the record, none now.', '2 things are not as they were recorded.']
    await expectFoundOut(sentences)
    expect((await run()).lines.filter((line) => line.includes('was changed.'))).toEqual([sentences[0]])
  })

  it('where entries do not follow from one another, from the earlier of the two on', async () => {
    const [, , entry] = entriesOf(issued)
    const text = canonicalJson({ ...(JSON.parse(entry?.entry_json ?? '') as Record<string, Json>), at: '2026-06-01T00:00:00.000Z' } as Json)
    alter(`UPDATE photograph_log SET entry_json = '${text}', sha256 = '${sha256(text)}' WHERE survey_id = '${issued}' AND place = 3`)
    await expectFoundOut(['The record was altered: entry 4 does not follow from the one before. What it says from entry 3 on cannot be relied on.'])
  })

  it('where its end was cut off and made to fit: the issued report prints more, and that is said first', async () => {
    alter(`DELETE FROM photograph_log WHERE survey_id = '${issued}' AND place > 2`, `UPDATE photograph_log_ends SET entry_count = 2, last_sha256 = '${entriesOf(issued)[1]?.sha256 ?? ''}' WHERE survey_id = '${issued}'`)
    const first = 'The record has lost its last entries: it has 2, and report BW-2026-0002, revision 1, prints 3. What came after entry 2 is not told any more.'
    await expectFoundOut([first, '“strap 77.jpg” is in the survey and not in the altered record.', 'Report BW-2026-0002, revision 1, is in the survey and not in the altered record.'])
    const { lines } = await run('BW-2026-0002')
    expect(lines[lines.indexOf('3 things are not as they were recorded.') + 1]).toBe(first)
    expect(lines.some((line) => line.includes('never recorded'))).toBe(false)
  })

  it('where it was cut off right before a report was issued, by the yard’s list of surveys', async () => {
    alter(`DELETE FROM photograph_log WHERE survey_id = '${issued}' AND place > 3`, `UPDATE photograph_log_ends SET entry_count = 3, last_sha256 = '${entriesOf(issued)[2]?.sha256 ?? ''}' WHERE survey_id = '${issued}'`)
    await expectFoundOut(['The record has lost its last entries: it has 3, and had 4 by the yard’s list of surveys. What came after entry 3 is not told any more.'])
  })

  it('in a survey still under way all the same', async () => {
    alter(`DELETE FROM photograph_log WHERE survey_id = '${underWay}' AND place = 5`)
    await expectFoundOut(['The record was altered: entry 5 was taken out. What it says from there on cannot be relied on.'], underWay)
  })
})

describe('the yard’s list of surveys', () => {
  it('is itself found out, in a few words', async () => {
    alter('DELETE FROM survey_list WHERE place = 3')
    expect((await run()).lines).toContain('The yard’s list of surveys was altered from entry 3 on: whether a survey was taken out cannot be told for sure.')
    bringBack()
    alter('DELETE FROM survey_list', 'DELETE FROM survey_list_end')
    const { code, lines } = await run()
    expect([code, lines.includes('The yard’s list of surveys is gone: whether a survey was taken out cannot be told.'), lines.includes('One thing is not as it was recorded.')]).toEqual([1, true, true])
  })
})

it('originals and reports left behind by a survey that was taken out are counted, and are not said to be added alone', async () => {
  alter(...without([...belongings, ...record]), `DELETE FROM surveys WHERE id = '${issued}'`, 'DELETE FROM originals WHERE sha256 NOT IN (SELECT sha256 FROM photographs)')
  rmSync(join(folder, 'photographs', 'previews'), { recursive: true })
  expect(readdirSync(join(folder, 'reports'))).toHaveLength(2)
  const { lines } = await run()
  expect(lines.filter((line) => / belongs to no (photograph|report): it was added, or the (photograph|report) was taken out\.$/.test(line))).toHaveLength(2)
})
