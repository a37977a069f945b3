import type { RecordedPhotograph } from './acts'
import type { Problem } from './problem'

const shown = (value: string | number | boolean | null | undefined): string => (value === null || value === undefined || value === '' ? '–' : String(value))

const changedFacts = (row: RecordedPhotograph, recorded: RecordedPhotograph): Problem[] => {
  const facts: Readonly<Record<string, string | number | boolean | null>> = { ...row.facts, byteCount: row.byteCount }
  return Object.entries({ ...recorded.facts, byteCount: recorded.byteCount })
    .filter(([name, value]) => facts[name] !== value)
    .map(([name, value]) => ({ code: 'photograph-changed' as const, values: { name: shown(recorded.facts.fileName), fact: name, recorded: shown(value), now: shown(facts[name]), photographId: row.photographId } }))
}

/** Where the yard's rows say something else than the record does. Facts that an older record did not know yet are not compared. */
export const compareRows = (rows: readonly RecordedPhotograph[], recorded: ReadonlyMap<string, RecordedPhotograph>): Problem[] => {
  const problems: Problem[] = []
  for (const row of rows) {
    const told = recorded.get(row.photographId)
    if (told === undefined) problems.push({ code: 'photograph-unrecorded', values: { name: row.facts.fileName, photographId: row.photographId } })
    else if (told.sha256 !== row.sha256) problems.push({ code: 'photograph-other', values: { name: shown(told.facts.fileName), recorded: told.sha256, now: row.sha256, photographId: row.photographId } })
    else problems.push(...changedFacts(row, told))
  }
  const there = new Set(rows.map(({ photographId }) => photographId))
  for (const { photographId, facts } of recorded.values())
    if (!there.has(photographId)) problems.push({ code: 'photograph-gone', values: { name: shown(facts.fileName), photographId } })
  return problems
}
