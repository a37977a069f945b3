import { isOver, isUnder } from '../rules/beyond'
import type { Photograph } from '../survey/records'
import type { PhraseValues } from '../words/phrase'
import { needOf } from './needs'

/** What may be wrong with a photograph for its check. Never a reason to refuse it. */
export const warningKeys = ['blurred', 'tooDark', 'burntOut', 'tooSmall'] as const
export type WarningKey = (typeof warningKeys)[number]

export interface PhotographWarning {
  readonly key: WarningKey
  /** The figures its sentence needs. */
  readonly values: PhraseValues
}

/** With less light than this in half of its pixels little is to be seen: four stops under a grey card. Common practice, no source. */
const leastLight = 0.18 / 2 ** 4

const percent = (share: number): number => Math.round(share * 100)
const tenths = (value: number): number => Math.round(value * 10) / 10

type Judged = Pick<Photograph, 'checkId' | 'widthPx' | 'heightPx' | 'quality'>

/** A photograph taken in before its quality was measured is judged by its size alone. */
export const warningsOf = ({ checkId, widthPx, heightPx, quality }: Judged): PhotographWarning[] => {
  const { leastLongEdgePx, widestEdgePx, mostBurntShare, mayBeDark, mayBeWhite } = needOf(checkId)
  const warnings: PhotographWarning[] = []
  if (quality?.edgeWidthPx !== undefined && isOver(quality.edgeWidthPx, widestEdgePx)) warnings.push({ key: 'blurred', values: { width: tenths(quality.edgeWidthPx), limit: widestEdgePx } })
  if (quality && !mayBeDark && isUnder(quality.medianLuminance, leastLight)) warnings.push({ key: 'tooDark', values: { light: tenths(quality.medianLuminance * 100) } })
  if (quality && !mayBeWhite && isOver(quality.burntShare, mostBurntShare)) warnings.push({ key: 'burntOut', values: { share: percent(quality.burntShare), limit: percent(mostBurntShare) } })
  if (isUnder(Math.max(widthPx, heightPx), leastLongEdgePx)) warnings.push({ key: 'tooSmall', values: { width: widthPx, height: heightPx, limit: leastLongEdgePx } })
  return warnings
}
