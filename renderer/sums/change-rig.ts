import type { z } from 'zod'
import { rigSchema, type Rig } from '../../shared-logic/rig/rig'
import { faultsOf } from '../../shared-logic/sums/check-input'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { Quantity, UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { withValueAt } from './rig-paths'

/** A field as it is changed; its quantity says in which unit a limit is told. */
export interface ChangedField {
  readonly path: string
  readonly quantity?: Quantity | undefined
}

/** What was typed and could not be taken, with its reason: it stays in the field and no number rests on it. */
export interface Held {
  readonly field: ChangedField
  readonly value: unknown
  readonly problem: string
  /** The text itself could not be read; there is no value to try again. */
  readonly isUnread?: true
}
export type HeldFields = ReadonlyMap<string, Held>

export interface RigState {
  /** What is kept, or on its way to the desk. */
  readonly rig: Rig
  readonly held: HeldFields
}

const sayIssue = (words: Words, issue: z.core.$ZodIssue | undefined, quantity: Quantity | undefined, units: UnitSystem): string => {
  const { problems } = words.screens.sums
  const limit = (value: number | bigint): string => (quantity ? formatQuantity(quantity, Number(value), units) : String(value))
  if (issue?.code === 'too_small') return say(issue.inclusive === true ? problems.atLeast : problems.moreThan, { limit: limit(issue.minimum) }, units)
  if (issue?.code === 'too_big') return say(problems.atMost, { limit: limit(issue.maximum) }, units)
  return issue?.code === 'custom' ? problems.apart : problems.other
}

/** Strings of the reader, and the day a brake test begun here is dated with. */
export interface Reader {
  readonly words: Words
  readonly units: UnitSystem
  readonly today: string | undefined
}

/** Parts of a rig that cannot be without something of their own. */
const begun = (rig: Rig, path: string, today: string | undefined): Rig => {
  if (path.startsWith('tieDown.') && rig.tieDown === undefined) return { ...rig, tieDown: { straps: [] } }
  return path.startsWith('brakeTest.') && rig.brakeTest === undefined && today !== undefined ? { ...rig, brakeTest: { date: today } } : rig
}

type Tried = { readonly ok: true; readonly rig: Rig } | { readonly ok: false; readonly problem: string }

/** One value into the rig: refused where a field may not hold it, or where it cannot be right beside the others. */
const tryValue = (rig: Rig, { path, quantity }: ChangedField, value: unknown, { words, units, today }: Reader): Tried => {
  const parsed = rigSchema.safeParse(withValueAt(begun(rig, path, today), path, value))
  if (!parsed.success) return { ok: false, problem: sayIssue(words, parsed.error.issues[0], quantity, units) }
  const before = new Set(faultsOf(rig).map(({ code, field }) => `${code} ${field}`))
  const fault = faultsOf(parsed.data).find(({ code, field }) => !before.has(`${code} ${field}`))
  return fault ? { ok: false, problem: sayRefusal(words, fault) } : { ok: true, rig: parsed.data }
}

/** Takes one change, and then again what was held before: a refused stem may be right once the boat is longer. */
export const takeChange = ({ rig, held }: RigState, change: Held, reader: Reader): RigState => {
  const open = new Map([...held, [change.field.path, change]])
  let taken = rig
  for (let before = -1; before !== open.size;) {
    before = open.size
    for (const [path, each] of open) {
      if (each.isUnread) continue
      const tried = tryValue(taken, each.field, each.value, reader)
      if (tried.ok) {
        taken = tried.rig
        open.delete(path)
      } else open.set(path, { ...each, problem: tried.problem })
    }
  }
  return { rig: taken, held: open }
}

/** The rig for the sums: without what is held, so that no number rests on it. A row that cannot be without its field is left as it was kept. */
export const rigForSums = ({ rig, held }: RigState): Rig =>
  [...held.keys()].reduce<Rig>((so, path) => {
    const parsed = rigSchema.safeParse(withValueAt(so, path, undefined))
    return parsed.success ? parsed.data : so
  }, rig)
