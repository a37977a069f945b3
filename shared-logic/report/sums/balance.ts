import { shareCurve } from '../../drawings/share-curve'
import { sideView } from '../../drawings/side-view'
import { measured } from '../../units/quantity'
import { say } from '../../words/say'
import { sayBalance } from '../../words/sums/balance'
import type { SumsFigure, SumsSheet, SumsTable } from '../sums-document'
import { cell, inputsOf, plainDrawing, printed, shown, shownShare, type SheetContext } from './sheet-context'

const sideFigure = (context: SheetContext): SumsFigure[] => {
  const { rig, sums, words, units } = context
  const { lever, bounds } = sums.balance
  if (!lever && !bounds) return []
  const drawing = plainDrawing(sideView(rig, sums, words, units))
  const { side } = words.report.sums
  const gaps = lever && { coupling: measured('mass', lever.couplingKg), share: shownShare(context, lever.share), axles: measured('mass', lever.axleKg), centre: measured('length', lever.centreM) }
  return [{ drawing, caption: drawing.toScale ? side.toScale : side.sketch, alternative: gaps ? say(side.alternative, gaps, units) : side.alternativeWaits }]
}

const curveFigure = (context: SheetContext): SumsFigure[] => {
  const { sums: { balance, load }, words, units } = context
  const drawing = shareCurve(balance, load.items, words, units)
  if (!drawing || !balance.tanks) return []
  const { least, most } = balance.tanks.worst
  const { curve } = words.report.sums
  return [{ drawing: plainDrawing(drawing), caption: curve.caption, alternative: say(curve.alternative, { least: shownShare(context, least.share), most: shownShare(context, most.share) }, units) }]
}

/** Weighed against reckoned, where both are known. */
const comparedTable = (context: SheetContext): SumsTable[] => {
  const { sums: { balance: { lever, weighed } }, words } = context
  const scales = weighed.find(({ totalKg, couplingKg }) => totalKg !== undefined && couplingKg !== undefined)
  if (!lever || scales?.totalKg === undefined || scales.couplingKg === undefined) return []
  const { columns, rows, compared } = words.report.sums
  const row = (name: string, weighedKg: number, reckonedKg: number) => [cell(name), cell(shown(context, 'mass', weighedKg)), cell(shown(context, 'mass', reckonedKg)), cell(shown(context, 'mass', weighedKg - reckonedKg))]
  const weighedShare = scales.couplingKg / scales.totalKg
  return [{
    heading: compared,
    columns: [{ heading: columns.what, share: 0.34 }, { heading: columns.weighed, share: 0.22, align: 'right' }, { heading: columns.reckoned, share: 0.22, align: 'right' }, { heading: columns.difference, share: 0.22, align: 'right' }],
    rows: [
      row(rows.total, scales.totalKg, lever.totalKg), row(rows.coupling, scales.couplingKg, lever.couplingKg), row(rows.axles, scales.totalKg - scales.couplingKg, lever.axleKg),
      [cell(rows.share), cell(shownShare(context, weighedShare)), cell(shownShare(context, lever.share)), cell(shownShare(context, weighedShare - lever.share))],
    ],
  }]
}

const inputs = (context: SheetContext): SumsSheet['inputs'] => {
  const { rig: { trailer, loading, stance, boat }, sums: { balance: { bands } }, words } = context
  return [
    ...inputsOf(context, [
      ['trailer.ballToAxleM', 'length', trailer.ballToAxleM], ['trailer.axleCount', 'words', trailer.axleCount], ['stance.axleSpacingM', 'length', stance?.axleSpacingM],
      ['stance.loadSharing', 'words', stance?.loadSharing], ['loading.stemAftOfBallM', 'length', loading?.stemAftOfBallM], ['loading.transomAftOfBallM', 'length', loading?.transomAftOfBallM],
      ['loading.trailerCentreAftOfBallM', 'length', loading?.trailerCentreAftOfBallM], ['loading.boatCentreAftOfStemM', 'length', loading?.boatCentreAftOfStemM], ['boat.lengthM', 'length', boat?.lengthM],
      ['stance.trackM', 'length', stance?.trackM], ['stance.ballHeightM', 'length', stance?.ballHeightM],
    ]),
    { label: words.report.sums.band, value: say(words.report.sums.bandFrom, { from: shownShare(context, bands.passFrom), to: shownShare(context, bands.passTo), target: shownShare(context, bands.target) }, context.units) },
  ]
}

/** What rests on the coupling and the axles, over all levels of the tanks; absent while nothing of it was entered. */
export const balanceSheetPart = (context: SheetContext): SumsSheet | undefined => {
  const { rig, sums: { balance, load }, words, units } = context
  if (!rig.loading && !rig.weighings?.length) return undefined
  const said = sayBalance(words, balance, load.items, units, context.surveyDate)
  return {
    id: 'balance', title: said.title, figures: [...sideFigure(context), ...curveFigure(context)], tables: comparedTable(context), lines: printed(context, said.lines),
    inputs: inputs(context), formulas: [said.formula], sources: [...said.sources], cautions: [...said.cautions],
  }
}
