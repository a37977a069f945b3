import { useId, useState } from 'react'
import style from './check-list.module.css'
import type { ChecksReply } from './door'
import type { HandoverView } from './handover-view'
import type { CheckChosen } from './picture'
import { isCounted } from './tally'
import { useArrivalFocus } from './use-arrival-focus'
import { keyOfCheck } from './use-chosen'
import { countOf, fill, usePhoneWords } from './use-phone-words'

type Station = ChecksReply['stations'][number]
type Check = Station['checks'][number]

interface CheckListProps {
  /** The person turned to this list: the focus comes along. */
  readonly isArrival: boolean
  readonly view: HandoverView
  readonly chosen: CheckChosen | undefined
  /** Told the check's key; empty for no check. */
  readonly onChoose: (key: string) => void
}

/** Every word written must stand somewhere in the check, its place or its station. */
const isFound = (wanted: string, station: Station, { title, place }: Check): boolean => {
  const text = `${title} ${place} ${station.title}`.toLowerCase()
  return wanted.toLowerCase().split(/\s+/).every((word) => text.includes(word))
}

/** The checks by station, in the order of the walk. A station is unfolded to be chosen from; the finder unfolds what it finds. */
export const CheckList = ({ isArrival, view: { stations, pictures, link }, chosen, onChoose }: CheckListProps) => {
  const { checks: said } = usePhoneWords()
  const heading = useArrivalFocus(isArrival)
  const [show, setShow] = useState<'open' | 'all'>('open')
  const [wanted, setWanted] = useState('')
  const chosenKey = chosen === undefined ? '' : keyOfCheck(chosen)
  const isShown = (station: Station, check: Check): boolean =>
    (show === 'all' || check.isOpen || keyOfCheck(check) === chosenKey) && (wanted.trim() === '' || isFound(wanted.trim(), station, check))
  const listed = (stations ?? []).map((station) => ({ ...station, checks: station.checks.filter((check) => isShown(station, check)) })).filter(({ checks }) => checks.length > 0)
  const countAt = (check: Check): number => pictures.filter((picture) => isCounted(picture) && picture.place !== undefined && keyOfCheck(picture.place) === keyOfCheck(check)).length
  return (
    <form className={style.list} onSubmit={(event) => event.preventDefault()}>
      <h2 ref={heading} tabIndex={-1} className={style.heading}>{said.title}</h2>
      <div className={style.tools}>
        <label className={style.find}>
          <span>{said.find}</span>
          <input type="search" value={wanted} onChange={(event) => setWanted(event.currentTarget.value)} autoComplete="off" enterKeyHint="search" maxLength={80} />
        </label>
        <fieldset className={style.filter}>
          <legend className="visually-hidden">{said.filter}</legend>
          {(['open', 'all'] as const).map((each) => (
            <label key={each} className={style.side}>
              <input type="radio" name="show" className="visually-hidden" checked={show === each} onChange={() => setShow(each)} />
              {said[each]}
            </label>
          ))}
        </fieldset>
      </div>
      <CheckRow title={said.none} place={said.noneHint} isChosen={chosen === undefined} onChoose={() => onChoose('')} />
      {listed.map((station) => (
        <StationChecks key={station.title} station={station} isUnfolded={wanted.trim() !== ''} isFirst={station === listed[0]} holdsChosen={station.checks.some((check) => keyOfCheck(check) === chosenKey)}>
          {station.checks.map((check) => (
            <CheckRow
              key={keyOfCheck(check)} title={check.title} place={check.place} isChosen={keyOfCheck(check) === chosenKey} isDone={!check.isOpen} count={countAt(check)}
              onChoose={() => onChoose(keyOfCheck(check))}
            />
          ))}
        </StationChecks>
      ))}
      {stations === undefined && link.state === 'joining' && <p>{said.waiting}</p>}
      {stations !== undefined && listed.length === 0 && <p>{wanted.trim() === '' ? said.nothingOpen : said.nothingFound}</p>}
    </form>
  )
}

interface StationChecksProps {
  readonly station: Station
  readonly isUnfolded: boolean
  readonly isFirst: boolean
  readonly holdsChosen: boolean
  readonly children: React.ReactNode
}

const StationChecks = ({ station, isUnfolded, isFirst, holdsChosen, children }: StationChecksProps) => {
  const { checks: said } = usePhoneWords()
  const [isOpen, setOpen] = useState(isFirst || holdsChosen)
  // A check chosen through the finder: its station stays unfolded when the finder is emptied.
  const [heldChosen, setHeldChosen] = useState(holdsChosen)
  if (holdsChosen !== heldChosen) {
    setHeldChosen(holdsChosen)
    if (holdsChosen) setOpen(true)
  }
  const id = useId()
  const open = station.checks.filter((check) => check.isOpen).length
  const count = <span className={style.count}>{open === 0 ? said.stationDone : fill(said.stationOpen, { count: open })}</span>
  return (
    <section className={style.station} aria-labelledby={`${id}-title`}>
      <h3 className={style.name}>
        {isUnfolded
          ? <span className={style.fold}><span id={`${id}-title`}>{station.title}</span>{' '}{count}</span>
          : (
              <button type="button" className={style.fold} aria-expanded={isOpen} aria-controls={`${id}-list`} onClick={() => setOpen(!isOpen)}>
                <svg width="14" height="14" viewBox="0 0 14 14" aria-hidden="true" className={style.arrow}><path d="M4 1L11 7L4 13" fill="none" stroke="currentColor" strokeWidth="2" /></svg>
                <span id={`${id}-title`}>{station.title}</span>{' '}
                {count}
              </button>
            )}
      </h3>
      <div id={`${id}-list`} className={style.rows}>{(isOpen || isUnfolded) && children}</div>
    </section>
  )
}

interface CheckRowProps {
  readonly title: string
  readonly place: string
  readonly isChosen: boolean
  readonly isDone?: boolean
  readonly count?: number
  readonly onChoose: () => void
}

const CheckRow = ({ title, place, isChosen, isDone = false, count = 0, onChoose }: CheckRowProps) => {
  const { checks: said } = usePhoneWords()
  return (
    <label className={style.row}>
      <input type="radio" name="check" className="visually-hidden" checked={isChosen} onChange={onChoose} />
      <span className={style.dot} aria-hidden="true" />
      <span className={style.words}>
        <span>{title}</span>{' '}
        {place !== '' && <span className={style.place}>{place}</span>}
      </span>{' '}
      <span className={style.aside}>
        {count > 0 && <span>{countOf(said.pictures, count)}</span>}{' '}
        {isDone && <span>{said.checkDone}</span>}
      </span>
    </label>
  )
}
