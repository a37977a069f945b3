import { dialog } from 'electron'
import { Refusal, type RefusalData } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { sayDate } from '../../shared-logic/words/say'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { openDesk, type OpenedDesk, type OpenOptions } from '../desk/open'
import { openBackup } from '../store/restore'

const words = en.doors.shell

interface Offered {
  readonly name: string
  readonly date: string
}

/** The newest good backup, where the refusal names one. */
const offeredBackup = ({ values }: RefusalData): Offered | undefined =>
  typeof values?.['backup'] === 'string' && typeof values['date'] === 'string' ? { name: values['backup'], date: values['date'] } : undefined

/** Says why the yard cannot be opened; answers whether the backup that was offered is wanted. */
const explain = async (refusal: RefusalData, offered: Offered | undefined): Promise<boolean> => {
  const sentence = sayRefusal(en, refusal)
  const { response } = await dialog.showMessageBox({
    type: 'error',
    title: words.title,
    message: words.cannotOpen,
    detail: offered ? `${sentence}\n\n${words.backupFound.replace('{date}', sayDate(offered.date))}` : sentence,
    buttons: offered ? [words.openBackup, words.close] : [words.close],
    defaultId: offered ? 1 : 0,
    cancelId: offered ? 1 : 0,
    noLink: true,
  })
  return offered !== undefined && response === 0
}

/** Opens the yard. A refusal is shown with its sentence and, where a good backup is there, with the offer to open it; undefined when the person closes instead. */
export const openOrExplain = async (folder: string, options: OpenOptions): Promise<OpenedDesk | undefined> => {
  for (;;) {
    try {
      return await openDesk(folder, options)
    } catch (fault) {
      if (!(fault instanceof Refusal)) throw fault
      const offered = offeredBackup(fault.data)
      if (!(await explain(fault.data, offered))) return undefined
      if (offered) await restore(folder, offered)
    }
  }
}

const restore = async (folder: string, { name }: Offered): Promise<void> => {
  try {
    openBackup(folder, name, { clock: () => new Date() })
  } catch (fault) {
    if (!(fault instanceof Refusal)) throw fault
    await explain(fault.data, undefined)
  }
}
