import { changeColumn, pick, rowsOf, type Attack, type Attacked } from './attack'

const issuedSurvey = ({ database }: Attacked): string => {
  const id = rowsOf(database, 'surveys').find((row) => row['status'] === 'issued')?.['id']
  if (typeof id !== 'string') throw new Error('no survey is issued')
  return id
}
const answersOf = (yard: Attacked) => rowsOf(yard.database, 'answers').filter((row) => row['survey_id'] === issuedSurvey(yard))

/** What is not recorded: where the surveyor stood, what serves the search, the count of changes. */
const unrecorded = new Set(['serial', 'search_text', 'here_check_id', 'here_position', 'change_count'])

/** On a survey that was issued and not opened again. */
export const onSurveys: readonly Attack[] = [
  {
    name: 'a column of an issued survey',
    found: ['survey-changed', 'record-of-another-survey', 'record-missing'],
    alter: (yard) => {
      const row = rowsOf(yard.database, 'surveys').find(({ id }) => id === issuedSurvey(yard)) ?? {}
      const column = pick(Object.keys(row).filter((name) => !unrecorded.has(name)), yard.draw)
      return changeColumn(yard, 'surveys', 'id', { row, column })
    },
  },
  {
    name: 'an issued survey deleted',
    found: ['survey-changed'],
    alter: (yard) => {
      yard.database.prepare('DELETE FROM surveys WHERE id = ?').run(issuedSurvey(yard))
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
