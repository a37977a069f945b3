import { resolve } from 'node:path'
import { dataFolder } from '../data-folder'
import { openDeskToRead, type OpenedToRead } from '../desk/open-to-read'
import type { Given } from './command'

/** Opens the yard that is meant, to read, for as long as `look` takes. */
export const readYard = async <Result>({ folder, workingFolder }: Given, look: (desk: OpenedToRead['desk'], opened: OpenedToRead) => Promise<Result>): Promise<Result> => {
  const opened = openDeskToRead(folder === undefined ? dataFolder() : resolve(workingFolder, folder))
  try {
    return await look(opened.desk, opened)
  } finally {
    await opened.close()
  }
}
