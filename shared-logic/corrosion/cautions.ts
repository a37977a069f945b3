import type { AreaGrade } from './area-scales'
import { componentRows } from './components'
import { corrosionLimits as limits } from './limits'
import type { SpotFacts } from './spot-facts'

/** What has to be said beside a grade. The sentences stand in the words under the same key. */
export const gradingCautionKeys = [
  'worst end counts', 'seen part alone', 'stain is no rust', 'edges apart', 'uncoated steel', 'used part', 'paint in the reading', 'inside not seen',
  'five deepest pits', 'weld zone', 'remembered index', 'no published limit', 'component not named',
] as const
export type GradingCaution = (typeof gradingCautionKeys)[number]

interface CautionCase extends SpotFacts {
  readonly isCautious: boolean
  readonly grades: readonly AreaGrade[]
}

const rows: readonly { readonly caution: GradingCaution; readonly when: (at: CautionCase) => boolean }[] = [
  { caution: 'worst end counts', when: ({ isCautious }) => isCautious },
  { caution: 'seen part alone', when: ({ share }) => share !== undefined },
  { caution: 'stain is no rust', when: ({ spot }) => spot.kind === 'red rust' },
  { caution: 'edges apart', when: ({ grades }) => grades.some(({ scale }) => scale === 'ISO 4628-3') },
  { caution: 'uncoated steel', when: ({ spot, grades }) => spot.material === 'bare steel' && grades.length > 0 },
  { caution: 'used part', when: ({ spot, zinc, isDippedZinc, share }) => zinc?.minimum !== undefined || (isDippedZinc && spot.kind !== 'white product' && share !== undefined) },
  { caution: 'paint in the reading', when: ({ spot }) => spot.material === 'painted over zinc' && (spot.coatingReadingsM ?? []).length > 0 },
  { caution: 'inside not seen', when: ({ component, pitLoss, generalLoss }) => componentRows[component].isHollow && (pitLoss !== undefined || generalLoss !== undefined) },
  { caution: 'five deepest pits', when: ({ isPitted, share }) => isPitted && share !== undefined && share.high > limits.pittingIntensity },
  { caution: 'weld zone', when: ({ spot }) => spot.material === 'aluminium' && (spot.besideWeld === true || spot.kind === 'weld') },
  { caution: 'remembered index', when: ({ couple }) => couple?.isRemembered === true },
  { caution: 'no published limit', when: ({ bearsLoad, pitLoss, generalLoss }) => bearsLoad && (pitLoss !== undefined || generalLoss !== undefined) },
  { caution: 'component not named', when: ({ component }) => component === 'other' },
]

export const gradingCautions = (facts: SpotFacts, { isCautious, grades }: Pick<CautionCase, 'isCautious' | 'grades'>): readonly GradingCaution[] =>
  rows.filter(({ when }) => when({ ...facts, isCautious, grades })).map(({ caution }) => caution)
