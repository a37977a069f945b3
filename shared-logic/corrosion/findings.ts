import type { Source } from '../rules/rule-book'
import type { ByWhen, Verdict } from '../survey/verdict'
import { galvanicSources } from './galvanic'
import { corrosionSources as from } from './sources'

/** What is done about a spot. */
export const remedyKinds = ['none', 'measure', 'clean and watch', 'clean and coat', 'repair the zinc', 'coat the whole member', 'isolate', 'repair by welding', 'replace'] as const
export type RemedyKind = (typeof remedyKinds)[number]

/** `part`: the state of the coating, or what the member still carries. The two are never mixed: area grades the first, depth the second. */
interface FindingRow {
  readonly part: 'coating' | 'structure'
  readonly verdict: Verdict
  /** Advisory and fail have one. */
  readonly by?: ByWhen
  readonly remedy: RemedyKind
  readonly sources: readonly Source[]
}

type Part = FindingRow['part']
const fails = (part: Part, remedy: RemedyKind, ...sources: Source[]): FindingRow => ({ part, verdict: 'fail', by: 'before it is towed', remedy, sources })
const advises = (part: Part, by: ByWhen, remedy: RemedyKind, ...sources: Source[]): FindingRow => ({ part, verdict: 'advisory', by, remedy, sources })
const passes = (part: Part, ...sources: Source[]): FindingRow => ({ part, verdict: 'pass', remedy: 'none', sources })

/** Every way a spot can be found, gravest first. Its sentences stand in the words under the same key; a new rule is a row here. */
export const findings = {
  hole: fails('structure', 'repair by welding', from.perforated, from.mountings, from.eatenAway, from.weldRepair),
  'deep pit': fails('structure', 'repair by welding', from.pits, from.practice, from.weldRepair),
  'eaten away': fails('structure', 'repair by welding', from.eatenAway, from.weldRepair),
  'too thin': fails('structure', 'repair by welding', from.practice, from.rigidity, from.section, from.weldRepair),
  'pit by the weld': fails('structure', 'repair by welding', from.weldZone, from.practice),
  'near a mounting': advises('structure', 'before it is towed', 'measure', from.mountings, from.practice),
  'pits not measured': advises('structure', 'before it is towed', 'measure', from.practice),
  'galvanic, large cathode': advises('structure', 'before it is towed', 'isolate', ...galvanicSources),
  thinned: advises('structure', 'before next trip', 'clean and coat', from.practice, from.section),
  pitted: advises('structure', 'before next trip', 'clean and coat', from.practice, from.pits),
  'aluminium pits': advises('structure', 'before next trip', 'clean and watch', from.practice),
  scale: advises('structure', 'before next trip', 'measure', from.practice),
  galvanic: advises('structure', 'before next trip', 'isolate', ...galvanicSources),
  crevice: advises('structure', 'before next trip', 'isolate', from.practice),
  'red rust past spot repair': advises('coating', 'before next trip', 'coat the whole member', from.protection, from.zincRepair),
  blistered: advises('coating', 'before next trip', 'clean and coat', from.bubbling, from.practice),
  'galvanic, other part': advises('structure', 'within a month', 'isolate', ...galvanicSources),
  'holed, no load': advises('structure', 'within a month', 'replace', from.practice),
  'paint broken down': advises('coating', 'within a month', 'coat the whole member', from.degrees, from.tankCoating),
  'painted rust': advises('coating', 'within a month', 'clean and coat', from.degrees, from.practice),
  'red rust on zinc': advises('coating', 'within a month', 'repair the zinc', from.protection, from.zincRepair, from.practice),
  'large bare spot': advises('coating', 'within a month', 'repair the zinc', from.zincRepair),
  'weld rust': advises('coating', 'within a month', 'clean and coat', from.tankCoating, from.practice),
  'heavy white product': advises('coating', 'within a month', 'clean and coat', from.wetStorage, from.zincThickness),
  'bare steel': advises('coating', 'within a month', 'clean and coat', from.practice),
  'not measured': advises('coating', 'within a month', 'measure', from.practice),
  'thin zinc': advises('coating', 'within a year', 'coat the whole member', from.zincThickness, from.practice),
  'small loss': passes('structure', from.practice),
  slight: passes('coating', from.practice),
  'white product': passes('coating', from.wetStorage),
  bloom: passes('structure', from.practice),
  'foreign rust': passes('coating', from.grades),
  'foreign white': passes('coating', from.practice),
  'not structural': passes('structure', from.practice),
  'zinc alone': passes('structure', from.wetStorage),
  sound: passes('coating'),
  'sound metal': passes('structure'),
  /** Nothing was measured, so nothing is said: not seen, never a pass. */
  'depth not measured': { part: 'structure', verdict: 'not seen', remedy: 'none', sources: [from.practice] },
  'no area scale': { part: 'coating', verdict: 'not applicable', remedy: 'none', sources: [from.practice] },
} as const satisfies Readonly<Record<string, FindingRow>>

export type CorrosionFinding = keyof typeof findings

const isFinding = (key: string): key is CorrosionFinding => Object.hasOwn(findings, key)

/** Gravest first. */
export const findingKeys: readonly CorrosionFinding[] = Object.keys(findings).filter(isFinding)

export const rowOf = (finding: CorrosionFinding): FindingRow => findings[finding]

const gravity = new Map(findingKeys.map((key, index) => [key, index]))
const gravityOf = (finding: CorrosionFinding): number => gravity.get(finding) ?? findingKeys.length

/** Negative when `a` is graver. */
export const compareGravity = (a: CorrosionFinding, b: CorrosionFinding): number => gravityOf(a) - gravityOf(b)

/** Said beside a coating that says more: never the gravest of a spot. */
const besides: ReadonlySet<CorrosionFinding> = new Set(['zinc alone', 'sound metal', 'depth not measured', 'no area scale'])

/** The findings a whole spot can come to, gravest first. */
export const gravestFindings: readonly CorrosionFinding[] = findingKeys.filter((key) => !besides.has(key))
