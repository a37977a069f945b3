import { changeColumn, pick, rowsOf, withOneByteChanged, type Attack } from './attack'

/** On the yard's list of its surveys and on where it ends. */
export const onList: readonly Attack[] = [
  {
    name: 'a byte of an entry of the list',
    found: ['list-altered'],
    alter: ({ database, draw }) => {
      const row = pick(rowsOf(database, 'survey_list'), draw)
      database.prepare('UPDATE survey_list SET entry_json = CAST(? AS TEXT) WHERE place = ?').run(withOneByteChanged(Buffer.from(String(row['entry_json'])), draw), row['place'])
      return true
    },
  },
  {
    name: 'the hash of an entry of the list',
    found: ['list-altered'],
    alter: (yard) => changeColumn(yard, 'survey_list', 'place', { row: pick(rowsOf(yard.database, 'survey_list'), yard.draw), column: 'sha256' }),
  },
  {
    name: 'an entry of the list deleted',
    found: ['list-altered', 'list-cut-off'],
    alter: ({ database, draw }) => {
      database.prepare('DELETE FROM survey_list WHERE place = ?').run(pick(rowsOf(database, 'survey_list'), draw)['place'])
      return true
    },
  },
  {
    name: 'the end of the list cut off',
    found: ['list-cut-off', 'list-missing'],
    alter: ({ database, draw }) => {
      database.prepare('DELETE FROM survey_list WHERE place > ?').run(Math.floor(draw() * rowsOf(database, 'survey_list').length))
      return true
    },
  },
  {
    name: 'where the list ends',
    found: ['list-altered', 'list-cut-off'],
    alter: (yard) => changeColumn(yard, 'survey_list_end', 'only', { row: rowsOf(yard.database, 'survey_list_end')[0] ?? {}, column: yard.draw() < 0.5 ? 'entry_count' : 'last_sha256' }),
  },
  {
    name: 'the row of the list’s end deleted',
    found: ['list-end-missing'],
    alter: ({ database }) => {
      database.exec('DELETE FROM survey_list_end')
      return true
    },
  },
  {
    name: 'the whole list deleted, its end too',
    found: ['list-missing'],
    alter: ({ database }) => {
      database.exec('DELETE FROM survey_list; DELETE FROM survey_list_end')
      return true
    },
  },
]
