import type { Assessed } from '../../shared-logic/survey/assess'
import type { Survey } from '../../shared-logic/survey/records'
import { useWords } from '../parts/use-words'
import { nameOf } from './check-names'
import { SurveyCamera } from './survey-camera'
import type { Photographs } from './use-photographs'
import { placeOf } from './use-walk'

interface CheckCameraProps {
  readonly survey: Survey
  readonly assessed: Assessed
  readonly photographs: Photographs
  readonly onClose: () => void
}

/** The camera at the check that is open: every picture goes straight into it. */
export const CheckCamera = ({ survey, assessed, photographs, onClose }: CheckCameraProps) => {
  const { title, place } = nameOf(useWords(), assessed, survey)
  return <SurveyCamera survey={survey} name={place === '' ? title : `${title}, ${place}`} at={placeOf(assessed)} photographs={photographs} onClose={onClose} />
}
