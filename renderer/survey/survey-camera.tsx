import { lazy, Suspense, useMemo } from 'react'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import type { CheckPlace } from './answer-queue'
import { ArrivalNews } from './quality-news'
import type { Photographs } from './use-photographs'

const CameraView = lazy(async () => ({ default: (await import('../camera/camera-view')).CameraView }))

interface SurveyCameraProps {
  readonly survey: Survey
  /** What is photographed: heads the view and begins the files' names. */
  readonly name: string
  /** Where the pictures go; without it to no check. */
  readonly at?: CheckPlace
  readonly photographs: Photographs
  readonly onClose: () => void
}

/** It is open already: the next press of the shutter takes the place of the one before. */
const stay = (): void => undefined

/** The camera, every picture going straight to where it belongs. */
export const SurveyCamera = ({ survey, name, at, photographs, onClose }: SurveyCameraProps) => {
  const standing = useMemo(() => new Set(survey.photographs.map(({ id }) => id)), [survey.photographs])
  const takeBack = async (photographId: string): Promise<void> => {
    const photograph = survey.photographs.find(({ id }) => id === photographId)
    if (photograph) await photographs.takeBack(photograph)
  }
  const isHere = ({ checkId, position }: Photograph): boolean => checkId === at?.checkId && position === at?.position
  return (
    <Suspense fallback={null}>
      <CameraView
        place={name} standing={standing} news={<ArrivalNews survey={survey} photographs={photographs} onCamera={stay} canTakeAgain={isHere} />} onClose={onClose}
        onPicture={(file) => photographs.take(file, at).then((photograph) => photograph?.id)} onTakeBack={takeBack}
      />
    </Suspense>
  )
}
