import { useState } from 'react'
import { Button } from './button'
import { FileButton } from './file-button'
import type { Handover } from './handover'
import type { Picture } from './picture'
import { sayRefused } from './say-refused'
import { Thumbnail } from './thumbnail'
import style from './trouble.module.css'
import { countOf, usePhoneWords } from './use-phone-words'

type Kind = 'refused' | 'warned' | 'already there'

const kindOf = ({ state, isAlreadyThere, warnings }: Picture): Kind | undefined => {
  if (state === 'refused') return 'refused'
  if (isAlreadyThere === true) return 'already there'
  return warnings.length > 0 ? 'warned' : undefined
}

const keyOf = (picture: Picture): string => `${kindOf(picture) ?? ''} ${picture.id}`

interface TroubleProps {
  readonly pictures: readonly Picture[]
  readonly handover: Handover
  readonly isOver: boolean
  /** The way to the pictures; undefined where they stand above already. */
  readonly onLook: (() => void) | undefined
  /** What was said is put away, and the button that did it with it. */
  readonly onSettled: () => void
}

/** What came of the last pictures other than that they arrived, while the person still stands before it: one thing at a time, the newest first. */
export const Trouble = ({ pictures, handover, isOver, onLook, onSettled }: TroubleProps) => {
  const troubled = pictures.filter((picture) => kindOf(picture) !== undefined)
  const [settled, setSettled] = useState<ReadonlySet<string>>(() => new Set(troubled.map(keyOf)))
  const unsettled = troubled.filter((picture) => !settled.has(keyOf(picture)))
  const newest = unsettled.at(-1)
  const kind = newest && kindOf(newest)
  const same = unsettled.filter((picture) => kindOf(picture) === kind)
  const settle = (which: readonly Picture[]): void => {
    setSettled(new Set([...settled, ...which.map(keyOf)]))
    onSettled()
  }
  const look = onLook && (() => {
    settle(unsettled)
    onLook()
  })
  return (
    <div role="alert" className={style.place}>
      {newest !== undefined && kind === 'warned' && <Warned key={newest.id} picture={newest} handover={handover} isOver={isOver} onSettle={() => settle([newest])} />}
      {newest !== undefined && kind === 'refused' && <NotTaken key="refused" pictures={same} newest={newest} onLook={look} onSettle={() => settle(same)} />}
      {newest !== undefined && kind === 'already there' && <AlreadyThere key="already there" pictures={same} newest={newest} onLook={look} onSettle={() => settle(same)} />}
    </div>
  )
}

interface SaidProps {
  readonly kind: Kind
  readonly picture: Picture
  readonly title: string
  readonly lines: readonly string[]
  readonly children: React.ReactNode
}

const Said = ({ kind, picture, title, lines, children }: SaidProps) => (
  <div className={style.trouble} data-kind={kind}>
    <Thumbnail small={picture.small} />
    <div className={style.words}>
      <strong>{title}</strong>
      {lines.map((line) => <p key={line}>{line}</p>)}
    </div>
    <div className={style.acts}>{children}</div>
  </div>
)

interface OfOneProps {
  readonly picture: Picture
  readonly handover: Handover
  readonly isOver: boolean
  readonly onSettle: () => void
}

/** Never a refusal: it is kept either way. */
const Warned = ({ picture, handover, isOver, onSettle }: OfOneProps) => {
  const { pictures: said, checks } = usePhoneWords()
  return (
    <Said kind="warned" picture={picture} title={picture.place?.title ?? checks.none} lines={picture.warnings}>
      <Button onPress={onSettle}>{said.keep}</Button>
      {!isOver && <FileButton isCamera onFiles={(files) => { onSettle(); void handover.add(files, picture.place) }}>{said.takeAgain}</FileButton>}
    </Said>
  )
}

interface OfManyProps {
  readonly pictures: readonly Picture[]
  readonly newest: Picture
  readonly onLook: (() => void) | undefined
  readonly onSettle: () => void
}

const NotTaken = ({ pictures, newest, onLook, onSettle }: OfManyProps) => {
  const words = usePhoneWords()
  const said = words.pictures
  return (
    <Said kind="refused" picture={newest} title={countOf(said.notTaken, pictures.length)} lines={pictures.length === 1 ? [sayRefused(words, newest)] : []}>
      <Button onPress={onSettle}>{said.understood}</Button>
      {onLook && <Button onPress={onLook}>{said.look}</Button>}
    </Said>
  )
}

const AlreadyThere = ({ pictures, newest, onLook, onSettle }: OfManyProps) => {
  const { pictures: said, checks } = usePhoneWords()
  const title = pictures.length === 1 ? (newest.place?.title ?? checks.none) : said.states['already there']
  return (
    <Said kind="already there" picture={newest} title={title} lines={[countOf(said.alreadyThere, pictures.length)]}>
      <Button onPress={onSettle}>{said.understood}</Button>
      {onLook && <Button onPress={onLook}>{said.look}</Button>}
    </Said>
  )
}
