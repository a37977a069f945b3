import { existsSync, readdirSync } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { answerCall } from '../desk/answer-call'
import { openDesk, type OpenedDesk } from '../desk/open'
import { fill } from './columns'
import type { Command } from './command'

const words = en.commandLine
const defaultFolder = 'bunkwright-example'

/** Writes every report of the example beside its yard. */
const writeReports = async (opened: OpenedDesk, folder: string): Promise<string[]> => {
  const { reports } = await opened.desk['reports.list']({ offset: 0, limit: 200 })
  const files: string[] = []
  for (const { id } of reports) {
    const pdf = await opened.reportPdf(id)
    if (!pdf) continue
    const file = join(folder, pdf.fileName)
    await writeFile(file, pdf.bytes)
    files.push(file)
  }
  return files
}

/** `example`: no window; the example yard in a folder of its own, and its report. */
export const example: Command = {
  words: [0, 1],
  options: [],
  run: async ({ words: [named = defaultFolder], workingFolder }) => {
    const folder = resolve(workingFolder, named)
    if (existsSync(folder) && readdirSync(folder).length > 0) refuse('cli.folder-not-empty', { folder })
    const opened = await openDesk(folder)
    try {
      const reply = await answerCall(opened.desk, 'yard.openExample', {})
      if (!reply.ok) return refuse(reply.refusal.code, reply.refusal.values, reply.refusal.field)
      const reports = await writeReports(opened, folder)
      return { lines: [fill(words.exampleMade, { folder }), ...reports.map((file) => fill(words.wrote, { file }))], json: { folder, reports } }
    } finally {
      await opened.close()
    }
  },
}
