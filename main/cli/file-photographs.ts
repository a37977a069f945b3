import { readFile, realpath } from 'node:fs/promises'
import { basename, dirname, resolve, sep } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { checkLayer } from '../../shared-logic/marking/check-layer'
import type { Photograph } from '../../shared-logic/survey/records'
import type { FilePhotograph } from '../../shared-logic/survey/survey-file'
import type { Shelf } from '../photos/shelf'

/** The file's bytes; its real place, links followed, must lie in the survey file's folder or below it. */
const bytesOf = async (folder: string, path: string): Promise<Uint8Array> => {
  const home = await realpath(folder)
  const place = await realpath(resolve(home, path)).catch(() => refuse('survey-file.photograph-missing', { path }))
  if (!place.startsWith(home.endsWith(sep) ? home : home + sep)) return refuse('survey-file.photograph-outside', { path })
  return readFile(place).catch(() => refuse('survey-file.photograph-missing', { path }))
}

/** Takes a survey file's photographs onto a shelf, in their order. Refuses the first that cannot be taken, by name. */
export const takePhotographs = async (
  surveyFile: string,
  photographs: readonly FilePhotograph[],
  shelf: Shelf,
  circumstances: { readonly newId: () => string; readonly at: string },
): Promise<Photograph[]> => {
  const taken: Photograph[] = []
  for (const { path, check, position, caption, quarterTurns, marks } of photographs) {
    const fileName = basename(path)
    const original = await shelf.take(await bytesOf(dirname(surveyFile), path), fileName)
    if (marks !== undefined) checkLayer(marks, original)
    taken.push({
      id: circumstances.newId(),
      ...original,
      fileName,
      caption,
      addedAt: circumstances.at,
      source: 'file',
      quarterTurns,
      isPrinted: true,
      ...(marks !== undefined && { marks }),
      ...(check !== undefined && { checkId: check, position: position ?? 'rig' }),
    })
  }
  return taken
}
