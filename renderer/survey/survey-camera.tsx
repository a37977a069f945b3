import { lazy, Suspense, useMemo, useState } from 'react'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { useWords } from '../parts/use-words'
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
  const said = useWords().screens.camera
  // What came before it is told of where that came from.
  const [before] = useState(standing)
  const [retaken, setRetaken] = useState<string>()
  const takeBack = async (photographId: string): Promise<void> => {
    const photograph = survey.photographs.find(({ id }) => id === photographId)
    if (photograph === undefined) return
    setRetaken(photographId)
    await photographs.takeBack(photograph)
  }
  const take = async (file: File): Promise<string | undefined> => {
    setRetaken(undefined)
    return (await photographs.take(file, at))?.id
  }
  const removedSays = retaken !== undefined && photographs.removed.at(-1)?.id === retaken ? said.retaken : undefined
  const isHere = ({ checkId, position }: Photograph): boolean => checkId === at?.checkId && position === at?.position
  return (
    <Suspense fallback={null}>
      <CameraView
        place={name} standing={standing} news={<ArrivalNews survey={survey} photographs={photographs} onCamera={stay} canTakeAgain={isHere} leftOut={before} removedSays={removedSays} />} onClose={onClose}
        onPicture={take} onTakeBack={takeBack}
      />
    </Suspense>
  )
}
