import sharp from 'sharp'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { SceneOptions } from '../corrosion/scenes/plan'
import { renderScene, type Scene } from '../corrosion/scenes/render-scene'
import { through } from '../corrosion/scenes/view'
import type { PictureFile } from './pictures'

/** A rendered photograph as a file, with a spot on its face of which the true area is known. */
export interface ScenePhotograph {
  readonly file: PictureFile
  readonly scene: Scene
  readonly spot: readonly PixelPoint[]
  readonly spotAreaM2: number
}

const corners = 12

/** A twelve-cornered spot on the plane, with its area by the shoelace formula and its corners as they show in the picture. */
const spotOn = ({ plan, view }: Scene, radiusShare: number): Pick<ScenePhotograph, 'spot' | 'spotAreaM2'> => {
  const radiusMm = plan.widthPx * plan.mmPerPx * radiusShare
  const [midX, midY] = through(view.toPlane, plan.widthPx / 2, plan.heightPx / 2)
  const mm = Array.from({ length: corners }, (_, index): PixelPoint => {
    const angle = (index * 2 * Math.PI) / corners
    const radius = radiusMm * (1 + 0.25 * Math.sin(3 * angle))
    return [midX + radius * Math.cos(angle), midY + radius * Math.sin(angle)]
  })
  const twice = mm.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = mm[(index + 1) % corners] ?? [x, y]
    return sum + x * nextY - nextX * y
  }, 0)
  return { spot: mm.map(([x, y]) => through(view.toPixel, x, y)), spotAreaM2: Math.abs(twice) / 2 / 1e6 }
}

/** A photograph larger than its preview, so that the two scales cannot be mixed up. `radiusShare`: of the picture's width. */
export const scenePhotograph = async (name: string, seed: number, options: SceneOptions, radiusShare = 0.09): Promise<ScenePhotograph> => {
  const scene = await renderScene(seed, { widthPx: 2000, scaleBy: 'card', decoys: [], ...options })
  const { width, height, data } = scene.pixels
  const buffer = await sharp(Buffer.from(data), { raw: { width, height, channels: 4 } }).removeAlpha().jpeg({ quality: 92 }).toBuffer()
  return { file: { name, mimeType: 'image/jpeg', buffer }, scene, ...spotOn(scene, radiusShare) }
}
