import type { Assessed } from '../../shared-logic/survey/assess'
import { findingsOf } from '../../shared-logic/survey/findings'
import type { Survey } from '../../shared-logic/survey/records'
import { becauseOf, consequenceOf, remedyOf } from '../../shared-logic/words/check-sentences'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import { photographsAt } from '../survey/survey-cache'
import { CheckLink } from './check-link'
import { SmallPhotographs } from './small-photographs'
import style from './review.module.css'

interface FindingsProps {
  readonly assessed: readonly Assessed[]
  readonly survey: Survey
}

/** Every advisory and fail, gravest first: what, why, what comes of it, what to do and by when, with its photographs. */
export const Findings = ({ assessed, survey }: FindingsProps) => {
  const { review } = useWords().screens.survey
  const findings = findingsOf(assessed)
  return (
    <section aria-labelledby="findings" className={style.section}>
      <h2 id="findings">{review.findings}{findings.length > 0 && <span className={style.count}> {findings.length}</span>}</h2>
      {findings.length === 0 && <p className={style.soft}>{review.noFindings}</p>}
      <ol className={style.findings}>
        {findings.map((each, index) => <li key={each.key} className={style.finding}><Finding finding={each} number={index + 1} survey={survey} /></li>)}
      </ol>
    </section>
  )
}

interface FindingProps {
  readonly finding: Assessed
  readonly number: number
  readonly survey: Survey
}

const Finding = ({ finding, number, survey }: FindingProps) => {
  const words = useWords()
  const units = useUnits()
  const { review } = words.screens.survey
  const photographs = photographsAt(survey, { checkId: finding.check.id, position: finding.position })
  const remedy = remedyOf(words, finding, units)
  const { overrule, note } = finding.answer ?? {}
  return (
    <>
      <span className={style.number}>{number}</span>
      <div className={style.said}>
        <h3 className={style.name}><CheckLink assessed={finding} survey={survey} /></h3>
        <p>{becauseOf(words, finding, units) ?? overrule?.reason}</p>
        {overrule !== undefined && finding.judged !== undefined && <p>{say(review.overruled, { judged: words.verdicts[finding.judged], reason: overrule.reason }, units)}</p>}
        <p className={style.soft}>{consequenceOf(words, finding)}</p>
        {remedy !== undefined && <p>{remedy}</p>}
        {note !== undefined && <p className={style.note}>{note}</p>}
        {photographs.length > 0 && <SmallPhotographs photographs={photographs} zone={survey.zone} />}
        {photographs.length === 0 && finding.check.photograph === true && <p className={style.soft}>{review.wantsPhotograph}</p>}
      </div>
      <div className={style.weight}>
        <VerdictMark verdict={finding.verdict} />
        {finding.by !== undefined && <span className={style.soft}>{words.byWhens[finding.by]}</span>}
      </div>
    </>
  )
}
