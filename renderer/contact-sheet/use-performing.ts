import { useState } from 'react'
import type { Survey } from '../../shared-logic/survey/records'
import type { SheetAct } from './act-bar'
import type { SheetSort } from './arrange'
import { neighbourToPass, putBeside } from './moves'
import type { SheetPhotograph } from './sheet-photograph'
import type { SheetActs } from './use-sheet-acts'

/** What is open over the sheet, or written in it. */
export interface Opened {
  readonly viewed?: string
  readonly writing?: string
  /** Those to be moved, while it is asked where to. */
  readonly moving?: readonly SheetPhotograph[]
}

interface Performing {
  readonly opened: Opened
  readonly open: (opened: Opened) => void
  /** What can be done with these photographs, as the sheet stands. */
  readonly canDo: (photographs: readonly SheetPhotograph[]) => ReadonlySet<SheetAct>
  readonly perform: (act: SheetAct, photographs: readonly SheetPhotograph[]) => void
  readonly put: (ids: ReadonlySet<string>, target: string, side: 'before' | 'after') => void
}

const always: readonly SheetAct[] = ['move', 'turnLeft', 'turnRight', 'printing', 'remove']

export const isAnyPrinted = (photographs: readonly SheetPhotograph[]): boolean => photographs.some(({ photograph }) => photograph.isPrinted)

/** Does to photographs what a button, a key or a hand asks. */
export const usePerforming = (survey: Survey, shown: readonly SheetPhotograph[], sort: SheetSort, acts: SheetActs): Performing => {
  const [opened, open] = useState<Opened>({})
  const put = (ids: ReadonlySet<string>, target: string, side: 'before' | 'after'): void => acts.order(putBeside(survey.photographs.map(({ id }) => id), ids, target, side))
  const pass = (chosen: readonly SheetPhotograph[], way: 'earlier' | 'later'): void => {
    const neighbour = neighbourToPass(shown, chosen, way, sort)
    if (neighbour !== undefined) put(new Set(chosen.map(({ id }) => id)), neighbour.id, way === 'earlier' ? 'before' : 'after')
  }
  const canDo = (chosen: readonly SheetPhotograph[]): ReadonlySet<SheetAct> =>
    new Set<SheetAct>([
      ...(chosen.length > 0 ? always : []),
      ...(chosen.length === 1 ? (['open', 'caption'] as const) : []),
      ...(['earlier', 'later'] as const).filter((way) => neighbourToPass(shown, chosen, way, sort) !== undefined),
    ])
  const perform = (act: SheetAct, chosen: readonly SheetPhotograph[]): void => {
    const [first] = chosen
    if (first === undefined || !canDo(chosen).has(act)) return
    const photographs = chosen.map(({ photograph }) => photograph)
    const doing: Readonly<Record<SheetAct, () => void>> = {
      open: () => open({ viewed: first.id }),
      move: () => open({ moving: chosen }),
      caption: () => open({ writing: first.id }),
      turnLeft: () => acts.turn(photographs, -1),
      turnRight: () => acts.turn(photographs, 1),
      printing: () => acts.choose(photographs, !isAnyPrinted(chosen)),
      earlier: () => pass(chosen, 'earlier'),
      later: () => pass(chosen, 'later'),
      remove: () => acts.remove(photographs),
    }
    doing[act]()
  }
  return { opened, open, canDo, perform, put }
}
