import { reportAddress } from '../../shared-logic/contract/contract'
import type { ReportRow, Survey } from '../../shared-logic/survey/records'
import { sayBytes } from '../../shared-logic/words/say-bytes'
import { say, sayDate } from '../../shared-logic/words/say'
import { buttonClass } from '../parts/button'
import { TalliesLine } from '../parts/tallies-line'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import style from './report-page.module.css'

interface IssuedReportProps {
  readonly report: ReportRow
  readonly survey: Survey
}

/** The newest revision: verdict, tallies, and the file to open or save. */
export const IssuedReport = ({ report, survey }: IssuedReportProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.reportPage
  const address = reportAddress(report.id)
  return (
    <section aria-label={say(said.revision, { revision: report.revision }, units)} className={style.issued}>
      <div className={style.verdict}>
        <VerdictMark verdict={report.verdict} isLarge />
        {survey.status === 'issued' && <TalliesLine tallies={survey.summary.tallies} />}
      </div>
      <p>
        {say(said.revision, { revision: report.revision }, units)}. {say(said.issued, { date: sayDate(report.issuedAt) }, units)}.
      </p>
      {report.harmSaid !== undefined && <p className={style.harm}>{report.harmSaid}</p>}
      <div className={style.acts}>
        <a href={address} target="_blank" rel="noreferrer" className={buttonClass('primary')}>{said.open}</a>
        <a href={address} download={`${report.number}-${report.revision}.pdf`} className={buttonClass('plain')}>{said.download}</a>
        <span className={style.soft}>{say(said.size, { size: sayBytes(report.pdfByteCount) }, units)}</span>
      </div>
      <dl className={style.facts}>
        {survey.place !== undefined && <div><dt>{said.place}</dt><dd>{survey.place}</dd></div>}
        <div><dt>{said.ruleBook}</dt><dd>{words.ruleBooks[survey.ruleBook]}</dd></div>
        <div><dt>{said.fingerprint}</dt><dd className={style.hash}>{report.pdfSha256}</dd></div>
      </dl>
    </section>
  )
}
