import { changeColumn, pick, rowsOf, type Attack, type Attacked } from './attack'

const issuedSurvey = ({ database }: Attacked): string => {
  const id = rowsOf(database, 'surveys').find((row) => row['status'] === 'issued')?.['id']
  if (typeof id !== 'string') throw new Error('no survey is issued')
  return id
}
const answersOf = (yard: Attacked) => rowsOf(yard.database, 'answers').filter((row) => row['survey_id'] === issuedSurvey(yard))

const belongings = ['answers', 'frozen_rigs', 'photographs', 'reports']

const deleteAllOf = ({ database, draw }: Attacked, tables: readonly string[]): boolean => {
  const { id } = pick(rowsOf(database, 'surveys'), draw)
  for (const table of tables) database.prepare(`DELETE FROM ${table} WHERE survey_id = ?`).run(id)
  database.prepare('DELETE FROM surveys WHERE id = ?').run(id)
  return true
}

/** What is not recorded: where the surveyor stood, what serves the search, the count of changes. */
const unrecorded = new Set(['serial', 'search_text', 'here_check_id', 'here_position', 'change_count'])

/** On a survey that was issued and not opened again. */
export const onSurveys: readonly Attack[] = [
  {
    name: 'a column of an issued survey',
    found: ['survey-changed', 'survey-gone'],
    alter: (yard) => {
      const row = rowsOf(yard.database, 'surveys').find(({ id }) => id === issuedSurvey(yard)) ?? {}
      const column = pick(Object.keys(row).filter((name) => !unrecorded.has(name)), yard.draw)
      return changeColumn(yard, 'surveys', 'id', { row, column })
    },
  },
  {
    name: 'an issued survey deleted',
    found: ['survey-gone'],
    alter: (yard) => {
      yard.database.prepare('DELETE FROM surveys WHERE id = ?').run(issuedSurvey(yard))
      return true
    },
  },
  {
    name: 'a survey deleted with all that belongs to it but its record',
    found: ['survey-gone'],
    alter: (yard) => deleteAllOf(yard, belongings),
  },
  {
    name: 'a survey deleted with all that belongs to it, its record too',
    found: ['survey-gone-with-record'],
    alter: (yard) => deleteAllOf(yard, [...belongings, 'photograph_log', 'photograph_log_ends']),
  },
  {
    name: 'a survey emptied of all that belongs to it, its record too',
    found: ['record-missing'],
    alter: (yard) => {
      const row = pick(rowsOf(yard.database, 'surveys'), yard.draw)
      for (const table of [...belongings, 'photograph_log', 'photograph_log_ends']) yard.database.prepare(`DELETE FROM ${table} WHERE survey_id = ?`).run(row['id'])
      return true
    },
  },
  {
    name: 'a survey discarded in the file',
    found: ['survey-put-away'],
    alter: ({ database, draw }) => {
      database.prepare("UPDATE surveys SET status = 'under way', discarded_at = '2026-06-15T12:00:00.000Z' WHERE id = ?").run(pick(rowsOf(database, 'surveys'), draw)['id'])
      return true
    },
  },
  {
    name: 'a survey added',
    found: ['survey-unlisted'],
    alter: ({ database, draw }) => {
      const row = { ...pick(rowsOf(database, 'surveys'), draw), serial: 99, report_number: null, id: `01900000-0000-7000-8000-${String(Math.floor(draw() * 1e12)).padStart(12, '0')}` }
      database.prepare(`INSERT INTO surveys VALUES (${Object.keys(row).map(() => '?').join(', ')})`).run(...Object.values(row))
      return true
    },
  },
  {
    name: 'all answers of an issued survey emptied',
    found: ['survey-changed'],
    alter: (yard) => {
      yard.database.prepare(`UPDATE answers SET answer_json = '{"values":{}}' WHERE survey_id = ?`).run(issuedSurvey(yard))
      return true
    },
  },
  {
    name: 'an answer of an issued survey changed',
    found: ['survey-changed'],
    alter: (yard) => {
      const row = pick(answersOf(yard), yard.draw)
      const column = pick(Object.keys(row), yard.draw)
      const changed = Buffer.from(`${String(row[column])} `)
      yard.database.prepare(`UPDATE answers SET "${column}" = CAST(? AS TEXT) WHERE survey_id = ? AND check_id = ? AND position = ?`).run(changed, row['survey_id'], row['check_id'], row['position'])
      return true
    },
  },
  {
    name: 'an answer of an issued survey deleted',
    found: ['survey-changed'],
    alter: (yard) => {
      const row = pick(answersOf(yard), yard.draw)
      yard.database.prepare('DELETE FROM answers WHERE survey_id = ? AND check_id = ? AND position = ?').run(row['survey_id'], row['check_id'], row['position'])
      return true
    },
  },
  {
    name: 'an answer of an issued survey added',
    found: ['survey-changed'],
    alter: (yard) => {
      const row = pick(answersOf(yard), yard.draw)
      yard.database.prepare('INSERT INTO answers VALUES (?, ?, ?, ?, ?)').run(row['survey_id'], row['check_id'], `axle ${Math.floor(yard.draw() * 1e6)} left`, row['answer_json'], row['answered_at'])
      return true
    },
  },
  {
    name: 'the rig of an issued survey changed or taken out',
    found: ['survey-changed'],
    alter: (yard) => {
      const id = issuedSurvey(yard)
      if (yard.draw() < 0.3) yard.database.prepare('DELETE FROM frozen_rigs WHERE survey_id = ?').run(id)
      else changeColumn(yard, 'frozen_rigs', 'survey_id', { row: rowsOf(yard.database, 'frozen_rigs').find((row) => row['survey_id'] === id) ?? {}, column: 'rig_json' })
      return true
    },
  },
]
