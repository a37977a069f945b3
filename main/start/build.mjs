import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { lines, tell } from './lines.mjs'
import { nodeToUse } from './node-version.mjs'
import { place, root } from './places.mjs'

const sources = ['assets', 'main', 'renderer', 'shared-logic', 'electron.vite.config.ts', 'package.json', 'package-lock.json', 'tsconfig.json']
const outputs = [['main', 'index.js'], ['main', 'host.js'], ['main', 'cli.js'], ['preload', 'preload.cjs'], ['renderer', 'index.html'], ['renderer', 'phone.html']]
const stampPath = place('out', '.stamp')
const lockPath = place('node_modules', '.bunkwright-build')
const longestBuildMs = 120_000

const filesUnder = (path) => {
  const stat = statSync(place(path), { throwIfNoEntry: false })
  if (!stat) return []
  return stat.isDirectory() ? readdirSync(place(path)).toSorted().flatMap((name) => filesUnder(join(path, name))) : [path]
}

/** By content, not by date: a checkout or a copy changes dates without changing anything. */
const sourceHash = () => {
  const hash = createHash('sha256')
  for (const path of sources.flatMap(filesUnder)) hash.update(path).update('\0').update(readFileSync(place(path))).update('\0')
  return hash.digest('hex')
}

const isBuilt = (hash) => outputs.every((parts) => existsSync(place('out', ...parts))) && existsSync(stampPath) && readFileSync(stampPath, 'utf8') === hash

const isRunning = (pid) => {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

const take = () => {
  try {
    writeFileSync(lockPath, String(process.pid), { flag: 'wx' })
    return true
  } catch {
    const pid = existsSync(lockPath) ? Number(readFileSync(lockPath, 'utf8')) : 0
    if (pid > 0 && !isRunning(pid)) rmSync(lockPath, { force: true })
    return false
  }
}

/** One build at a time in one checkout; a lock left by a build that was killed is taken over. */
const withLock = async (work) => {
  while (!take()) await wait(200)
  try {
    return work()
  } finally {
    rmSync(lockPath, { force: true })
  }
}

/** Builds window, preload and main when their sources have changed since the last time. */
export const build = async () => {
  if (isBuilt(sourceHash())) return
  const node = nodeToUse()
  const failed = await withLock(() => {
    const hash = sourceHash()
    if (isBuilt(hash)) return false
    tell(lines.building)
    rmSync(stampPath, { force: true })
    const made = spawnSync(node, [place('node_modules', 'electron-vite', 'bin', 'electron-vite.js'), 'build', '--logLevel', 'warn'], { cwd: root, stdio: ['ignore', 2, 2], timeout: longestBuildMs })
    if (made.status !== 0) return true
    writeFileSync(stampPath, hash)
    return false
  })
  if (failed) {
    tell(lines.buildFailed)
    process.exit(1)
  }
}
