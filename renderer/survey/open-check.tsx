import { useEffect, useMemo, useRef, useState, type RefObject } from 'react'
import { wordsOf } from '../../shared-logic/words/check-sentences'
import { Button } from '../parts/button'
import { RefusalNotice } from '../parts/refusal-notice'
import { useWords } from '../parts/use-words'
import { AnswerPanel } from './answer-panel'
import { AsideDialog } from './aside-dialog'
import { CheckActs } from './check-acts'
import { CheckCamera } from './check-camera'
import { CheckPicture } from './check-picture'
import { nameOf } from './check-names'
import { CriterionNote } from './criterion-note'
import { InstrumentField, NoteField } from './note-field'
import style from './open-check.module.css'
import { OverruleDialog } from './overrule-dialog'
import { CheckPhotographs } from './check-photographs'
import { PhotographDrop } from './photograph-drop'
import { RecordOffer } from './record-offer'
import { SameOffer } from './same-offer'
import { SpotSceneProvider } from './spot-scene'
import { useAnswering } from './use-answering'
import { useCheckActs } from './use-check-acts'
import { useDraft } from './use-draft'
import type { Photographs } from './use-photographs'
import { placeOf, type Walk } from './use-walk'
import { useWalkKeys } from './use-walk-keys'
import { VerdictLine } from './verdict-line'

interface OpenCheckProps {
  readonly walk: Walk
  readonly photographs: Photographs
  readonly areKeysOn: boolean
  readonly onHelp: () => void
  /** Opens the panel that lets a phone in. */
  readonly onPhone: () => void
  /** The surveyor came here by moving, not by opening the screen: the focus comes along. */
  readonly hasMoved: boolean
  /** A photograph is to be taken again: the camera is opened without being asked for here. */
  readonly isCameraAsked: boolean
  readonly onCameraClosed: () => void
}

/** The one check that is open: question, how to look, answer, verdict, criterion, photographs, and what else can be said. */
export const OpenCheck = ({ walk, photographs, areKeysOn, onHelp, onPhone, hasMoved, isCameraAsked, onCameraClosed }: OpenCheckProps) => {
  const words = useWords()
  const said = words.screens.survey.check
  const { current, written } = walk
  const own = wordsOf(words, current.check)
  const { title, place } = nameOf(words, current, walk.survey)
  const draft = useDraft(walk)
  const answering = useAnswering(walk, draft)
  const acting = useCheckActs(walk, draft)
  const heading = useRef<HTMLHeadingElement>(null)
  const picker = useRef<HTMLInputElement>(null)
  const [isCameraOpen, setCameraOpen] = useState(false)
  const scene = useMemo(() => ({ walk, photographs }), [walk, photographs])
  useArrivalFocus(heading, hasMoved)
  useWalkKeys(
    {
      answer: answering.answerByNumber, goOn: answering.goOn, goBack: walk.goBack, goNext: walk.goNext, photograph: () => picker.current?.click(), camera: () => setCameraOpen(true), phone: onPhone, note: () => acting.act('note'),
      notSeen: () => acting.act('not seen'), notApplicable: () => acting.act('not applicable'), overrule: () => acting.act('overrule'), clear: () => acting.act('clear'), help: onHelp,
    },
    areKeysOn,
  )
  const add = (files: readonly File[]): void => photographs.add(files, placeOf(current))
  const closeCamera = (): void => {
    setCameraOpen(false)
    onCameraClosed()
  }
  return (
    <PhotographDrop onFiles={add}>
      <article className={style.check} aria-labelledby="open-check">
        <header className={style.head}>
          <h3 id="open-check" ref={heading} tabIndex={-1} className={style.name}>
            {title}
            {place !== '' && <span className={style.place}>{place}</span>}
          </h3>
          <p className={style.question}>{own.question}</p>
        </header>
        <div className={style.look}>
          <div className={style.how}>
            <p>{own.how}</p>
            <RecordOffer walk={walk} />
            {own.caution !== undefined && <p className={style.caution}><strong>{said.caution}.</strong> {own.caution}</p>}
          </div>
          <CheckPicture check={current.check} />
        </div>
        <SpotSceneProvider value={scene}><AnswerPanel walk={walk} draft={draft} answering={answering} /></SpotSceneProvider>
        <div className={style.result}>
          <VerdictLine assessed={draft.assessed} />
          {walk.change?.state === 'failed' && (
            <div className={style.refused}>
              <RefusalNotice error={walk.change.problem} onRetry={walk.tryAgain} />
              <Button kind="quiet" onPress={walk.giveUp}>{said.giveUp}</Button>
            </div>
          )}
          <SameOffer walk={walk} />
          <CriterionNote check={current.check} ruleBook={walk.survey.ruleBook} />
        </div>
        {(written.note !== undefined || acting.opened.has('note')) && <NoteField walk={walk} isFresh={acting.fresh === 'note'} />}
        {(written.instrument !== undefined || acting.opened.has('instrument')) && <InstrumentField walk={walk} isFresh={acting.fresh === 'instrument'} />}
        <CheckPhotographs survey={walk.survey} assessed={draft.assessed} photographs={photographs} picker={picker} onFiles={add} onCamera={() => setCameraOpen(true)} onPhone={onPhone} />
        <CheckActs acts={acting.acts} onAct={acting.act} />
      </article>
      {(acting.asking === 'not seen' || acting.asking === 'not applicable') && (
        <AsideDialog as={acting.asking} reason={written.aside?.as === acting.asking ? written.aside.reason : ''} onConfirm={(reason) => acting.asking !== undefined && acting.asking !== 'overrule' && acting.setAside(acting.asking, reason)} onClose={acting.close} />
      )}
      {(isCameraOpen || isCameraAsked) && <CheckCamera survey={walk.survey} assessed={current} photographs={photographs} onClose={closeCamera} />}
      {acting.asking === 'overrule' && <OverruleDialog judged={draft.assessed.judged} overrule={written.overrule} onConfirm={acting.overrule} onClose={acting.close} />}
    </PhotographDrop>
  )
}

const useArrivalFocus = (heading: RefObject<HTMLElement | null>, hasMoved: boolean): void => {
  useEffect(() => {
    if (!hasMoved) return
    heading.current?.focus({ preventScroll: true })
    heading.current?.scrollIntoView({ block: 'nearest' })
  }, [heading, hasMoved])
}
