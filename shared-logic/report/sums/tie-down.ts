import { lashingPlanDrawing } from '../../drawings/lashing-plan'
import { verdictOfHold, type DirectionHold } from '../../lashing/direction-hold'
import type { MethodSum, TieDownPlan } from '../../lashing/plan'
import { measured } from '../../units/quantity'
import { sayPosition } from '../../words/position'
import { say } from '../../words/say'
import { sayHold, sayTieDown, sayWeakest } from '../../words/sums/tie-down'
import type { SumsFigure, SumsSheet, SumsTable } from '../sums-document'
import { cell, inputsOf, printed, shown, shownShare, type SheetContext } from './sheet-context'

const degrees = (radians: number | undefined): string => (radians === undefined ? '–' : `${Math.round((radians * 180) / Math.PI)}°`)

const figure = ({ rig, plan, words, units }: SheetContext): SumsFigure[] => {
  if (!plan.straps.some(({ lead }) => lead !== undefined)) return []
  const drawing = lashingPlanDrawing(rig, plan, words, units)
  const { lashing } = words.report.sums
  return [{ drawing, caption: drawing.toScale ? lashing.toScale : lashing.sketch, alternative: say(lashing.alternative, { count: plan.straps.length, weakest: plan.weakest ? sayHold(words, plan.weakest, units) : '' }, units) }]
}

const holdRow = (context: SheetContext, { direction, neededN, strapsN, frictionN, bowStopN, heldN, share, standing }: DirectionHold) => {
  const { directions, standings } = context.words.tieDownPlan
  return [cell(directions[direction]), ...[neededN, strapsN, frictionN, bowStopN, heldN].map((newtons) => cell(shown(context, 'force', newtons))), cell(shownShare(context, Math.round(share * 100) / 100)), cell(standings[standing], { verdict: verdictOfHold[standing] })]
}

const directionsTable = (context: SheetContext, { method, directions }: MethodSum): SumsTable => {
  const { columns, methods } = context.words.tieDownPlan
  const figures = [columns.needed, columns.straps, columns.friction, columns.bowStop, columns.held].map((heading) => ({ heading, share: 0.122, align: 'right' as const }))
  return {
    heading: methods[method.id].name,
    columns: [{ heading: columns.direction, share: 0.13 }, ...figures, { heading: columns.share, share: 0.09, align: 'right' }, { heading: context.words.report.sums.columns.standing, share: 0.17 }],
    rows: directions.map((hold) => holdRow(context, hold)),
  }
}

const strapsTable = (context: SheetContext): SumsTable[] => {
  const { plan, words } = context
  if (plan.straps.length === 0) return []
  const { columns } = words.tieDownPlan
  return [{
    heading: words.report.sums.straps,
    columns: [{ heading: columns.strap, share: 0.34 }, { heading: columns.down, share: 0.18, align: 'right' }, { heading: columns.off, share: 0.22, align: 'right' }, { heading: columns.rating, share: 0.26, align: 'right' }],
    rows: plan.straps.map(({ index, strap, lead, limitN }) => [
      cell(`${index + 1} ${sayPosition(strap.position, undefined)}`), cell(degrees(lead?.downRad)), cell(degrees(lead?.offRad)), cell(limitN === undefined ? words.report.notKnown : shown(context, 'force', limitN)),
    ]),
  }]
}

const boatMass = (context: SheetContext): SumsSheet['inputs'] =>
  context.plan.reckoned ? [{ label: context.words.report.sums.boatMass, value: shown(context, 'mass', context.plan.reckoned.massKg) }] : []

type Point = NonNullable<TieDownPlan['straps'][number]['strap']['boat']>

/** '20.1 ft; 3.2 ft left; 2.9 ft'. */
const sayPoint = ({ words, units }: SheetContext, point: Point | undefined): string => {
  if (point === undefined) return words.report.notKnown
  const { aftOfBallM, toRightM, heightM } = point
  return say(words.report.sums.point[toRightM === 0 ? 'middle' : toRightM < 0 ? 'left' : 'right'], { aft: measured('length', aftOfBallM), aside: measured('length', Math.abs(toRightM)), up: measured('length', heightM) }, units)
}

/** The measured ends the leads were worked out from; none where only angles were read. */
const endsTable = (context: SheetContext): SumsTable[] => {
  const { plan, words } = context
  const ended = plan.straps.filter(({ strap }) => strap.boat !== undefined || strap.trailer !== undefined)
  if (ended.length === 0) return []
  const { columns, strapEnds } = words.report.sums
  return [{
    heading: strapEnds,
    columns: [{ heading: words.tieDownPlan.columns.strap, share: 0.24 }, { heading: columns.route, share: 0.18 }, { heading: columns.onBoat, share: 0.29 }, { heading: columns.onTrailer, share: 0.29 }],
    rows: ended.map(({ index, strap }) => [
      cell(`${index + 1} ${sayPosition(strap.position, undefined)}`), cell(words.screens.sums.straps.routes[strap.route]), cell(sayPoint(context, strap.boat)), cell(sayPoint(context, strap.trailer)),
    ]),
  }]
}

/** What ties the boat down: each way needed and held, the weakest named; absent while no tie-down was entered. */
export const tieDownSheetPart = (context: SheetContext): SumsSheet | undefined => {
  const { rig, plan, words, units } = context
  if (!rig.tieDown) return undefined
  const said = sayTieDown(words, plan, units)
  const weakest = sayWeakest(words, plan, units)
  // The directions stand in their own table, and the weakest comes first.
  const told = new Set([...(plan.methods[0]?.directions ?? []).map((hold) => sayHold(words, hold, units)), ...weakest.map(({ text }) => text)])
  return {
    id: 'tie-down', title: said.title, figures: figure(context), tables: [...plan.methods.map((method) => directionsTable(context, method)), ...strapsTable(context), ...endsTable(context)],
    lines: printed(context, [...weakest, ...said.lines.filter(({ text }) => !told.has(text))]),
    inputs: [...boatMass(context), ...inputsOf(context, [
      ['boat.lengthM', 'length', rig.boat?.lengthM], ['tieDown.friction', 'words', plan.friction.ground === 'measured' ? plan.friction.value.toFixed(2) : undefined], ['tieDown.bowStopBlocks', 'words', rig.tieDown.bowStopBlocks === undefined ? undefined : words.report[rig.tieDown.bowStopBlocks ? 'yes' : 'no']],
      ['tieDown.bowStopRatedN', 'force', rig.tieDown.bowStopRatedN],
    ])],
    formulas: [...plan.methods.map(({ method }) => words.tieDownPlan.methods[method.id].formula), words.tieDownPlan.equalTension], sources: [...said.sources], cautions: [...said.cautions],
  }
}
