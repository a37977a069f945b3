import { summarizeByStation, type Assessed } from '../../shared-logic/survey/assess'
import { verdicts } from '../../shared-logic/survey/verdict'
import { useWords } from '../parts/use-words'
import { VerdictShape } from '../parts/verdict-mark'
import style from './station-table.module.css'

interface StationTableProps {
  readonly assessed: readonly Assessed[]
}

/** The tallies station by station. Zeros stay faint, so that what is there stands out. */
export const StationTable = ({ assessed }: StationTableProps) => {
  const words = useWords()
  const { review } = words.screens.survey
  return (
    <table className={style.table}>
      <caption>{review.byStation}</caption>
      <thead>
        <tr>
          <th scope="col">{review.station}</th>
          {verdicts.map((verdict) => (
            <th key={verdict} scope="col" title={words.verdicts[verdict]}>
              <VerdictShape verdict={verdict} size={13} />
              <span className="visually-hidden">{words.verdicts[verdict]}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {summarizeByStation(assessed).map(({ station, summary }) => (
          <tr key={station}>
            <th scope="row">{words.stations[station]}</th>
            {verdicts.map((verdict) => <td key={verdict} data-none={summary.tallies[verdict] === 0}>{summary.tallies[verdict]}</td>)}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
