import { sameForOthers } from '../../shared-logic/survey/walk'
import { optionLabel } from '../../shared-logic/words/check-sentences'
import { sayPosition } from '../../shared-logic/words/position'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './open-check.module.css'
import { placeOf, type Walk } from './use-walk'

interface SameOfferProps {
  readonly walk: Walk
}

/** 'Same for the other three hubs': one act for all that are still open, never by itself. */
export const SameOffer = ({ walk }: SameOfferProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.survey.check
  const offer = sameForOthers(walk.assessed, walk.current)
  if (offer === undefined) return null
  const given = offer.from.check.fields.flatMap((field) => {
    const value = offer.answer.values[field.id]
    return typeof value === 'string' ? [optionLabel(words, offer.from.check, field, value)] : []
  })
  const give = (): void => {
    for (const each of offer.to) walk.putAt(placeOf(each), offer.answer)
    walk.goOn(new Set(offer.to.map((each) => each.key)))
  }
  const position = sayPosition(offer.from.position, walk.survey.rig.trailer.axleCount)
  return (
    <div className={style.same}>
      <Button onPress={give}>{say(offer.to.length === 1 ? said.sameOne : said.same, { answer: given.join(', '), count: offer.to.length }, units)}</Button>
      {offer.from.key !== walk.current.key && <span className={style.soft}>{say(said.sameFrom, { position }, units)}</span>}
    </div>
  )
}
