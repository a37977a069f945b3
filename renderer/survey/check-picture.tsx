import type { Check } from '../../shared-logic/checks/check'
import { instrumentDrawing } from '../../shared-logic/drawings/instruments'
import { wordsOf } from '../../shared-logic/words/check-sentences'
import { DrawingView } from '../drawing/drawing-view'
import { useWords } from '../parts/use-words'
import style from './open-check.module.css'

interface CheckPictureProps {
  readonly check: Check
}

/** The fitting the check is about, drawn; not where a reading draws its instrument already. */
export const CheckPicture = ({ check }: CheckPictureProps) => {
  const words = useWords()
  const isDrawnBelow = check.fields.some((field) => field.kind === 'reading' && field.drawing !== undefined && field.when === undefined)
  if (check.drawing === undefined || isDrawnBelow) return null
  return <div className={style.picture}><DrawingView drawing={instrumentDrawing(check.drawing)} title={wordsOf(words, check).title} /></div>
}
