import { useEffect, useRef } from 'react'
import { Button } from 'react-aria-components'
import { summarize } from '../../shared-logic/survey/assess'
import type { Stop } from '../../shared-logic/survey/walk'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { LinkButton } from '../parts/link-button'
import { VerdictShape } from '../parts/verdict-mark'
import { classNames } from '../parts/class-names'
import style from './station-list.module.css'
import type { Walk } from './use-walk'

interface StationListProps {
  readonly walk: Walk
}

/** The stations in walking order with what is open at each: a list beside the drawing, a strip along the top of a narrow window. */
export const StationList = ({ walk }: StationListProps) => {
  const { walk: said } = useWords().screens.survey
  const strip = useRef<HTMLOListElement>(null)
  const units = useUnits()
  const here = walk.stop.station
  const { asked, open } = summarize(walk.assessed)
  useEffect(() => {
    const list = strip.current
    if (!list) return undefined
    const follow = (): void => {
      const current = list.querySelector<HTMLElement>(`[data-station="${here}"]`)
      // Only the strip is moved, never the page.
      if (current) list.scrollLeft = current.offsetLeft - list.clientWidth / 2 + current.clientWidth / 2
    }
    follow()
    // A telephone is turned, a window made narrow: the stops are laid out anew, and the strip would stand somewhere else.
    if (!('ResizeObserver' in window)) return undefined
    const observer = new ResizeObserver(follow)
    observer.observe(list)
    return () => observer.disconnect()
  }, [here])
  return (
    <nav aria-label={said.stations} className={style.nav}>
      <p className={style.progress}>{say(said.answered, { done: asked - open, asked }, units)}</p>
      <ol ref={strip} className={style.list}>
        {walk.stops.map((stop) => (
          <li key={stop.station} data-station={stop.station} className={style.item}>
            <StationButton stop={stop} isHere={stop.station === here} onPress={() => walk.goTo(stop.entry.key)} />
          </li>
        ))}
        <li className={style.end}><LinkButton to={`/surveys/${walk.survey.id}/review`} kind={open === 0 ? 'primary' : 'plain'}>{said.review}</LinkButton></li>
      </ol>
    </nav>
  )
}

interface StationButtonProps {
  readonly stop: Stop
  readonly isHere: boolean
  readonly onPress: () => void
}

const StationButton = ({ stop, isHere, onPress }: StationButtonProps) => {
  const words = useWords()
  const units = useUnits()
  const { walk: said } = words.screens.survey
  const { asked, open, verdict, tallies } = stop.summary
  const findings = tallies.fail + tallies.advisory
  return (
    <Button className={classNames(style.station, isHere && style.here, open === 0 && style.done)} aria-current={isHere ? 'step' : undefined} onPress={onPress}>
      <span className={style.number} aria-hidden="true">{stop.number}</span>
      <span className={style.name}>{words.stations[stop.station]}</span>
      <span className={style.state}>
        {(findings > 0 || open === 0) && <VerdictShape verdict={verdict} size={13} />}
        {(findings > 0 || open === 0) && <span className="visually-hidden">{words.verdicts[verdict]}, </span>}
        {/* A pass beside which something was not seen is not a whole pass. */}
        {open === 0 && tallies['not seen'] > 0 && verdict !== 'not seen' && <VerdictShape verdict="not seen" size={13} />}
        {open === 0 && tallies['not seen'] > 0 && <span className="visually-hidden">{say(said.notSeenCount, { count: tallies['not seen'] }, units)}, </span>}
        <span className={style.count} aria-hidden="true">{asked - open}/{asked}</span>
        <span className="visually-hidden">{open === 0 ? said.allDone : say(said.openCount, { count: open }, units)}</span>
      </span>
    </Button>
  )
}
