import type { SumsLine, SumsSection } from '../../shared-logic/words/sums/section'
import { sayPath } from '../../shared-logic/words/sums/section'
import { say } from '../../shared-logic/words/say'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import { fieldRoute, goToField } from './go-to-field'
import style from './sums-lines.module.css'
import { Button } from 'react-aria-components'
import { useLocation } from 'wouter'

/** 'Waits for …': each field a step to where it is typed, here or on the rig's own form. */
export const WaitsFor = ({ fields, rigId }: { readonly fields: readonly string[]; readonly rigId: string }) => {
  const words = useWords()
  const [, navigate] = useLocation()
  const [before = '', after = ''] = words.screens.sums.waitsFor.split('{fields}')
  const go = (path: string): void => {
    if (!goToField(path)) navigate(fieldRoute(rigId))
  }
  return (
    <p className={style.waits}>
      <VerdictMark verdict="not seen" isWordHidden />
      <span>
        {before}
        {fields.map((path, index) => (
          <span key={path}>{index > 0 && ', '}<Button className={style.step ?? ''} onPress={() => go(path)}>{sayPath(words, path)}</Button></span>
        ))}
        {after}
      </span>
    </p>
  )
}

const Line = ({ line, rigId }: { readonly line: SumsLine; readonly rigId: string }) => {
  const { verdicts } = useWords()
  if (line.waitsFor) return <li><WaitsFor fields={line.waitsFor} rigId={rigId} /></li>
  if (line.verdict === undefined) return <li className={style.plain}>{line.text}</li>
  return <li className={style.judged} title={verdicts[line.verdict]}><VerdictMark verdict={line.verdict} /><span>{line.text}</span></li>
}

export const SumsLines = ({ lines, rigId }: { readonly lines: readonly SumsLine[]; readonly rigId: string }) =>
  lines.length === 0 ? null : <ul className={style.lines}>{lines.map((line) => <Line key={line.text} line={line} rigId={rigId} />)}</ul>

/** Formula in words, sources and cautions of a part: shut until asked for. */
export const HowWorkedOut = ({ section: { formula, sources, cautions } }: { readonly section: Pick<SumsSection, 'formula' | 'sources' | 'cautions'> }) => {
  const { sums } = useWords().screens
  return (
    <>
      {cautions.map((caution) => <p key={caution} className={style.caution}>{caution}</p>)}
      <details className={style.how}>
        <summary>{sums.howTitle}</summary>
        <p>{formula}</p>
        {sources.map((source) => <p key={source} className={style.source}>{say(sums.source, { source }, 'metric')}</p>)}
      </details>
    </>
  )
}
