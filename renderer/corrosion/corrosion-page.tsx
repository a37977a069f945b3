import { useMemo, useRef, useState } from 'react'
import type { OutputOf } from '../../shared-logic/contract/contract'
import type { SpotView } from '../../shared-logic/drawings/corrosion/rig-view'
import { say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { EmptyState } from '../parts/empty-state'
import { LinkButton } from '../parts/link-button'
import { LoadProblem } from '../parts/load-problem'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { useWords } from '../parts/use-words'
import { CorrosionNews } from './corrosion-news'
import style from './corrosion-page.module.css'
import { numberedTrails } from './numbered-trails'
import { SpotList } from './spot-list'
import { SpotsDrawing } from './spots-drawing'
import { TrailPanel } from './trail-panel'

type History = OutputOf<'corrosion.history'>

const NoSpots = ({ rigId, surveys }: { readonly rigId: string; readonly surveys: History['surveys'] }) => {
  const { empty } = useWords().screens.corrosion
  const looked = surveys.at(-1)
  return (
    <EmptyState title={empty.title} actions={<><LinkButton to={`/rigs/${rigId}/survey`} kind="primary">{empty.start}</LinkButton><LinkButton to={`/rigs/${rigId}`}>{empty.back}</LinkButton></>}>
      {looked && <p>{say(empty.looked, { date: { date: looked.date } }, 'metric')}</p>}
      <p>{empty.text}</p>
      <p>{empty.next}</p>
    </EmptyState>
  )
}

const Spots = ({ history: { rig, surveys } }: { readonly history: History }) => {
  const spots = useMemo(() => numberedTrails(surveys, { trailer: rig.trailer }), [surveys, rig])
  const [view, setView] = useState<SpotView>('plan')
  const [open, setOpen] = useState<number>()
  const opener = useRef(new Map<number, HTMLButtonElement>())
  const shown = spots.find(({ number }) => number === open)
  const close = (): void => {
    setOpen(undefined)
    if (open !== undefined) opener.current.get(open)?.focus()
  }
  return (
    <div className={style.page}>
      <CorrosionNews spots={spots} surveys={surveys} />
      <div className={style.board} data-view={view}>
        <SpotsDrawing rig={rig} spots={spots} view={view} onView={setView} open={open} onOpen={setOpen} />
        <SpotList spots={spots} open={open} onOpen={setOpen} opener={opener} />
      </div>
      {shown && <TrailPanel spot={shown} surveys={surveys} onClose={close} />}
    </div>
  )
}

/** The corrosion of one rig over all its surveys: where it is, how it is graded, how it grows. */
export const CorrosionPage = ({ rigId }: { readonly rigId: string }) => {
  const { corrosion: said } = useWords().screens
  const history = useQueryOf('corrosion.history', { rigId })
  if (!history.data) {
    return <Page title={said.title} isTitleHidden={!history.error}>{history.error ? <LoadProblem error={history.error} onRetry={() => { void history.refetch() }} /> : <Waiting />}</Page>
  }
  const { rig, surveys } = history.data
  const hasSpots = surveys.some(({ places }) => places.some(({ spots }) => spots.length > 0))
  return (
    <Page title={said.title} subtitle={say(said.of, { rig: rig.name }, 'metric')} crumbs={[{ label: rig.name, to: `/rigs/${rigId}` }, { label: said.title, to: `/rigs/${rigId}/corrosion` }]}>
      {hasSpots ? <Spots history={history.data} /> : <NoSpots rigId={rigId} surveys={surveys} />}
    </Page>
  )
}
