import type { CorrosionSurvey } from '../../shared-logic/survey/records'
import type { TrailStanding } from '../../shared-logic/corrosion/trails'
import { say } from '../../shared-logic/words/say'
import { useWords } from '../parts/use-words'
import style from './corrosion-page.module.css'
import type { NumberedTrail } from './numbered-trails'

interface CorrosionNewsProps {
  readonly spots: readonly NumberedTrail[]
  readonly surveys: readonly CorrosionSurvey[]
}

/** What is different since the survey before: grown, new, come back, repaired, not looked at again; and whether a survey is still under way. */
export const CorrosionNews = ({ spots, surveys }: CorrosionNewsProps) => {
  const { summary: said } = useWords().screens.corrosion
  const named = (template: string, ...standings: readonly TrailStanding[]): string[] => {
    const places = spots.filter(({ trail }) => standings.includes(trail.standing)).map(({ number, trail }) => `${number} ${trail.last.spot.place}`)
    return places.length === 0 ? [] : [say(template, { places: places.join('; ') }, 'metric')]
  }
  const underWay = surveys.findLast(({ status }) => status === 'under way')
  const lines = [
    spots.length === 1 ? said.oneSpot : say(said.spots, { count: spots.length }, 'metric'),
    ...named(said.grown, 'grown'), ...named(said.fresh, 'new'), ...named(said.back, 'come back'), ...named(said.healed, 'healed'), ...named(said.lost, 'not looked at again'),
    ...(underWay ? [say(said.underWay, { date: { date: underWay.date } }, 'metric')] : []),
  ]
  return <ul className={style.news}>{lines.map((line) => <li key={line}>{line}</li>)}</ul>
}
