import { useState } from 'react'
import type { RigRow as Row } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { LinkButton } from '../parts/link-button'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { RefusalNotice } from '../parts/refusal-notice'
import { SearchField } from '../parts/search-field'
import { useWords } from '../parts/use-words'
import { EmptyYard } from './empty-yard'
import { RigRow } from './rig-row'
import { useSettled } from './use-settled'
import style from './yard-page.module.css'

const pageLength = 50

interface PagesProps {
  readonly offset: number
  readonly total: number
  readonly onOffset: (offset: number) => void
}

const Pages = ({ offset, total, onOffset }: PagesProps) => {
  const { yard } = useWords().screens
  if (total <= pageLength) return null
  return (
    <nav className={style.pages} aria-label={yard.rigs}>
      <Button isDisabled={offset === 0} onPress={() => onOffset(Math.max(0, offset - pageLength))}>{yard.earlier}</Button>
      <span>{say(yard.shown, { from: offset + 1, to: Math.min(offset + pageLength, total), total }, 'metric')}</span>
      <Button isDisabled={offset + pageLength >= total} onPress={() => onOffset(offset + pageLength)}>{yard.later}</Button>
    </nav>
  )
}

const useCountSentence = (total: number, isSearch: boolean): string => {
  const { yard } = useWords().screens
  if (total === 1) return isSearch ? yard.oneFound : yard.oneRig
  return say(isSearch ? yard.countFound : yard.countOfRigs, { count: total }, 'metric')
}

interface RigListProps {
  readonly rigs: readonly Row[]
  readonly total: number
  readonly search: string
}

const RigList = ({ rigs, total, search }: RigListProps) => {
  const { yard } = useWords().screens
  const counted = useCountSentence(total, search !== '')
  return (
    <>
      <output className={style.count}>{total === 0 ? say(yard.none, { search }, 'metric') : counted}</output>
      {rigs.length > 0 && <ul className={style.list} aria-label={yard.rigs}>{rigs.map((row) => <RigRow key={row.id} row={row} />)}</ul>}
    </>
  )
}

/** The first screen: every rig of the yard. */
export const YardPage = () => {
  const { yard } = useWords().screens
  const [typed, setTyped] = useState('')
  const [offset, setOffset] = useState(0)
  const search = useSettled(typed.trim(), 150)
  const rigs = useQueryOf('rigs.list', { ...(search !== '' && { search }), offset, limit: pageLength }, { keepLast: true })
  const isEmpty = rigs.data?.total === 0 && search === '' && typed === ''
  const look = (words: string): void => {
    setTyped(words)
    setOffset(0)
  }
  if (!rigs.data && !rigs.error) return <Page title={yard.title}><Waiting /></Page>
  if (isEmpty) return <Page title={yard.title}><EmptyYard /></Page>
  return (
    <Page title={yard.title} actions={<LinkButton to="/rigs/new" kind="primary">{yard.register}</LinkButton>}>
      <div className={style.tools}><SearchField label={yard.search} clearLabel={yard.clearSearch} value={typed} onChange={look} /></div>
      <RefusalNotice error={rigs.error} onRetry={() => { void rigs.refetch() }} />
      {rigs.data && <RigList rigs={rigs.data.rigs} total={rigs.data.total} search={search} />}
      {rigs.data && <Pages offset={offset} total={rigs.data.total} onOffset={setOffset} />}
    </Page>
  )
}
