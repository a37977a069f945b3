import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { ProcedureName } from '../../shared-logic/contract/contract'
import type { Desk } from '../../shared-logic/contract/contract'
import { answerCall } from '../../main/desk/answer-call'
import { openDesk } from '../../main/desk/open'
import { openMarker } from '../../main/store/yard'
import { makeBigYard, rigCount, surveysPerRig } from './big-yard'
import type { BenchLine } from './bench-line'

const runs = 50
const budgetMs = 50
const openBudgetMs = 500

interface Asked {
  readonly name: string
  readonly procedure: ProcedureName
  readonly inputs: readonly unknown[]
}

const search = (name: string, ...searches: readonly string[]): Asked => ({ name: `search: ${name}`, procedure: 'surveys.list', inputs: searches.map((each) => ({ search: each })) })

const asked = (surveyIds: readonly string[], rigIds: readonly string[]): Asked[] => [
  { name: 'list: newest surveys', procedure: 'surveys.list', inputs: [{}] },
  { name: 'list: surveys, last page', procedure: 'surveys.list', inputs: [{ offset: rigCount * surveysPerRig - 50 }] },
  { name: 'list: surveys of one rig', procedure: 'surveys.list', inputs: rigIds.map((rigId) => ({ rigId })) },
  { name: 'list: rigs with their newest survey', procedure: 'rigs.list', inputs: [{}, { offset: 250 }] },
  { name: 'open: a survey with every answer', procedure: 'surveys.get', inputs: surveyIds.map((surveyId) => ({ surveyId })) },
  search('rig name', 'rig 217', 'Rig 003'),
  search('owner', 'varga', 'thora', 'Þóra'),
  search('identification number', '100417', '1M8GDM9AXKP100003'),
  search('report number', 'BW-2021-0411', '0411'),
  search('place', 'lisboa', 'gotebo', '北港'),
  search('two letters', 'or', '42'),
  search('what every survey has', '555', 'rig'),
  { name: 'search: rigs', procedure: 'rigs.list', inputs: [{ search: 'varga' }, { search: 'lisboa' }, { search: '100417' }, { search: 'rig' }] },
]

const call = async (desk: Desk, name: ProcedureName, input: unknown): Promise<unknown> => {
  const reply = await answerCall(desk, name, input)
  if (!reply.ok) throw new Error(`${name} was refused: ${JSON.stringify(reply.refusal)}`)
  return reply.value
}

const at = (times: readonly number[], share: number): number => times.toSorted((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * share))] ?? Number.NaN

/** Median and 95th percentile of fifty calls, door to door without the wire. The budget holds the percentile. */
const measure = async (desk: Desk, { name, procedure, inputs }: Asked): Promise<BenchLine[]> => {
  const times: number[] = []
  for (let run = 0; run < runs; run += 1) {
    const began = performance.now()
    await call(desk, procedure, inputs[run % inputs.length])
    times.push(performance.now() - began)
  }
  const [median, p95] = [at(times, 0.5), at(times, 0.95)]
  return [
    { name: `${name}, median`, value: Number(median.toFixed(1)), unit: 'ms', budget: `under ${budgetMs} ms`, ok: median < budgetMs },
    { name: `${name}, 95th percentile`, value: Number(p95.toFixed(1)), unit: 'ms', budget: `under ${budgetMs} ms`, ok: p95 < budgetMs },
  ]
}

const measureOpening = async (folder: string, name: string): Promise<BenchLine> => {
  const began = performance.now()
  const opened = await openDesk(folder)
  await call(opened.desk, 'rigs.list', {})
  const value = Math.round(performance.now() - began)
  await opened.close()
  return { name, value, unit: 'ms', budget: `under ${openBudgetMs} ms`, ok: value < openBudgetMs }
}

const someIds = async (desk: Desk): Promise<{ surveyIds: string[]; rigIds: string[] }> => {
  const { surveys } = await desk['surveys.list']({ offset: 4_000, limit: 50 })
  return { surveyIds: surveys.map(({ id }) => id), rigIds: surveys.map(({ rigId }) => rigId) }
}

/** A yard of 10,000 surveys with about a million answers: opening it, its lists, a survey, searches. */
export const benchYard = async (): Promise<BenchLine[]> => {
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-yard-'))
  try {
    await makeBigYard(folder)
    const lines = [await measureOpening(folder, 'yard of 10,000 surveys: opened and answering')]
    await writeFile(openMarker(folder), '')
    lines.push(await measureOpening(folder, 'the same after an unclean end, looked through first'))
    const opened = await openDesk(folder)
    const { surveyIds, rigIds } = await someIds(opened.desk)
    for (const each of asked(surveyIds, rigIds)) lines.push(...(await measure(opened.desk, each)))
    await opened.close()
    return lines
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
