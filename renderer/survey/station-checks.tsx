import { useState, type ReactNode } from 'react'
import type { Assessed } from '../../shared-logic/survey/assess'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { CheckLine } from './check-line'
import style from './station-checks.module.css'
import type { Walk } from './use-walk'

interface StationChecksProps {
  readonly walk: Walk
  /** The open check, large. */
  readonly children: ReactNode
}

const shownAbove = 2
const shownBelow = 3

/** The checks of a station: the open one large between its neighbours, the rest folded until asked for. */
export const StationChecks = ({ walk, children }: StationChecksProps) => {
  const said = useWords().screens.survey.walk
  const units = useUnits()
  const [isUnfolded, setUnfolded] = useState(false)
  const { checks } = walk.stop
  const here = checks.findIndex((each) => each.key === walk.current.key)
  const above = checks.slice(isUnfolded ? 0 : Math.max(0, here - shownAbove), here)
  const below = checks.slice(here + 1, isUnfolded ? undefined : here + 1 + shownBelow)
  const folded = checks.length - 1 - above.length - below.length
  return (
    <div className={style.checks}>
      <Lines list={above} walk={walk} isAbove />
      <div className={style.open}>{children}</div>
      <Lines list={below} walk={walk} isAbove={false} />
      {(folded > 0 || isUnfolded) && checks.length > shownAbove + shownBelow + 1 && (
        <Button kind="quiet" onPress={() => setUnfolded(!isUnfolded)}>{isUnfolded ? said.showNear : say(said.showAll, { count: checks.length }, units)}</Button>
      )}
    </div>
  )
}

interface LinesProps {
  readonly list: readonly Assessed[]
  readonly walk: Walk
  readonly isAbove: boolean
}

const Lines = ({ list, walk, isAbove }: LinesProps) => {
  const said = useWords().screens.survey.walk
  if (list.length === 0) return null
  return (
    <ul aria-label={isAbove ? said.before : said.after} className={isAbove ? style.above : undefined}>
      {list.map((each) => <li key={each.key}><CheckLine assessed={each} survey={walk.survey} onOpen={() => walk.goTo(each.key)} /></li>)}
    </ul>
  )
}
