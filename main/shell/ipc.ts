import { ipcMain, type IpcMainInvokeEvent } from 'electron'
import { deskChannel, type Reply } from '../../shared-logic/contract/reply'
import { answerCall } from '../desk/answer-call'
import type { OpenedDesk } from '../desk/open'
import { isOurAddress } from './address'

/** Only the top frame of a window of ours, showing a page of ours, is answered. */
const isOurWindow = (event: IpcMainInvokeEvent): boolean => {
  const frame = event.senderFrame
  return frame !== null && frame.parent === null && isOurAddress(frame.url)
}

const refused = (code: string): Reply => ({ ok: false, refusal: { code } })

/** The one channel into the desk. What arrives is checked there against the contract; here, who sent it. */
export const answerWindow = (opened: OpenedDesk, onFault: (fault: unknown) => void): void =>
  ipcMain.handle(deskChannel, async (event, name: unknown, input: unknown, bytes: unknown): Promise<Reply> => {
    if (!isOurWindow(event)) return refused('door.stranger')
    if (typeof name !== 'string' || (bytes !== undefined && !(bytes instanceof Uint8Array))) return refused('door.not-json')
    return answerCall(opened.desk, name, input, bytes, onFault)
  })
