import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { lines, tell } from './lines.mjs'
import { place } from './places.mjs'

const longestFetchMs = 180_000
const failureLastsMs = 24 * 3_600_000
const failurePath = place('node_modules', '.bunkwright-no-electron')

const folder = (...parts) => place('node_modules', 'electron', ...parts)

/** Electron's program where it lies, without asking its package: that would fetch it, for as long as it takes. */
const installedElectron = () => {
  if (!existsSync(folder('path.txt')) && !process.env.ELECTRON_OVERRIDE_DIST_PATH) return undefined
  const name = existsSync(folder('path.txt')) ? readFileSync(folder('path.txt'), 'utf8') : 'electron'
  const path = join(process.env.ELECTRON_OVERRIDE_DIST_PATH ?? folder('dist'), name)
  return existsSync(path) ? path : undefined
}

const failedLately = () => {
  const stat = statSync(failurePath, { throwIfNoEntry: false })
  return stat !== undefined && Date.now() - stat.mtimeMs < failureLastsMs
}

const fetchElectron = (node) => {
  if (failedLately() || !existsSync(folder('install.js'))) return
  tell(lines.fetchingElectron)
  const fetched = spawnSync(node, [folder('install.js')], { stdio: 'ignore', timeout: longestFetchMs, killSignal: 'SIGKILL' })
  if (fetched.status !== 0) writeFileSync(failurePath, '')
}

const hasDisplay = () => process.platform !== 'linux' || Boolean(process.env.DISPLAY) || Boolean(process.env.WAYLAND_DISPLAY)

/** Electron's program, fetched within a bound when it is not there, or why there is none. A failure is remembered for a day. */
export const findElectron = (node) => {
  if (!hasDisplay()) return { why: 'display' }
  if (installedElectron() === undefined) fetchElectron(node)
  const path = installedElectron()
  return path === undefined ? { why: 'fetch' } : { path }
}
