import type { Selectable } from 'kysely'
import { expect, test } from 'vitest'
import type { Tables } from '../../../main/store/tables'
import { newFolder, open } from './a-yard'

type Kind<Value> = null extends Value ? `${Plain<Exclude<Value, null>>} or nothing` : Plain<Value>
type Plain<Value> = Value extends number ? 'INTEGER' | 'REAL' : 'TEXT'
type Kept = Omit<Tables, 'rigs_search' | 'surveys_search'>

/** The compiler holds this list to the interface; the test holds it to the file. */
const columns: { readonly [Name in keyof Kept]: { readonly [Column in keyof Selectable<Kept[Name]>]: Kind<Selectable<Kept[Name]>[Column]> } } = {
  migrations: { number: 'INTEGER', program_version: 'TEXT', applied_at: 'TEXT' },
  settings: { only: 'INTEGER', settings_json: 'TEXT', saved_at: 'TEXT' },
  rigs: {
    serial: 'INTEGER', id: 'TEXT', name: 'TEXT', sort_name: 'TEXT', search_text: 'TEXT', rig_json: 'TEXT', saved_at: 'TEXT', removed_at: 'TEXT or nothing',
  },
  surveys: {
    serial: 'INTEGER', id: 'TEXT', rig_id: 'TEXT', rig_name: 'TEXT', search_text: 'TEXT', purpose: 'TEXT', survey_date: 'TEXT', status: 'TEXT', rule_book: 'TEXT',
    catalogue_version: 'TEXT', zone: 'TEXT', place: 'TEXT or nothing', here_check_id: 'TEXT or nothing', here_position: 'TEXT or nothing', verdict: 'TEXT',
    tallies_json: 'TEXT', asked: 'INTEGER', open: 'INTEGER', report_number: 'TEXT or nothing', revision: 'INTEGER', change_count: 'INTEGER', started_at: 'TEXT',
    discarded_at: 'TEXT or nothing',
  },
  frozen_rigs: { survey_id: 'TEXT', rig_json: 'TEXT' },
  answers: { survey_id: 'TEXT', check_id: 'TEXT', position: 'TEXT', answer_json: 'TEXT', answered_at: 'TEXT' },
  originals: {
    sha256: 'TEXT', format: 'TEXT', byte_count: 'INTEGER', width_px: 'INTEGER', height_px: 'INTEGER', taken_at: 'TEXT or nothing',
    latitude: 'REAL or nothing', longitude: 'REAL or nothing', quality_json: 'TEXT or nothing', look_hash: 'TEXT or nothing',
    large_preview_sha256: 'TEXT or nothing', small_preview_sha256: 'TEXT or nothing', added_at: 'TEXT',
  },
  photographs: {
    id: 'TEXT', survey_id: 'TEXT', sha256: 'TEXT', check_id: 'TEXT or nothing', position: 'TEXT or nothing', caption: 'TEXT', file_name: 'TEXT', source: 'TEXT', quarter_turns: 'INTEGER', is_printed: 'INTEGER',
    print_order: 'INTEGER or nothing', marks_json: 'TEXT or nothing', added_at: 'TEXT',
    removed_at: 'TEXT or nothing',
  },
  photograph_log: { survey_id: 'TEXT', place: 'INTEGER', entry_json: 'TEXT', sha256: 'TEXT' },
  photograph_log_ends: { survey_id: 'TEXT', entry_count: 'INTEGER', last_sha256: 'TEXT' },
  survey_list: { place: 'INTEGER', entry_json: 'TEXT', sha256: 'TEXT' },
  survey_list_end: { only: 'INTEGER', entry_count: 'INTEGER', last_sha256: 'TEXT' },
  report_numbers: { year: 'INTEGER', last: 'INTEGER' },
  reports: {
    id: 'TEXT', survey_id: 'TEXT', number: 'TEXT', revision: 'INTEGER', issued_at: 'TEXT', date: 'TEXT', verdict: 'TEXT', document_json: 'TEXT', pdf_sha256: 'TEXT',
    pdf_byte_count: 'INTEGER',
  },
}

interface ColumnInfo {
  readonly name: string
  readonly type: string
  readonly notnull: number
  readonly pk: number
}

test('the tables of the file are those the queries are written for, column by column', async () => {
  const yard = open(newFolder())
  const kept = Object.fromEntries(
    Object.keys(columns).map((table) => {
      const info = yard.database.prepare<[string], ColumnInfo>('SELECT name, type, "notnull", pk FROM pragma_table_info(?)').all(table)
      return [table, Object.fromEntries(info.map(({ name, type, notnull, pk }) => [name, notnull === 1 || pk > 0 ? type : `${type} or nothing`]))]
    }),
  )
  expect(kept).toEqual(columns)
  await yard.close()
})

test('every table is strict, and none stands in the file that the queries do not know', async () => {
  const yard = open(newFolder())
  const tables = yard.database.prepare<[], { name: string; strict: number }>("SELECT name, strict FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite_%'").all()
  expect(tables.map(({ name }) => name).toSorted()).toEqual(Object.keys(columns).toSorted())
  expect(tables.every(({ strict }) => strict === 1)).toBe(true)
  await yard.close()
})
