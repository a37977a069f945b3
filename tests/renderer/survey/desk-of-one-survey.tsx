import { placeKey } from '../../../shared-logic/survey/keys'
import type { Photograph, Survey } from '../../../shared-logic/survey/records'
import { SurveyWalk } from '../../../renderer/survey/survey-walk'
import { drawWithDesk, type Answers } from '../window-with-desk'

const surveyId = '0197b000-0000-7000-8000-000000000001'
const summary: Survey['summary'] = { verdict: 'not seen', tallies: { pass: 0, advisory: 0, fail: 0, 'not seen': 0, 'not applicable': 0 }, asked: 0, open: 0 }

/** A tandem with oil-bath hubs, surveyed by the rules of the United States, the surveyor standing where told. */
export const surveyAt = (checkId: string, position: string): Survey => ({
  id: surveyId, rigId: '0197a000-0000-7000-8000-000000000001', rigName: 'Tandem', purpose: 'purchase', surveyDate: '2026-11-20', status: 'under way', summary, revision: 0,
  ruleBook: 'us', catalogueVersion: 'test', zone: 'UTC', rig: { name: 'Tandem', trailer: { axleCount: 2, hubLubrication: 'oil bath', brakes: 'surge', brakeForm: 'disc' } },
  here: { checkId, position }, answers: [], photographs: [], reports: [],
})

interface KeptAnswer {
  readonly place: string
  readonly answer: unknown
}

export const photographOf = (number: number, fileName: string, checkId?: string, position?: string): Photograph => ({
  id: `0197c000-0000-7000-8000-${String(number).padStart(12, '0')}`, sha256: String(number).padStart(64, '0'), checkId, position, caption: '', fileName, format: 'jpeg', byteCount: 10, widthPx: 4000, heightPx: 3000, addedAt: '2026-11-20T10:00:00Z', source: 'file', quarterTurns: 0, isPrinted: true,
})

/** Draws the walk over a desk that keeps what it is given and tells it in order. */
export const drawWalk = (checkId: string, position: string, more: Answers = {}) => {
  const kept: KeptAnswer[] = []
  const drawn = drawWithDesk(
    <SurveyWalk surveyId={surveyId} />,
    {
      'surveys.get': () => surveyAt(checkId, position),
      'surveys.standAt': () => ({}),
      'surveys.answer': (input) => {
        kept.push({ place: placeKey(input.checkId, input.position), answer: input.answer })
        return { summary }
      },
      'surveys.clear': (input) => {
        kept.push({ place: placeKey(input.checkId, input.position), answer: undefined })
        return { summary }
      },
      ...more,
    },
    { units: 'metric' },
  )
  return { ...drawn, kept }
}
