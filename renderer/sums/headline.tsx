import { sayReserve } from '../../shared-logic/drawings/limit-bars'
import type { Sums } from '../../shared-logic/sums/sums'
import { formatQuantity } from '../../shared-logic/units/convert'
import { measured, type UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import style from './headline.module.css'
import { shownShare } from './shown-share'

/** As reckoned; where that cannot be, as the newest weighing had it, which the verdict beside it then rests on too. */
const sayCouplingLoad = ({ lever, weighed, standingFrom }: Sums['balance'], said: Words['screens']['sums'], units: UnitSystem): string => {
  const newest = standingFrom === 'weighed' ? weighed.find(({ share }) => share !== undefined) : undefined
  const { share, couplingKg } = lever ?? newest ?? {}
  if (share === undefined || couplingKg === undefined) return said.unknown
  return say(lever ? said.couplingLoad : said.couplingLoadWeighed, { share: shownShare(share), load: measured('mass', couplingKg) }, units)
}

/** The three figures a person comes for, with what they mean; they follow a drag. */
export const Headline = ({ sums: { balance, load } }: { readonly sums: Sums }) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.sums
  const { standing, verdict, bands, smallestStaticKg } = balance
  const gaps = { passFrom: shownShare(bands.passFrom), passTo: shownShare(bands.passTo), noticeFrom: shownShare(bands.noticeFrom), noticeTo: shownShare(bands.noticeTo), failBelow: shownShare(bands.failBelow), limit: measured('mass', smallestStaticKg ?? 0) }
  const tightest = load.lines.find(({ limit }) => limit.id === load.governing)
  return (
    <dl className={style.figures}>
      <div>
        <dt>{said.share}</dt>
        <dd className={style.figure}>{sayCouplingLoad(balance, said, units)}</dd>
        <dd className={style.meaning}><VerdictMark verdict={verdict ?? 'not seen'} /><span>{standing && say(words.sums.balance.standings[standing], gaps, units)}</span></dd>
      </div>
      <div>
        <dt>{said.tightest}</dt>
        <dd className={style.figure}>{tightest ? words.sums.limits[tightest.limit.id] : said.unknown}</dd>
        <dd className={style.meaning}><VerdictMark verdict={tightest?.verdict ?? 'not seen'} /><span>{tightest && sayReserve(tightest, words, units)}</span></dd>
      </div>
      <div>
        <dt>{said.total}</dt>
        <dd className={style.figure}>{load.total.massKg === undefined ? say(words.sums.drawing.atLeast, { low: measured('mass', load.total.lowKg) }, units) : formatQuantity('mass', load.total.massKg, units)}</dd>
      </div>
    </dl>
  )
}
