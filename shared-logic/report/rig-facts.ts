import type { Boat } from '../rig/boat'
import type { Rig } from '../rig/rig'
import type { Trailer } from '../rig/trailer'
import { formatQuantity } from '../units/convert'
import type { Quantity } from '../units/quantity'
import type { Words } from '../words/en'
import { say } from '../words/say'
import type { ReportContext } from './context'
import type { Fact, ReportDocument } from './document'

/** A line of the rig's description: the register's field, and how it is shown; absent when unknown. */
type Row<Of> = readonly [path: string, show: (of: Of, context: ReportContext) => string | undefined]

const plain = (value: string | number | undefined): string | undefined => (value === undefined ? undefined : String(value))
const shown = (quantity: Quantity, si: number | undefined, { units }: ReportContext): string | undefined => (si === undefined ? undefined : formatQuantity(quantity, si, units))
const yesNo = (value: boolean | undefined, { words }: ReportContext): string | undefined => (value === undefined ? undefined : value ? words.report.yes : words.report.no)

const trailerRows: readonly Row<Trailer>[] = [
  ['trailer.maker', ({ maker }) => maker],
  ['trailer.model', ({ model }) => model],
  ['trailer.builtYear', ({ builtYear }) => plain(builtYear)],
  ['trailer.identificationNumber', ({ identificationNumber }) => identificationNumber],
  ['trailer.registration', ({ registration }) => registration],
  ['trailer.frame', ({ frame }) => frame],
  ['trailer.exposure', ({ exposure }) => exposure],
  ['trailer.massKg', ({ massKg }, context) => shown('mass', massKg, context)],
  ['trailer.maximumMassKg', ({ maximumMassKg }, context) => shown('mass', maximumMassKg, context)],
  ['trailer.axleRatingKg', ({ axleRatingKg }, context) => shown('mass', axleRatingKg, context)],
  ['trailer.lengthM', ({ lengthM }, context) => shown('length', lengthM, context)],
  ['trailer.widthM', ({ widthM }, context) => shown('length', widthM, context)],
  ['trailer.ballToAxleM', ({ ballToAxleM }, context) => shown('length', ballToAxleM, context)],
  ['trailer.supports', ({ supports }) => supports],
  ['trailer.winch', ({ winch }) => winch],
  ['trailer.coupler', ({ coupler }) => coupler],
  ['trailer.ballDiameterM', ({ ballDiameterM }, context) => shown('smallLength', ballDiameterM, context)],
  ['trailer.jack', ({ jack }, context) => yesNo(jack, context)],
]

const runningGearRows: readonly Row<Trailer>[] = [
  ['trailer.axleCount', ({ axleCount }) => plain(axleCount)],
  ['trailer.suspension', ({ suspension }) => suspension],
  ['trailer.hubLubrication', ({ hubLubrication }) => hubLubrication],
  ['trailer.brakes', ({ brakes }) => brakes],
  ['trailer.brakeForm', ({ brakeForm }) => brakeForm],
  ['trailer.brakedAxleCount', ({ brakedAxleCount }) => plain(brakedAxleCount)],
  ['trailer.tyre.size', ({ tyre }) => tyre?.size],
  ['trailer.tyre.loadIndex', ({ tyre }) => plain(tyre?.loadIndex)],
  ['trailer.tyre.loadRange', ({ tyre }) => tyre?.loadRange],
  ['trailer.tyre.placardPressurePa', ({ tyre }, context) => shown('pressure', tyre?.placardPressurePa, context)],
  ['trailer.spareWheel', ({ spareWheel }, context) => yesNo(spareWheel, context)],
  ['trailer.lamps', ({ lamps }) => lamps],
  ['trailer.plug', ({ plug }) => plug],
]

/** Rows that do not arise for a trailer of this equipment: no brake form where there are no brakes. */
const beside = ({ brakes }: Trailer): readonly string[] => (brakes === 'none' ? ['trailer.brakeForm', 'trailer.brakedAxleCount'] : [])

const boatRows: readonly Row<Boat>[] = [
  ['boat.name', ({ name }) => name],
  ['boat.maker', ({ maker }) => maker],
  ['boat.model', ({ model }) => model],
  ['boat.builtYear', ({ builtYear }) => plain(builtYear)],
  ['boat.hullIdentificationNumber', ({ hullIdentificationNumber }) => hullIdentificationNumber],
  ['boat.hull', ({ hull }) => hull],
  ['boat.lengthM', ({ lengthM }, context) => shown('length', lengthM, context)],
  ['boat.beamM', ({ beamM }, context) => shown('length', beamM, context)],
  ['boat.dryMassKg', ({ dryMassKg }, context) => shown('mass', dryMassKg, context)],
  ['boat.engine', ({ engine }) => engine],
  ['boat.engineMassKg', ({ engineMassKg }, context) => shown('mass', engineMassKg, context)],
  ['boat.tanks', ({ tanks }, { words, units }) => tanks?.map(({ contents, capacityM3 }) => say(words.report.rig.tank, { contents: words.fieldOptions['boat.tanks.contents']?.[contents] ?? contents, volume: { quantity: 'volume', si: capacityM3 } }, units)).join(', ')],
]

const factsOf = <Of>(rows: readonly Row<Of>[], of: Of, context: ReportContext): Fact[] =>
  rows.map(([path, show]) => {
    const recorded = show(of, context)
    const value = recorded === undefined ? undefined : (context.words.fieldOptions[path]?.[recorded] ?? recorded)
    return { label: context.words.fields[path] ?? path, value: value ?? context.words.report.notKnown, known: value !== undefined }
  })

const inLine = (parts: readonly (string | undefined)[], words: Words): string => parts.filter((part) => part !== undefined && part !== '').join(', ') || words.report.notKnown

const made = ({ maker, model }: Pick<Boat, 'maker' | 'model'>): string => [maker, model].filter((part) => part !== undefined).join(' ')

/** What was surveyed, in a line each for trailer and boat: by these a reader of the first page knows the rig again. */
export const rigLines = ({ trailer, boat }: Rig, { words, units }: ReportContext): string[] => {
  const { rig } = words.report
  const numbered = (template: string, number: string | undefined): string | undefined => (number === undefined ? undefined : say(template, { number }, units))
  const rated = trailer.maximumMassKg === undefined ? undefined : say(rig.rated, { mass: { quantity: 'mass', si: trailer.maximumMassKg } }, units)
  const trailerParts = [made(trailer), plain(trailer.builtYear), numbered(rig.number, trailer.identificationNumber), numbered(rig.registration, trailer.registration), rated]
  const boatParts = boat === undefined ? [rig.noBoat] : [boat.name, made(boat), plain(boat.builtYear), numbered(rig.hullNumber, boat.hullIdentificationNumber)]
  return [say(rig.trailerLine, { what: inLine(trailerParts, words) }, units), say(rig.boatLine, { what: inLine(boatParts, words) }, units)]
}

/** Trailer, running gear and boat, field by field; what nobody knows says so. */
export const rigPart = (rig: Rig, context: ReportContext): ReportDocument['rig'] => {
  const { words } = context
  const { trailer, boat } = rig
  const left = beside(trailer)
  return [
    { heading: words.report.rig.trailer, facts: factsOf(trailerRows, trailer, context) },
    { heading: words.report.rig.runningGear, facts: factsOf(runningGearRows.filter(([path]) => !left.includes(path)), trailer, context) },
    { heading: words.report.rig.boat, facts: boat === undefined ? [{ label: words.report.rig.boat, value: words.report.rig.noBoat, known: false }] : factsOf(boatRows, boat, context) },
  ]
}
