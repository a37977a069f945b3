import { useMemo } from 'react'
import { catalogue, catalogueVersion } from '../../shared-logic/checks/catalogue'
import { assess, summarize, summarizeByStation, type Assessed } from '../../shared-logic/survey/assess'
import { factsOf } from '../../shared-logic/survey/facts'
import type { Survey } from '../../shared-logic/survey/records'
import { readingsOf } from '../../shared-logic/words/check-sentences'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import { SmallPhotographs } from '../review/small-photographs'
import { nameOf, reasonOf } from '../survey/check-names'
import { photographsAt } from '../survey/survey-cache'
import { usePrintNumbers } from '../survey/use-print-numbers'
import style from './survey-as-issued.module.css'

interface SurveyAsIssuedProps {
  readonly survey: Survey
}

/** The survey to read: every check with what was recorded and its verdict, station by station. Nothing can be changed here. */
export const SurveyAsIssued = ({ survey }: SurveyAsIssuedProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.reportPage
  const assessed = useMemo(() => assess(catalogue, factsOf(survey)), [survey])
  return (
    <section aria-labelledby="survey" className={style.survey}>
      <h2 id="survey">{survey.status === 'issued' ? said.survey : said.surveyUnderWay}</h2>
      {survey.catalogueVersion !== catalogueVersion && <p className={style.soft}>{say(said.olderCatalogue, { made: survey.catalogueVersion, now: catalogueVersion }, units)}</p>}
      {summarizeByStation(assessed).map(({ station }) => (
        <details key={station} className={style.station}>
          <summary className={style.summary}>{words.stations[station]}<StationMarks assessed={assessed.filter((each) => each.check.station === station)} /></summary>
          <StationRows assessed={assessed.filter((each) => each.check.station === station)} survey={survey} />
        </details>
      ))}
    </section>
  )
}

interface StationRowsProps {
  readonly assessed: readonly Assessed[]
  readonly survey: Survey
}

/** The worst of what was seen at a station, and how much of it was not seen. */
const StationMarks = ({ assessed }: { readonly assessed: readonly Assessed[] }) => {
  const { walk } = useWords().screens.survey
  const units = useUnits()
  const { verdict, tallies } = summarize(assessed)
  const unseen = tallies['not seen']
  return (
    <span className={style.marks}>
      {unseen > 0 && <span className={style.soft}>{say(walk.notSeenCount, { count: unseen }, units)}</span>}
      {verdict !== 'not seen' && <VerdictMark verdict={verdict} />}
    </span>
  )
}

const StationRows = ({ assessed, survey }: StationRowsProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.reportPage
  const numbers = usePrintNumbers(survey)
  return (
    <table className={style.rows}>
      <thead><tr><th scope="col">{said.check}</th><th scope="col">{said.recorded}</th><th scope="col">{said.verdict}</th></tr></thead>
      <tbody>
        {assessed.map((each) => {
          const { title, place } = nameOf(words, each, survey)
          const photographs = photographsAt(survey, { checkId: each.check.id, position: each.position })
          const readings = each.answer === undefined ? [] : readingsOf(words, each.check, each.answer.values, units)
          return (
            <tr key={each.key}>
              <th scope="row">{title}{place !== '' && <span className={style.soft}> · {place}</span>}</th>
              <td>
                {each.answer?.aside?.reason ?? (readings.length > 0 ? readings.map((reading) => reading.value).join('; ') : reasonOf(words, each, units))}
                {photographs.length > 0 && <SmallPhotographs photographs={photographs} zone={survey.zone} numbers={numbers} />}
              </td>
              <td><VerdictMark verdict={each.verdict} /></td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
