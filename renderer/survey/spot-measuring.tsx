import { useState, type ReactNode } from 'react'
import type { MeasuredArea, Measurement } from '../../shared-logic/measuring/measurement'
import { MeasuringBoard } from '../measuring/measuring-board'
import { CheckCamera } from './check-camera'
import { PhotographNews } from './photograph-news'
import { useSpotScene } from './spot-scene'
import { photographsAt } from './survey-cache'
import { placeOf } from './use-walk'

interface SpotMeasuringProps {
  readonly measurement: Measurement | undefined
  readonly gradeOf: (result: MeasuredArea) => ReactNode
  readonly onKeep: (measurement: Measurement) => void
  readonly onClose: () => void
}

/** The measuring board with the survey's photographs: those of this check first, each picture once. */
export const SpotMeasuring = (props: SpotMeasuringProps) => {
  const { walk, photographs } = useSpotScene()
  const place = placeOf(walk.current)
  const [isCameraOpen, setCameraOpen] = useState(false)
  const here = photographsAt(walk.survey, place)
  const all = [...here, ...walk.survey.photographs]
  const once = all.filter((each, index) => all.findIndex((other) => other.sha256 === each.sha256) === index)
  return (
    <>
      <MeasuringBoard {...props} photographs={once} onFiles={(files) => photographs.add(files, place)} onCamera={() => setCameraOpen(true)} news={<PhotographNews photographs={photographs} />} />
      {isCameraOpen && <CheckCamera survey={walk.survey} assessed={walk.current} photographs={photographs} onClose={() => setCameraOpen(false)} />}
    </>
  )
}
