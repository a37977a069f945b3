import type { OpenedDesk } from '../desk/open'
import { rendererFile } from './renderer-file'
import type { Served } from './served'

const photographPath = /^photographs\/([0-9a-f]{64})\/(small|large|original)$/
const reportPath = /^reports\/([0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12})\.pdf$/

const isSize = (size: string | undefined): size is 'small' | 'large' | 'original' => size === 'small' || size === 'large' || size === 'original'

/**
 * A photograph or a report's PDF, or undefined when `path` names none that is recorded. The path is only ever looked up
 * in the register, never joined to a folder.
 */
export const recordedFile = async (opened: OpenedDesk, path: string): Promise<Served | undefined> => {
  const [, sha256, size] = photographPath.exec(path) ?? []
  if (sha256 !== undefined && isSize(size)) {
    const found = await opened.photograph(sha256, size)
    return found && { bytes: found.bytes, type: found.type, cache: 'for ever', fileName: found.fileName }
  }
  const [, reportId] = reportPath.exec(path) ?? []
  if (reportId === undefined) return undefined
  const found = await opened.reportPdf(reportId)
  return found && { bytes: found.bytes, type: 'application/pdf', cache: 'ask again', fileName: found.fileName }
}

/** What both doors serve beside the calls: the built window, and what is recorded. */
export const serveFile = async (opened: OpenedDesk, rendererFolder: string, path: string): Promise<Served | undefined> =>
  path.startsWith('photographs/') || path.startsWith('reports/') ? recordedFile(opened, path) : rendererFile(rendererFolder, path)
