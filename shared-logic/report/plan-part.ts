import { planView } from '../drawings/plan-view'
import type { Place } from '../drawings/drawing'
import type { StationId } from '../survey/station'
import { compareVerdicts } from '../survey/verdict'
import { say } from '../words/say'
import type { ReportContext } from './context'
import type { PlanMark, ReportDocument, ReportFinding } from './document'

/** Where a finding of the whole rig is marked, by its station: the first of these places the drawing has. */
const stationAnchors: Readonly<Record<StationId, readonly string[]>> = {
  papers: ['tongue'],
  coupler: ['coupler', 'chain left'],
  winch: ['strap winch'],
  frame: ['cross-members'],
  bunks: ['keel rollers', 'bunk left'],
  axles: ['axle 1', 'all axles'],
  hubs: ['axle 1 left', 'all axles'],
  wheels: ['axle 1 right', 'all axles'],
  brakes: ['axle 1', 'all axles', 'tongue'],
  lights: ['lamp identification', 'lamp plate'],
  'tie-down': ['strap bow tie'],
  'after-use': ['rig'],
}

const anchorOf = ({ position, station }: ReportFinding, places: ReadonlyMap<string, Place>): Place | undefined => {
  const names = position === 'rig' ? [...stationAnchors[station], 'rig'] : [position, ...stationAnchors[station], 'rig']
  return names.map((name) => places.get(name)).find((place) => place !== undefined)
}

const marksOf = (findings: readonly ReportFinding[], all: readonly Place[]): PlanMark[] => {
  const places = new Map(all.map((place) => [place.id, place]))
  const byAnchor = Map.groupBy(findings, (finding) => anchorOf(finding, places))
  return [...byAnchor].flatMap(([anchor, own]) => {
    if (anchor === undefined) return []
    const [worst] = own.map(({ verdict }) => verdict).toSorted((a, b) => compareVerdicts(b, a))
    return [{ x: anchor.x, y: anchor.y, numbers: own.map(({ number }) => number), verdict: worst ?? 'advisory' }]
  })
}

/** The rig from above with the findings on it, as drawn on the day of issue. */
export const planPart = ({ survey, words, units }: ReportContext, findings: readonly ReportFinding[]): ReportDocument['plan'] => {
  const drawing = planView(survey.rig, survey.ruleBook, { walk: false })
  const { plan } = words.report
  const named = findings.map(({ number, name }) => say(plan.mark, { number, name }, units))
  return {
    drawing,
    marks: marksOf(findings, drawing.places),
    caption: drawing.toScale ? plan.toScale : plan.sketch,
    alternative: named.length === 0 ? plan.alternativeEmpty : say(plan.alternative, { marks: named.join('; ') }, units),
  }
}
