import type { LimitLine } from '../../shared-logic/load/limits'
import type { LoadSheet } from '../../shared-logic/load/load-sheet'
import { limitBar, sayReserve } from '../../shared-logic/drawings/limit-bars'
import { formatQuantity } from '../../shared-logic/units/convert'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { DrawingShapes } from '../drawing/drawing-shapes'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import style from './limit-list.module.css'
import { WaitsFor } from './sums-lines'

const LimitRow = ({ line, reserveWanted }: { readonly line: LimitLine; readonly reserveWanted: number }) => {
  const words = useWords()
  const units = useUnits()
  const { load, limit } = line
  return (
    <li className={style.limit}>
      <span className={style.name}>{words.sums.limits[limit.id]}</span>
      <svg viewBox="-2 -4 424 28" className={style.bar} preserveAspectRatio="none" aria-hidden="true"><DrawingShapes shapes={limitBar(line, reserveWanted)} /></svg>
      <span className={style.reserve}>
        {sayReserve(line, words, units)}
        {load?.massKg !== undefined && limit.ratingKg !== undefined && <span className={style.soft}>{say(words.screens.sums.limitLoad, { load: measured('mass', load.massKg), rating: formatQuantity('mass', limit.ratingKg, units) }, units)}</span>}
      </span>
      <VerdictMark verdict={line.verdict} />
    </li>
  )
}

/** Every limit whose rating is known, with its bar; the others in one sentence with the way to their fields. */
export const LimitList = ({ sheet, rigId }: { readonly sheet: LoadSheet; readonly rigId: string }) => {
  const known = sheet.lines.filter(({ limit }) => limit.ratingKg !== undefined)
  return (
    <>
      {known.length > 0 && <ul className={style.limits}>{known.map((line) => <LimitRow key={line.limit.id} line={line} reserveWanted={sheet.reserveWanted} />)}</ul>}
      {sheet.limitsWaitFor.length > 0 && <WaitsFor fields={sheet.limitsWaitFor} rigId={rigId} />}
    </>
  )
}
