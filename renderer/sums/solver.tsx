import { withAxleAt, withGearMoved, withStemAt } from '../../shared-logic/balance/moved-rig'
import type { Move } from '../../shared-logic/balance/goal'
import type { Rig } from '../../shared-logic/rig/rig'
import type { Sums } from '../../shared-logic/sums/sums'
import { say } from '../../shared-logic/words/say'
import { sayMove } from '../../shared-logic/words/sums/balance'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './balance-part.module.css'
import { shownShare } from './shown-share'
import type { SheetFields } from './use-sums-rig'

/** Nearer than this to the share wanted there is nothing to move: a hundredth of a per cent. */
const near = 1e-4

const movedBy = (rig: Rig, { what, id, forwardM, axleM }: Move): Rig | undefined => {
  const stemM = rig.loading?.stemAftOfBallM
  if (what === 'boat') return stemM === undefined ? undefined : withStemAt(rig, stemM - forwardM)
  if (what === 'axle') return axleM === undefined ? undefined : withAxleAt(rig, axleM)
  return id === undefined ? undefined : withGearMoved(rig, id, forwardM)
}

interface SolverProps {
  readonly sheet: SheetFields
  readonly sums: Sums
}

const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`

/** What has to move, how far, to reach the share wanted; one press does it. */
export const Solver = ({ sheet, sums: { balance, load } }: SolverProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.sums
  const { goal, lever } = balance
  if (!goal || !lever) return null
  if (Math.abs(lever.share - goal.share) < near) return <p className={style.there}>{said.solverThere}</p>
  return (
    <section className={style.solver} aria-labelledby="solver">
      <h3 id="solver">{say(goal.because === 'target' ? said.solverTitle : said.solverStatic, { share: shownShare(goal.share) }, units)}</h3>
      <ul>
        {goal.moves.map((move) => {
          const { text } = sayMove(words, load.items, move, units)
          const moved = move.possible ? movedBy(sheet.kept, move) : undefined
          return (
            <li key={`${move.what} ${move.id ?? ''}`} className={style.move}>
              <span>{capital(text)}.</span>
              {moved && <Button onPress={() => sheet.put(moved)} aria-label={say(said.doItLabel, { move: text }, units)}>{said.doIt}</Button>}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
