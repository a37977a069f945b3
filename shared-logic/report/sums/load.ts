import { fillOf, type LoadItem } from '../../load/load-items'
import type { LimitLine } from '../../load/limits'
import type { Bounded } from '../../load/bounded'
import { measured } from '../../units/quantity'
import { say } from '../../words/say'
import { sayRefusal } from '../../words/say-refusal'
import { nameOfItem, sayConclusions, sayLoad } from '../../words/sums/load'
import { sayWaits } from '../../words/sums/section'
import type { SumsSheet, SumsTable } from '../sums-document'
import { cell, inputsOf, printed, shown, shownShare, type SheetContext } from './sheet-context'

/** '1,450 kg', 'between 20 kg and 90 kg', 'at least 20 kg', 'not known'. */
const sayMass = ({ words, units }: SheetContext, { massKg, lowKg, highKg }: Bounded): string => {
  const said = words.report.sums
  if (massKg !== undefined) return say('{mass}', { mass: measured('mass', massKg) }, units)
  const gaps = { low: measured('mass', lowKg), ...(highKg !== undefined && { high: measured('mass', highKg) }) }
  if (highKg !== undefined) return say(said.between, gaps, units)
  return lowKg > 0 ? say(said.atLeast, gaps, units) : words.report.notKnown
}

const itemRow = (context: SheetContext, item: LoadItem) => [cell(nameOfItem(context.words, item)), cell(sayMass(context, item)), cell(shown(context, 'length', item.atM)), cell(shown(context, 'length', item.heightM))]

const itemsTable = (context: SheetContext): SumsTable => {
  const { columns, total } = context.words.report.sums
  const { items, total: sum } = context.sums.load
  const centreM = context.sums.balance.lever?.centreM
  return {
    columns: [{ heading: columns.what, share: 0.4 }, { heading: columns.mass, share: 0.24, align: 'right' }, { heading: columns.behindBall, share: 0.18, align: 'right' }, { heading: columns.height, share: 0.18, align: 'right' }],
    rows: [...items.map((item) => itemRow(context, item)), [total, sayMass(context, sum), shown(context, 'length', centreM), shown(context, 'length', context.sums.balance.stability?.centreHeightM)].map((text) => cell(text, { strong: true }))],
  }
}

const limitRow = (context: SheetContext, { limit, load, reserveKg, reserveShare, standing, verdict }: LimitLine) => {
  const { words, sums } = context
  // Bounds have no bar: a load drawn at its worst would be read as the load.
  const used = limit.ratingKg === undefined || load?.massKg === undefined ? undefined : load.massKg / limit.ratingKg
  return [
    cell(words.sums.limits[limit.id]),
    cell(load ? sayMass(context, load) : words.report.notKnown), cell(shown(context, 'mass', limit.ratingKg)),
    cell(reserveKg === undefined ? '–' : `${shown(context, 'mass', reserveKg)}, ${shownShare(context, reserveShare)}`),
    cell(shownShare(context, used), used === undefined ? {} : { bar: { used: Math.max(0, used), wanted: 1 - sums.load.reserveWanted } }),
    cell(words.sums.standings[standing], { verdict }),
  ]
}

/** Limits whose rating is known; the others are named by what is waited for. */
const limitsTable = (context: SheetContext): SumsTable[] => {
  const { columns, limits } = context.words.report.sums
  const known = context.sums.load.lines.filter(({ limit }) => limit.ratingKg !== undefined)
  if (known.length === 0) return []
  return [{
    heading: limits,
    columns: [
      { heading: columns.limit, share: 0.2 }, { heading: columns.load, share: 0.13, align: 'right' }, { heading: columns.rating, share: 0.11, align: 'right' },
      { heading: columns.reserve, share: 0.18, align: 'right' }, { heading: columns.used, share: 0.22, align: 'right' }, { heading: columns.standing, share: 0.16 },
    ],
    rows: known.map((line) => limitRow(context, line)),
  }]
}

/** What each tank holds and how full it is: a tank's mass is reckoned from these. */
const tankInputs = (context: SheetContext): SumsSheet['inputs'] =>
  (context.rig.boat?.tanks ?? []).flatMap(({ contents, capacityM3 }, index) => {
    const name = context.words.fieldOptions['boat.tanks.contents']?.[contents] ?? contents
    const fill = fillOf(capacityM3, context.rig.loading?.tanks?.[index])
    return [
      { label: name, value: shown(context, 'volume', capacityM3) },
      ...inputsOf(context, [[`loading.tanks.${index}.fill`, 'ratio', fill]]),
    ]
  })

/** Masses with their places, every limit with what rests on it, and what governs; absent while no mass is known. */
export const loadSheetPart = (context: SheetContext): SumsSheet | undefined => {
  const { sums, words, units } = context
  if (!(sums.load.total.lowKg > 0)) return undefined
  const said = sayLoad(words, sums.load, units)
  return {
    id: 'load', title: said.title, figures: [], tables: [itemsTable(context), ...limitsTable(context)],
    lines: printed(context, [
      ...sums.faults.map((fault) => ({ text: sayRefusal(words, fault), verdict: 'not seen' as const })),
      ...sayConclusions(words, sums.load, units), ...sayWaits(words, [...sums.load.total.waitsFor, ...sums.load.limitsWaitFor], units),
    ]),
    inputs: [{ label: words.report.sums.masses, value: words.report.sums.asListed }, ...tankInputs(context), { label: words.report.sums.reserveWanted, value: shownShare(context, sums.load.reserveWanted) }],
    formulas: [said.formula], sources: [...said.sources], cautions: [...said.cautions],
  }
}
