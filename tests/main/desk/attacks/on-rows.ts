import type { ProblemCode } from '../../../../shared-logic/proof/problem'
import { changeColumn, pick, rowsOf, sha256, type Attack } from './attack'

const rowCodes: readonly ProblemCode[] = ['photograph-changed', 'photograph-gone', 'photograph-other', 'photograph-unrecorded', 'order-changed', 'original-without-photograph']

/** On the rows of photographs and originals. */
export const onRows: readonly Attack[] = [
  { name: 'a column of a photograph', found: rowCodes, alter: (yard) => changeColumn(yard, 'photographs', 'id') },
  { name: 'a column of an original', found: rowCodes, alter: (yard) => changeColumn(yard, 'originals', 'sha256') },
  {
    name: 'a photograph deleted',
    found: ['photograph-gone'],
    alter: ({ database, draw }) => {
      database.prepare('DELETE FROM photographs WHERE id = ?').run(pick(rowsOf(database, 'photographs'), draw)['id'])
      return true
    },
  },
  {
    name: 'a photograph doubled',
    found: ['photograph-unrecorded'],
    alter: ({ database, draw }) => {
      const row = pick(rowsOf(database, 'photographs'), draw)
      const values = Object.entries(row).map(([column, value]) => (column === 'id' ? `01900000-0000-7000-8000-${String(Math.floor(draw() * 1e12)).padStart(12, '0')}` : value))
      database.prepare(`INSERT INTO photographs VALUES (${values.map(() => '?').join(', ')})`).run(...values)
      return true
    },
  },
  {
    name: 'two photographs exchanged',
    found: rowCodes,
    alter: ({ database, draw }) => {
      const [one, two] = [pick(rowsOf(database, 'photographs'), draw), pick(rowsOf(database, 'photographs'), draw)]
      database.prepare('UPDATE photographs SET sha256 = ? WHERE id = ?').run(two['sha256'], one['id'])
      database.prepare('UPDATE photographs SET sha256 = ? WHERE id = ?').run(one['sha256'], two['id'])
      return one['sha256'] !== two['sha256']
    },
  },
  {
    name: 'an original’s row deleted',
    found: ['photograph-gone'],
    alter: ({ database, draw }) => {
      database.prepare('DELETE FROM originals WHERE sha256 = ?').run(pick(rowsOf(database, 'originals'), draw)['sha256'])
      return true
    },
  },
  {
    name: 'an original’s row added',
    found: ['original-without-photograph'],
    alter: ({ database, draw }) => {
      const values = Object.entries(pick(rowsOf(database, 'originals'), draw)).map(([column, value]) => (column === 'sha256' ? sha256(String(draw())) : value))
      database.prepare(`INSERT INTO originals VALUES (${values.map(() => '?').join(', ')})`).run(...values)
      return true
    },
  },
]
