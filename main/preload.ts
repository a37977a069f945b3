import { contextBridge, ipcRenderer } from 'electron'

/** The contract's channel; written out, for a sandboxed preload is one file without imports of ours. */
const deskChannel = 'desk'

/** The one bridge into the window: a call by name, answered by main after it has checked who asks. */
contextBridge.exposeInMainWorld('bunkwright', {
  call: (name: string, input: unknown, bytes?: Uint8Array): Promise<unknown> => ipcRenderer.invoke(deskChannel, name, input, bytes),
})
