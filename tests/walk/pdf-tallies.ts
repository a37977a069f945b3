import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { catalogue } from '../../shared-logic/checks/catalogue'
import { assess, summarize, summarizeByStation, type Summary } from '../../shared-logic/survey/assess'
import { factsOf } from '../../shared-logic/survey/facts'
import { findingsOf } from '../../shared-logic/survey/findings'
import type { Survey } from '../../shared-logic/survey/records'
import { stations, type StationId } from '../../shared-logic/survey/station'
import { verdicts } from '../../shared-logic/survey/verdict'
import { en } from '../../shared-logic/words/en'
import { reportWords } from '../../shared-logic/words/en/report'
import { pageTexts } from '../main/report/read-pdf'

/** What a report comes to, whichever side it is read from. Counts stand in the order of `verdicts`. */
export interface Counted {
  readonly whole: readonly number[]
  readonly byStation: Readonly<Partial<Record<StationId, readonly number[]>>>
  readonly findings: number
  readonly photographs: number
}

export interface ReadReport {
  readonly counted: Counted
  readonly text: string
  readonly title: string
}

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)

/** The figures of one line of the tally table: its name, a verdict in words, then one figure a verdict. */
const tallyLine = (table: string, name: string): number[] | undefined => {
  const found = new RegExp(`${escaped(name)} [A-Z][^\\d]*?${verdicts.map(() => String.raw`(\d+)`).join(' ')}`).exec(table)
  return found?.slice(1).map(Number)
}

/** Reads an issued report with a PDF reader that is not the writer, from its printed words alone. */
export const readReport = async (bytes: Uint8Array): Promise<ReadReport> => {
  const pdf = await getDocument({ data: bytes, useSystemFonts: false, verbosity: 0 }).promise
  const text = (await pageTexts(pdf)).join(' ')
  const [, table = ''] = text.split(new RegExp(`${escaped(reportWords.labels.stations)} (?=${escaped(reportWords.labels.station)})`))
  const outline = await pdf.getOutline()
  const titleOf = (await pdf.getMetadata()).info
  const numbered = [...text.matchAll(new RegExp(`${reportWords.labels.photograph} (\\d+)`, 'g'))].map(([, number]) => Number(number))
  const byStation = Object.fromEntries(stations.flatMap((station) => {
    const line = tallyLine(table, en.stations[station])
    return line === undefined ? [] : [[station, line]]
  }))
  return {
    text,
    title: 'Title' in titleOf ? String(titleOf.Title) : '',
    counted: {
      whole: tallyLine(table, reportWords.labels.whole) ?? [],
      byStation,
      findings: outline.find(({ title }) => title === reportWords.labels.findings)?.items.length ?? 0,
      photographs: Math.max(0, ...numbered),
    },
  }
}

const counts = ({ tallies }: Summary): number[] => verdicts.map((verdict) => tallies[verdict])

/** The same, from the survey as the desk keeps it. */
export const countSurvey = (survey: Survey): Counted => {
  const assessed = assess(catalogue, factsOf(survey))
  return {
    whole: counts(summarize(assessed)),
    byStation: Object.fromEntries(summarizeByStation(assessed).map(({ station, summary }) => [station, counts(summary)])),
    findings: findingsOf(assessed).length,
    photographs: survey.photographs.filter(({ isPrinted }) => isPrinted).length,
  }
}
