import type { Spot } from '../../shared-logic/survey/spot'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'

/** So near the middle no finger means a side, m. */
const middleM = 0.02

/** '2.41 m behind the ball, 0.62 m right of the middle'. */
export const useSayAt = (): ((at: NonNullable<Spot['at']>) => string) => {
  const said = useWords().screens.survey.spots
  const units = useUnits()
  return (at) => {
    const aft = measured('length', Math.abs(at.aftOfBallM))
    const along = at.aftOfBallM < 0 ? `${say(said.ahead, { aft }, units)},` : undefined
    const text = at.view === 'plan'
      ? say(Math.abs(at.toRightM) < middleM ? said.at.middle : said.at.plan, { aft, across: measured('length', Math.abs(at.toRightM)), side: at.toRightM < 0 ? said.sides.left : said.sides.right }, units)
      : say(said.at.side, { aft, height: measured('length', at.heightM) }, units)
    return along === undefined ? text : `${along}${text.slice(text.indexOf(',') + 1)}`
  }
}
