import { reportAddress } from '../../shared-logic/contract/contract'
import type { ReportRow } from '../../shared-logic/survey/records'
import { say, sayDate } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import style from './report-page.module.css'

interface EarlierRevisionsProps {
  /** Newest first. */
  readonly reports: readonly ReportRow[]
}

/** What was issued before: each stays as it was. */
export const EarlierRevisions = ({ reports }: EarlierRevisionsProps) => {
  const said = useWords().screens.reportPage
  const units = useUnits()
  if (reports.length === 0) return null
  return (
    <section aria-labelledby="earlier" className={style.section}>
      <h2 id="earlier">{said.older}</h2>
      <ul>
        {reports.map((report) => (
          <li key={report.id} className={style.earlier}>
            <a href={reportAddress(report.id)} target="_blank" rel="noreferrer" className={style.tall}>
              {say(said.olderLine, { revision: report.revision, date: sayDate(report.issuedAt) }, units)}
            </a>
            <VerdictMark verdict={report.verdict} />
          </li>
        ))}
      </ul>
    </section>
  )
}
