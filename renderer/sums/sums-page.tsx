import { memo, useDeferredValue, useMemo } from 'react'
import { Button as AriaButton } from 'react-aria-components'
import { Link } from 'wouter'
import { sumsOf } from '../../shared-logic/sums/sums'
import type { RigRow } from '../../shared-logic/survey/records'
import { bandsOf, type SumsSettings } from '../../shared-logic/sums/settings'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { sentenceOf } from '../client/sentence-of'
import { Button } from '../parts/button'
import { classNames } from '../parts/class-names'
import { LeaveGuard } from '../parts/leave-guard'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { LoadProblem, isGone } from '../parts/load-problem'
import { useSettings } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { BalancePart } from './balance-part'
import { CouplingPart } from './coupling-part'
import { Headline } from './headline'
import { LoadPart } from './load-part'
import type { PartId } from './part'
import { SideBoard } from './side-board'
import style from './sums-page.module.css'
import { TieDownPart } from './tie-down-part'
import { useSumsRig, type SumsRig } from './use-sums-rig'
import { useWhenStill } from './use-when-still'

const partIds: readonly PartId[] = ['balance', 'load', 'tie-down', 'coupling']

const goTo = (id: PartId): void => {
  const heading = document.getElementById(`part-${id}`)
  heading?.scrollIntoView({ block: 'start' })
  heading?.focus({ preventScroll: true })
}

const Parts = memo(() => {
  const { sums: said } = useWords().screens
  return (
    <nav aria-label={said.parts}>
      <ul className={style.parts}>{partIds.map((id) => <li key={id}><AriaButton className={style.jump ?? ''} onPress={() => goTo(id)}>{said.sheets[id]}</AriaButton></li>)}</ul>
    </nav>
  )
})
Parts.displayName = 'Parts'

/** Whether all is kept; what is not, and why. */
const Keeping = ({ sheet: { keeping, fields: { held }, undo } }: { readonly sheet: SumsRig }) => {
  const words = useWords()
  const { sums: said } = words.screens
  return (
    <div className={style.keeping}>
      <output>
        {held.size > 0 ? say(held.size === 1 ? said.openProblems.one : said.openProblems.many, { count: held.size }, 'metric') : keeping.isSaving ? said.saving : keeping.error ? say(said.notSaved, { why: sentenceOf(words, keeping.error) }, 'metric') : keeping.isSaved ? said.saved : ''}
      </output>
      {keeping.error !== null && keeping.error !== undefined && <Button onPress={keeping.tryAgain}>{said.tryAgain}</Button>}
      {undo && <Button kind="quiet" onPress={undo}>{said.undo}</Button>}
    </div>
  )
}

/** By which margins all this is judged, and the way to set others. */
const Margins = memo(({ wanted }: { readonly wanted: SumsSettings }) => {
  const { sums: said } = useWords().screens
  const { ruleBook, units } = useSettings()
  const { passFrom, passTo } = bandsOf(wanted, ruleBook)
  return <p className={style.margins}>{say(said.judgedBy, { reserve: measured('ratio', wanted.reserve), from: measured('ratio', passFrom), to: measured('ratio', passTo) }, units)} <Link to="/settings" className={style.jump ?? ''}>{said.toMargins}</Link></p>
})
Margins.displayName = 'Margins'

const SumsSheet = ({ row, today }: { readonly row: RigRow; readonly today: string }) => {
  const words = useWords()
  const { ruleBook, sums: wanted } = useSettings()
  const said = words.screens.sums
  const sheet = useSumsRig(row.rig, row.id, today)
  const { fields } = sheet
  const crumbs = useMemo(() => [{ label: row.rig.name, to: `/rigs/${row.id}` }], [row])
  const sums = useMemo(() => sumsOf(sheet.rig, ruleBook, wanted), [sheet.rig, ruleBook, wanted])
  // While something is dragged, drawing and headline follow at once, and the sheet below whenever the hand rests: drawing it anew takes longer than a frame.
  const [shownRig, shown] = useDeferredValue(useWhenStill(useMemo(() => [sheet.rig, sums] as const, [sheet.rig, sums]), sheet.isDragging))
  return (
    <Page title={say(said.title, { rig: row.rig.name }, 'metric')} subtitle={said.intro} crumbs={crumbs}>
      <LeaveGuard isHeld={fields.held.size > 0 || (sheet.keeping.error !== null && sheet.keeping.error !== undefined)} />
      <SideBoard sheet={sheet} sums={sums} />
      <div className={style.top}>
        <Headline sums={sums} />
        <Margins wanted={wanted} />
      </div>
      <div className={style.bar}><Parts /><Keeping sheet={sheet} /></div>
      <div className={classNames(style.sheet, sheet.isDragging && style.dragged)}>
        <BalancePart sheet={fields} sums={shown} rigId={row.id} />
        <LoadPart sheet={fields} sums={shown} rigId={row.id} />
        <TieDownPart sheet={fields} rig={shownRig} rigId={row.id} />
        <CouplingPart sheet={fields} sums={shown} rigId={row.id} />
      </div>
    </Page>
  )
}

/** Load, balance, tie-down, coupling and brakes of one rig, worked out in the window from what is known of it. */
export const SumsPage = ({ rigId }: { readonly rigId: string }) => {
  const { rig: words, shell } = useWords().screens
  const row = useQueryOf('rigs.get', { rigId })
  const about = useQueryOf('yard.about', {})
  if (row.data && about.data) return <SumsSheet row={row.data} today={about.data.today} />
  const error = row.error ?? about.error
  return (
    <Page title={row.error ? (isGone(row.error) ? words.gone : words.notOpened) : shell.programName} isTitleHidden={!row.error}>
      {error ? <LoadProblem error={error} onRetry={() => { void row.refetch(); void about.refetch() }} /> : <Waiting />}
    </Page>
  )
}
