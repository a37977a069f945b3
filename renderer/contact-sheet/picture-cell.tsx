import { memo } from 'react'
import { Button, GridListItem } from 'react-aria-components'
import type { TimeTaken } from '../../shared-logic/photographs/time-taken'
import { say, sayDay } from '../../shared-logic/words/say'
import { MarkedPicture } from '../marking/marked-picture'
import { useWords } from '../parts/use-words'
import { CaptionEditor } from './caption-editor'
import style from './picture-cell.module.css'
import type { SheetPhotograph } from './sheet-photograph'

interface PictureCellProps {
  readonly each: SheetPhotograph
  /** In the report that is issued. */
  readonly number: number | undefined
  /** The day of the survey: a picture of that day tells the hour alone. */
  readonly surveyDate: string
  readonly isFrozen: boolean
  readonly isWriting: boolean
  readonly onOpen: (id: string) => void
  readonly onWrite: (id: string) => void
  /** Undefined when the caption is left as it was. */
  readonly onWritten: (id: string, caption: string | undefined) => void
}

type Words = ReturnType<typeof useWords>

/** '10:05', or with its day where it is of another: '20 Nov, 10:05', '16 May 2024, 10:05'. */
const sayTaken = ({ at }: TimeTaken, surveyDate: string): string => {
  const time = at.slice(11, 16)
  return at.startsWith(surveyDate) ? time : `${sayDay(at, at.startsWith(surveyDate.slice(0, 4)))}, ${time}`
}

const factsOf = ({ photograph, taken }: SheetPhotograph, number: number | undefined, surveyDate: string, { screens: { contactSheet: said } }: Words): string =>
  [...(number === undefined ? [] : [say(said.number, { number }, 'metric')]), said.sources[photograph.source], ...(taken === undefined ? [] : [sayTaken(taken, surveyDate)])].join(' · ')

/** A name as long as this fits whole. */
const shortName = 18

/** Files of one series differ at their ends, as by the time of the camera: that stays in sight, and what is cut is cut before it. */
const partsOf = ({ photograph: { caption }, name }: SheetPhotograph): readonly [begin: string, end: string] => {
  if (caption.trim() !== '' || name.length <= shortName) return [name, '']
  const last = name.length - name.lastIndexOf(' ') - 1
  const end = last <= shortName ? last : 12
  return [name.slice(0, -end), name.slice(-end)]
}

/** What is to be known before it is printed, in short. */
const flagsOf = ({ photograph, warnings, alike }: SheetPhotograph, { screens: { contactSheet: said } }: Words): string[] => {
  const [first] = alike
  const looks = first === undefined ? [] : [alike.length === 1 ? say(said.alike, { name: first }, 'metric') : say(said.alikeMany, { count: alike.length }, 'metric')]
  return [...(photograph.isPrinted ? [] : [said.notPrinted]), ...warnings, ...looks]
}

/** One photograph of the sheet: the picture, what it is called, where it belongs, how it came, and what is to be said of it. */
export const PictureCell = memo(({ each, number, surveyDate, isFrozen, isWriting, onOpen, onWrite, onWritten }: PictureCellProps) => {
  const words = useWords()
  const said = words.screens.contactSheet
  const { id, photograph, owner, name, where } = each
  const [begin, end] = partsOf(each)
  const facts = factsOf(each, number, surveyDate, words)
  const flags = flagsOf(each, words)
  const verdict = owner?.verdict === 'fail' || owner?.verdict === 'advisory' ? owner.verdict : undefined
  return (
    <GridListItem id={id} value={each} textValue={[name, where, ...(verdict ? [said.finding[verdict]] : []), facts, ...flags].join('. ')} className={style.cell ?? ''}>
      <div className={style.picture} data-left-out={!photograph.isPrinted} onDoubleClick={() => onOpen(id)}>
        <MarkedPicture key={photograph.sha256} photograph={photograph} size="small" alt="" fit="contain" className={style.image} />
        {!isFrozen && <span className={style.check} aria-hidden="true"><svg viewBox="0 0 16 16"><path d="M3 8.5 6.5 12 13 4.5" /></svg></span>}
        {!isFrozen && <Button slot="drag" className={style.drag ?? ''} aria-label={say(said.drag, { name }, 'metric')}><svg viewBox="0 0 16 16" aria-hidden="true"><path d="M5 3v10M8 3v10M11 3v10" /></svg></Button>}
        {/* A plain button: a row that comes into sight is drawn within a frame. Its press is not the cell's. */}
        <button type="button" className={style.open} aria-label={say(said.open, { name }, 'metric')} onPointerDown={(event) => event.stopPropagation()} onMouseDown={(event) => event.stopPropagation()} onClick={(event) => { event.stopPropagation(); onOpen(id) }}>
          <svg viewBox="0 0 16 16" aria-hidden="true"><path d="M10.2 10.2 14 14M11.5 6.8a4.7 4.7 0 1 1-9.4 0 4.7 4.7 0 0 1 9.4 0ZM6.8 4.8v4M4.8 6.8h4" /></svg>
        </button>
      </div>
      {isWriting
        ? <CaptionEditor caption={photograph.caption} onWritten={(caption) => onWritten(id, caption)} />
        : (
          <div className={style.words}>
            <span className={style.name} onDoubleClick={isFrozen ? undefined : () => onWrite(id)}><span className={style.begin}>{begin}</span><span className={style.end}>{end}</span></span>
            <span className={style.where}>{verdict && <span className={style.finding} data-verdict={verdict}>{said.finding[verdict]}</span>}{where}</span>
            <span className={style.facts}>{facts}</span>
            {flags.length > 0 && <span className={style.flags}>{flags.join(' · ')}</span>}
          </div>
        )}
    </GridListItem>
  )
})
PictureCell.displayName = 'PictureCell'
