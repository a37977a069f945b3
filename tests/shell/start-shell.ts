import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { vi } from 'vitest'

const bundle = fileURLToPath(new URL('../../out/main/index.js', import.meta.url))

export type StandIn = typeof import('./stand-in/stand-in')

/** Starts the built main bundle on a folder, with a fresh stand-in, and waits until `isDone`. */
export const startShell = async (folder: string, isDone: (standIn: StandIn) => boolean, arrange: (standIn: StandIn) => void = () => undefined): Promise<StandIn> => {
  if (!existsSync(bundle)) throw new Error('the bundle is not built')
  vi.resetModules()
  const standIn = await import('./stand-in/stand-in')
  arrange(standIn)
  const before = process.argv
  process.argv = ['electron', 'the-program', '--folder', folder, '--some-switch-of-chromium']
  try {
    await import(bundle)
    await vi.waitUntil(() => isDone(standIn), { timeout: 20_000, interval: 20 })
  } finally {
    process.argv = before
  }
  return standIn
}

export const hasWindow = ({ record }: StandIn): boolean => (record.windows[0]?.loaded.length ?? 0) > 0
export const hasLeft = ({ record }: StandIn): boolean => record.exits.length > 0

/** Leaves as a person does, and waits until the yard is closed. */
export const leave = async (standIn: StandIn): Promise<void> => {
  standIn.app.quit()
  await vi.waitUntil(() => hasLeft(standIn), { timeout: 20_000, interval: 20 })
}
