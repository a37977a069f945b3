import type { Rig } from '../rig/rig'
import type { Survey } from '../survey/records'
import type { StationId } from '../survey/station'
import type { Words } from '../words/en'
import type { ReportContext } from './context'
import type { PrintedCaution } from './document'
import type { SumsPart, SumsSheet } from './sums-document'

/** What decides which cautions are printed. */
export interface CautionFacts {
  readonly rig: Rig
  readonly survey: Survey
  /** A check of this station was asked. */
  readonly asked: (station: StationId) => boolean
  /** A load or mass was read at the coupler, or the sums' balance is printed, so that balance is spoken of. */
  readonly balanceSpokenOf: boolean
  /** The tie-down plan is printed. */
  readonly tieDownPrinted: boolean
  /** A finding is to be put right before the rig is towed. */
  readonly dangerous: boolean
  /** A corroded spot was recorded. */
  readonly spotsRecorded: boolean
  /** A coating or wall thickness was read. */
  readonly thicknessRead: boolean
}

export type CautionId = keyof Words['report']['cautions']

interface CautionRow {
  readonly id: CautionId
  readonly when: (facts: CautionFacts) => boolean
  /** Printed in bold. */
  readonly strong?: (facts: CautionFacts) => boolean
}

const always = (): boolean => true
const metalFrame = ({ asked }: CautionFacts): boolean => asked('frame')
const plateMissing = ({ rig }: CautionFacts): boolean => rig.trailer.maximumMassKg === undefined
const massStated = ({ rig: { trailer, boat } }: CautionFacts): boolean =>
  [trailer.massKg, trailer.maximumMassKg, boat?.dryMassKg, boat?.engineMassKg].some((mass) => mass !== undefined) || (boat?.tanks?.length ?? 0) > 0

/** Axles joined by an equalizer share their load; leaf springs on a tandem usually are: common practice, no source. */
const independentAxles = ({ rig: { trailer, stance } }: CautionFacts): boolean =>
  (trailer.axleCount ?? 1) > 1 && (stance?.loadSharing === undefined ? trailer.suspension !== 'leaf springs' : stance.loadSharing === 'independent')

/** Cautions in the order they are printed, each with when it is printed: common practice, no source. */
export const cautionTable: readonly CautionRow[] = [
  { id: 'do not tow', when: ({ dangerous }) => dangerous, strong: always },
  { id: 'this day and place', when: always },
  { id: 'masses', when: massStated },
  { id: 'plate missing', when: plateMissing, strong: always },
  { id: 'plate decides', when: (facts) => !plateMissing(facts) },
  { id: 'balance changes', when: ({ balanceSpokenOf }) => balanceSpokenOf },
  { id: 'limits quoted', when: always },
  { id: 'straps', when: ({ asked, tieDownPrinted }) => tieDownPrinted || asked('tie-down') },
  { id: 'tyre age', when: ({ asked }) => asked('wheels') },
  { id: 'brakes at rest', when: ({ asked, rig }) => asked('brakes') && !rig.brakeTest?.axles?.length },
  { id: 'numbers prove little', when: ({ asked, rig }) => asked('papers') || rig.trailer.identificationNumber !== undefined || rig.boat?.hullIdentificationNumber !== undefined },
  { id: 'outside the report', when: always },
  { id: 'not a certificate', when: always },
  { id: 'each axle weighed', when: independentAxles },
  { id: 'inside not seen', when: metalFrame },
  { id: 'covered not seen', when: ({ asked }) => asked('frame') || asked('bunks') },
  { id: 'blocked drains', when: metalFrame },
  { id: 'paint hides', when: (facts) => metalFrame(facts) && facts.rig.trailer.frame !== 'aluminium' },
  { id: 'rust at joints', when: (facts) => metalFrame(facts) && facts.rig.trailer.frame !== 'aluminium' },
  { id: 'light and wet', when: ({ spotsRecorded, survey }) => spotsRecorded || survey.photographs.length > 0 },
  { id: 'area not depth', when: ({ spotsRecorded }) => spotsRecorded },
  { id: 'grade of what was seen', when: ({ spotsRecorded }) => spotsRecorded },
  { id: 'coating through paint', when: ({ thicknessRead }) => thicknessRead },
  { id: 'visual and one day', when: metalFrame },
]

const anyReading = ({ assessed }: ReportContext, wanted: (quantity: string, station: StationId) => boolean): boolean =>
  assessed.some(({ check, answer }) =>
    check.fields.some((field) => field.kind === 'reading' && answer?.values[field.id] !== undefined && wanted(field.quantity, check.station)),
  )

const factsOf = (context: ReportContext, sums: SumsPart | undefined): CautionFacts => {
  const prints = (wanted: SumsSheet['id']): boolean => sums?.sheets.some(({ id }) => id === wanted) ?? false
  const { survey, assessed, findings } = context
  const stations = new Set(assessed.map(({ check }) => check.station))
  return {
    rig: survey.rig,
    survey,
    asked: (station) => stations.has(station),
    balanceSpokenOf: prints('balance') || anyReading(context, (quantity, station) => station === 'coupler' && (quantity === 'mass' || quantity === 'force')),
    tieDownPrinted: prints('tie-down'),
    dangerous: findings.some(({ by }) => by === 'before it is towed'),
    spotsRecorded: assessed.some(({ check, answer }) => check.fields.some((field) => field.kind === 'spots' && Array.isArray(answer?.values[field.id]))),
    thicknessRead: anyReading(context, (quantity) => quantity === 'thickness'),
  }
}

/** The cautions that apply, in the order of the table. */
export const cautionsThatApply = (facts: CautionFacts): { readonly id: CautionId; readonly strong: boolean }[] =>
  cautionTable.filter(({ when }) => when(facts)).map(({ id, strong }) => ({ id, strong: strong?.(facts) ?? false }))

export const cautionsPart = (context: ReportContext, sums: SumsPart | undefined): PrintedCaution[] =>
  cautionsThatApply(factsOf(context, sums)).map(({ id, strong }) => ({ id, text: context.words.report.cautions[id], strong }))
