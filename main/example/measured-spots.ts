import { measuredArea, type MeasurementGiven } from '../../shared-logic/measuring/area'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { Spot } from '../../shared-logic/survey/spot'

/** How a spot was measured: the rule beside it gives the scale, and the rust with its rim is outlined by hand. */
interface OnPicture {
  readonly file: string
  readonly given: MeasurementGiven
}

const byHand = (file: string, from: PixelPoint, to: PixelPoint, points: PixelPoint[]): OnPicture => ({
  file, given: { widthPx: 1600, heightPx: 1200, scale: { kind: 'length', from, to, lengthM: 0.1 }, outline: { by: 'polygon', points } },
})

/** By the spot's id. */
const measuredSpots: Readonly<Record<string, OnPicture>> = {
  'rear-1': byHand('rust-spot-before.jpg', [411, 760], [1310, 807], [
    [920, 507], [927, 538], [893, 561], [872, 591], [831, 606], [784, 610], [737, 601], [688, 599], [660, 571], [622, 550], [601, 521],
    [600, 490], [615, 460], [623, 428], [665, 412], [701, 392], [747, 386], [793, 394], [840, 402], [886, 415], [916, 442], [922, 475],
  ]),
  'rear-1 again': byHand('rust-spot.jpg', [428, 796], [1327, 757], [
    [959, 493], [971, 534], [930, 568], [907, 609], [855, 634], [794, 646], [732, 640], [668, 643], [628, 610], [576, 588], [544, 553],
    [539, 512], [555, 471], [561, 428], [614, 403], [658, 371], [718, 359], [779, 363], [841, 367], [902, 379], [945, 410], [957, 452],
  ]),
}

/** A spot with the area that its picture gives; without one as it is. */
export const measured = (spot: Spot): Spot => {
  const on = measuredSpots[spot.id]
  if (on === undefined) return spot
  const { areaM2, uncertaintyM2 } = measuredArea(on.given)
  return { ...spot, areaM2, areaUncertaintyM2: uncertaintyM2 }
}

/** The same with the whole measurement, once the yard holds the picture. `sha256Of`: by the picture's file. */
export const withMeasurement = (spot: Spot, sha256Of: (file: string) => string): Spot => {
  const on = measuredSpots[spot.id]
  return on === undefined ? spot : { ...spot, measurement: { sha256: sha256Of(on.file), ...on.given, result: measuredArea(on.given) } }
}
