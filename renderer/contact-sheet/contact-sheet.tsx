import { useMemo, useState, type KeyboardEvent } from 'react'
import type { Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { RefusalNotice } from '../parts/refusal-notice'
import { KeysDialog } from '../parts/keys-dialog'
import { useWords } from '../parts/use-words'
import { PhotographNews } from '../survey/photograph-news'
import { PhotographViewer } from '../survey/photograph-viewer'
import type { Photographs } from '../survey/use-photographs'
import { usePrintNumbers } from '../survey/use-print-numbers'
import { useSingleKeys } from '../survey/use-single-keys'
import { ActBar } from './act-bar'
import { actOfKey } from './act-of-key'
import { arrange, stationsShown, type SheetWish } from './arrange'
import { CheckList } from './check-list'
import type { CheckTarget } from './check-targets'
import style from './contact-sheet.module.css'
import { MoveDialog } from './move-dialog'
import { PictureGrid } from './picture-grid'
import { SheetNews } from './sheet-news'
import { SheetTools } from './sheet-tools'
import { useChosen } from './use-chosen'
import { isAnyPrinted, usePerforming } from './use-performing'
import { useSheet } from './use-sheet'
import type { Done, SheetActs } from './use-sheet-acts'
import { useStable } from './use-stable'

interface ContactSheetProps {
  readonly survey: Survey
  readonly intake: Photographs
  readonly acts: SheetActs
  /** Told before what has the focus may go; of the photograph that is to take it up, where one is. */
  readonly keepFocus: (id?: string) => void
  readonly onUndo: (done: Done) => void
}

const everything: SheetWish = { find: '', sort: 'walk', show: 'all', station: 'all' }

/** Every photograph of a survey: looked over, chosen, and given its place, its turn, its caption and its part in the report. */
export const ContactSheet = ({ survey, intake, acts, keepFocus, onUndo }: ContactSheetProps) => {
  const said = useWords().screens.contactSheet
  const isFrozen = survey.status === 'issued'
  const sheet = useSheet(survey)
  const numbers = usePrintNumbers(survey)
  const [wish, setWish] = useState(everything)
  const shown = useMemo(() => arrange(sheet.photographs, wish, sheet.walk), [sheet.photographs, wish, sheet.walk])
  const chosen = useChosen(shown)
  const { opened, open, canDo, perform, put } = usePerforming(survey, shown, wish.sort, acts)
  const [areKeysShown, showKeys] = useState(false)
  const [areKeysOn, turnKeys] = useSingleKeys()

  const targets = useMemo(() => new Map(sheet.groups.flatMap((group) => group.targets).map((target): [string, CheckTarget] => [target.id, target])), [sheet.groups])
  const assign = (ids: ReadonlySet<string>, targetId: string): void => {
    keepFocus()
    // Those moved are done with: the next to be chosen are others.
    chosen.choose(new Set())
    acts.assign(sheet.photographs.filter(({ id }) => ids.has(id)).map(({ photograph }) => photograph), targets.get(targetId)?.place)
  }
  const seek = (targetId: string): void => {
    const target = targets.get(targetId)
    setWish(target === undefined ? { ...everything, sort: wish.sort, show: 'no check' } : { ...everything, sort: wish.sort, find: `${target.title} ${target.at}`.trim() })
  }
  const pick = useStable((targetId: string): void => {
    if (chosen.photographs.length > 0) assign(new Set(chosen.photographs.map(({ id }) => id)), targetId)
    else seek(targetId)
  })
  const drop = useStable((ids: readonly string[], targetId: string) => assign(new Set(ids), targetId))
  const key = useStable((event: KeyboardEvent, id: string): boolean => {
    const act = actOfKey(event, areKeysOn)
    if (act === undefined || isFrozen) return false
    perform(act, chosen.photographs.length > 0 ? chosen.photographs : shown.filter((each) => each.id === id))
    keepFocus(id)
    return true
  })
  const written = useStable((id: string, caption: string | undefined): void => {
    open({})
    keepFocus(id)
    const photograph = survey.photographs.find((each) => each.id === id)
    if (caption !== undefined && photograph !== undefined) acts.describe(photograph, caption)
  })
  const view = useStable((id: string) => open({ viewed: id }))
  const write = useStable((id: string) => open({ writing: id }))
  const putStable = useStable(put)
  const whenNone = useStable(() => <p className={style.none}>{said.none} <Button onPress={() => setWish({ ...everything, sort: wish.sort })}>{said.showAll}</Button></p>)
  const viewing = useMemo(() => shown.map(({ photograph }) => photograph), [shown])
  const viewed: Photographs = { ...intake, describe: acts.describe, turn: (photograph, quarters) => acts.turn([photograph], quarters), remove: (photograph) => acts.remove([photograph]) }
  const total = sheet.photographs.length
  const counted = shown.length < total ? say(said.countShown, { shown: shown.length, total }, 'metric') : total === 1 ? said.countOne : say(said.count, { total }, 'metric')
  return (
    <div className={style.board}>
      <div className={style.sheet}>
        {isFrozen && <p className={style.frozen}>{said.frozen}</p>}
        <SheetTools wish={wish} onWish={setWish} stations={stationsShown(sheet.photographs)} />
        <div className={style.told}>
          <output className={style.counted}>{counted}</output>
          {!isFrozen && <span className={style.sortHint}>{said.sortHints[wish.sort]}</span>}
          {!isFrozen && <span className={style.keys}><Button kind="quiet" onPress={() => showKeys(true)}>{said.keys.open}</Button></span>}
        </div>
        {!isFrozen && (
          <div className={style.stuck}>
            <div className={style.batch}><PhotographNews photographs={intake} /></div>
            <RefusalNotice error={acts.problem} />
            <ActBar
              chosenCount={chosen.photographs.length} isAllChosen={chosen.photographs.length === shown.length} isAnyPrinted={isAnyPrinted(chosen.photographs)} can={canDo(chosen.photographs)}
              onAct={(act) => { keepFocus(); perform(act, chosen.photographs) }} onChooseAll={() => chosen.choose(new Set(shown.map(({ id }) => id)))} onChooseNone={() => { keepFocus(); chosen.choose(new Set()) }}
            />
          </div>
        )}
        <PictureGrid
          shown={shown} sort={wish.sort} numbers={numbers} surveyDate={survey.surveyDate} isFrozen={isFrozen} chosen={chosen.ids} onChoose={chosen.choose} writing={opened.writing}
          onWrite={write} onWritten={written} onOpen={view} onPut={putStable} onKey={key} whenNone={whenNone}
        />
        <SheetNews done={acts.done} whereIs={sheet.whereIs} onUndo={onUndo} onForget={() => { keepFocus(); acts.forget() }} />
      </div>
      {!isFrozen && (
        <aside className={style.checks} aria-label={said.checks}>
          <p className={style.checksHint}>{chosen.photographs.length === 0 ? said.checksHint : chosen.photographs.length === 1 ? said.checksPressOne : say(said.checksPress, { count: chosen.photographs.length }, 'metric')}</p>
          <CheckList label={said.checks} groups={sheet.groups} counts={sheet.counts} isWithNowhere onPick={pick} onDropped={drop} />
        </aside>
      )}
      {opened.viewed !== undefined && (
        <PhotographViewer
          list={viewing} viewedId={opened.viewed} onView={view} onClose={() => open({})} survey={survey} zone={survey.zone} numbers={numbers}
          {...(!isFrozen && { photographs: viewed })}
        />
      )}
      {opened.moving !== undefined && (
        <MoveDialog
          chosen={opened.moving} groups={sheet.groups} counts={sheet.counts} onClose={() => open({})}
          onPick={(targetId) => { assign(new Set(opened.moving?.map(({ id }) => id)), targetId); open({}) }}
        />
      )}
      <KeysDialog keys={said.keys} isOpen={areKeysShown} onClose={() => showKeys(false)} isOn={areKeysOn} onTurn={turnKeys} />
    </div>
  )
}
