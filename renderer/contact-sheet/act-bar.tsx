import type { ReactNode } from 'react'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { TurnSign } from '../parts/turn-sign'
import { useWords } from '../parts/use-words'
import style from './act-bar.module.css'

/** What can be done with the photographs chosen. */
export const sheetActs = ['open', 'move', 'turnLeft', 'turnRight', 'earlier', 'later', 'printing', 'caption', 'remove'] as const
export type SheetAct = (typeof sheetActs)[number]

interface ActBarProps {
  readonly chosenCount: number
  readonly isAllChosen: boolean
  /** Whether one of those chosen at least stands in the report. */
  readonly isAnyPrinted: boolean
  /** Those that mean something for the photographs chosen. */
  readonly can: ReadonlySet<SheetAct>
  readonly onAct: (act: SheetAct) => void
  readonly onChooseAll: () => void
  readonly onChooseNone: () => void
}

const Sign = ({ path }: { readonly path: string }) => <svg viewBox="0 0 16 16" className={style.sign} aria-hidden="true"><path d={path} /></svg>

/** Drawn where a shape says it sooner than a word; the word is its name. */
const signs: Partial<Record<SheetAct, ReactNode>> = {
  turnLeft: <TurnSign to="left" />,
  turnRight: <TurnSign to="right" />,
  earlier: <Sign path="M7 3.5 2.5 8 7 12.5M2.5 8h11" />,
  later: <Sign path="M9 3.5 13.5 8 9 12.5M13.5 8h-11" />,
}

/** The acts on those chosen, always in the same place: over the sheet on a desk, at the thumb on a phone. */
export const ActBar = ({ chosenCount, isAllChosen, isAnyPrinted, can, onAct, onChooseAll, onChooseNone }: ActBarProps) => {
  const { acts: said, countChosen } = useWords().screens.contactSheet
  const labels: Readonly<Record<SheetAct, string>> = { ...said, printing: isAnyPrinted ? said.leaveOut : said.print }
  return (
    <fieldset className={style.bar} aria-label={said.title} data-empty={chosenCount === 0}>
      {chosenCount === 0
        ? <p className={style.hint}>{said.hint}</p>
        : (
          <>
            <output className={style.count}>{say(countChosen, { chosen: chosenCount }, 'metric')}</output>
            {sheetActs.map((act) => (
              <span key={act} className={act === 'open' ? style.open : undefined}>
                <Button kind={act === 'move' ? 'primary' : 'plain'} isDisabled={!can.has(act)} onPress={() => onAct(act)} {...(signs[act] !== undefined && { 'aria-label': labels[act] })}>
                  {signs[act] ?? labels[act]}
                </Button>
              </span>
            ))}
            <Button kind="quiet" onPress={onChooseNone} aria-label={said.noneName}>{said.none}</Button>
          </>
        )}
      {!isAllChosen && <Button kind="quiet" onPress={onChooseAll} aria-label={said.allName}>{chosenCount === 0 ? said.allName : said.all}</Button>}
    </fieldset>
  )
}
