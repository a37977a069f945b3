import type { HandoverView } from './handover-view'
import style from './notices.module.css'
import { countOf, fill, usePhoneWords, type PhoneWords } from './use-phone-words'

interface NoticesProps {
  readonly view: HandoverView
}

/** Once is nothing to speak of. */
const soonSaid = 2

/** What stands between the phone and the desktop, each in a sentence with what to do about it. */
export const Notices = ({ view }: NoticesProps) => {
  const { notices: said } = usePhoneWords()
  const left = view.pictures.filter(({ state }) => state === 'waiting').length
  const breaking = view.pictures.filter(({ state, tries }) => state === 'waiting' && tries >= soonSaid).length
  const onlyHere = view.pictures.filter(({ state, isOnlyHere }) => isOnlyHere === true && state === 'waiting').length
  return (
    <output className={style.notices}>
      <LinkNotice view={view} left={left} />
      {view.link.state === 'open' && view.putOff !== undefined && left > 0 && <p className={style.notice}>{fill(said.putOff, { sentence: view.putOff })}</p>}
      {view.link.state === 'open' && view.putOff === undefined && breaking > 0 && <p className={style.notice}>{countOf(said.breaking, breaking)}</p>}
      {view.link.state !== 'no code' && !view.isLasting && <p className={style.notice}>{said.onlyThisPage}</p>}
      {view.isLasting && onlyHere > 0 && <p className={style.notice}>{countOf(said.storageFull, onlyHere)}</p>}
    </output>
  )
}

/** What the link's state means, a line each; nothing where all is well. */
const linesOf = ({ link, isPaired }: HandoverView, { notices: said }: PhoneWords): readonly string[] => {
  if (link.state === 'silent') return [isPaired ? said.silent : said.waitingForDesktop]
  if (link.state === 'no code') return [said.noCode]
  if (link.state === 'not let in') return [link.sentence ?? said.notLetIn, said.newCode]
  if (link.state === 'closed') return [link.sentence ?? said[link.why], ...(link.why === 'elsewhere' ? [] : [said.newCode])]
  return []
}

const LinkNotice = ({ view, left }: NoticesProps & { readonly left: number }) => {
  const words = usePhoneWords()
  const lines = linesOf(view, words)
  if (lines.length === 0) return null
  const isOver = view.link.state !== 'silent'
  return (
    <div className={isOver ? style.stopped : style.notice}>
      {lines.map((line) => <p key={line}>{line}</p>)}
      {left > 0 && <p>{countOf(isOver ? words.notices.notArrived : words.notices.waitHere, left)}</p>}
    </div>
  )
}
