import { lazy, Suspense, useMemo } from 'react'
import type { Assessed } from '../../shared-logic/survey/assess'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { useWords } from '../parts/use-words'
import { nameOf } from './check-names'
import { ArrivalNews } from './quality-news'
import type { Photographs } from './use-photographs'
import { placeOf } from './use-walk'

const CameraView = lazy(async () => ({ default: (await import('../camera/camera-view')).CameraView }))

interface CheckCameraProps {
  readonly survey: Survey
  readonly assessed: Assessed
  readonly photographs: Photographs
  readonly onClose: () => void
}

/** It is open already: the next press of the shutter takes the place of the one before. */
const stay = (): void => undefined

/** The camera at the check that is open: every picture goes straight into it. */
export const CheckCamera = ({ survey, assessed, photographs, onClose }: CheckCameraProps) => {
  const { title, place } = nameOf(useWords(), assessed, survey)
  const standing = useMemo(() => new Set(survey.photographs.map(({ id }) => id)), [survey.photographs])
  const takeBack = async (photographId: string): Promise<void> => {
    const photograph = survey.photographs.find(({ id }) => id === photographId)
    if (photograph) await photographs.takeBack(photograph)
  }
  const isHere = ({ checkId, position }: Photograph): boolean => checkId === assessed.check.id && position === assessed.position
  return (
    <Suspense fallback={null}>
      <CameraView
        place={place === '' ? title : `${title}, ${place}`} standing={standing} news={<ArrivalNews survey={survey} photographs={photographs} onCamera={stay} canTakeAgain={isHere} />} onClose={onClose}
        onPicture={(file) => photographs.take(file, placeOf(assessed)).then((photograph) => photograph?.id)} onTakeBack={takeBack}
      />
    </Suspense>
  )
}
