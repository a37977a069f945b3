import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { lines, tell } from './lines.mjs'
import { place, root } from './places.mjs'

const readJson = (...parts) => {
  try {
    return JSON.parse(readFileSync(place(...parts), 'utf8'))
  } catch {
    return undefined
  }
}

/**
 * Whether what npm has installed is what the lock file asks for. npm writes its own list when an installation is done,
 * so one that broke off has none. Optional packages may be missing: not every system has them.
 */
export const isInstalled = () => {
  const wanted = readJson('package-lock.json')?.packages
  const there = readJson('node_modules', '.package-lock.json')?.packages
  if (!wanted || !there) return false
  return Object.entries(wanted).every(([name, { version, optional, devOptional }]) => {
    if (name === '') return true
    const found = there[name]
    return found === undefined ? (optional ?? devOptional) === true : found.version === version
  })
}

/** npm as it was called, else the one on the path. Its output goes to standard error. */
const npm = (args, quiet = false) => {
  const own = process.env.npm_execpath
  const stdio = ['ignore', quiet ? 'ignore' : 2, quiet ? 'ignore' : 2]
  if (own !== undefined && basename(own) === 'npm-cli.js' && existsSync(own)) return spawnSync(process.execPath, [own, ...args], { cwd: root, stdio }).status === 0
  return spawnSync('npm', args, { cwd: root, stdio, shell: process.platform === 'win32' }).status === 0
}

/** Node that came with the packages, when it is there. */
export const packagedNode = () => {
  const path = place('node_modules', 'node', 'bin', process.platform === 'win32' ? 'node.exe' : 'node')
  return existsSync(path) ? path : undefined
}

/** No install script of any package is run but the one that fetches Node, which may fail: the machine's own then serves. */
export const install = () => {
  if (isInstalled()) return
  tell(lines.installing)
  const done = npm(['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error', '--no-update-notifier'])
  if (!done) {
    tell(lines.installFailed)
    process.exit(1)
  }
  if (existsSync(place('node_modules', 'node'))) npm(['rebuild', 'node', '--loglevel=error', '--no-update-notifier'], true)
}
