import { createContext, use } from 'react'
import type { Photographs } from './use-photographs'
import type { Walk } from './use-walk'

/** The check that the spots belong to: what is drawn, photographed and followed around them. */
export interface SpotScene {
  readonly walk: Walk
  readonly photographs: Photographs
}

const sceneContext = createContext<SpotScene | undefined>(undefined)
export const SpotSceneProvider = sceneContext.Provider

export const useSpotScene = (): SpotScene => {
  const scene = use(sceneContext)
  if (scene === undefined) throw new Error('spots are noted within a walk')
  return scene
}
