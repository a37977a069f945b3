import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { findChromium } from './find-chromium.ts'

const walkFolder = join('tests', 'walk')
const bin = (name, ...parts) => join('node_modules', name, ...parts)
/** Every check beside the tests; each counts as one. */
const checks = [
  ['types', bin('typescript', 'bin', 'tsc'), ['--noEmit', '-p', 'tsconfig.json']],
  ['types of shared-logic alone', bin('typescript', 'bin', 'tsc'), ['--noEmit', '-p', 'shared-logic/tsconfig.json']],
  ['types of the renderer', bin('typescript', 'bin', 'tsc'), ['--noEmit', '-p', 'renderer/tsconfig.json']],
  ['lint', bin('oxlint', 'bin', 'oxlint'), ['--quiet']],
  ['boundaries', join('tests', 'boundaries', 'check.mjs'), []],
  ['nothing unused, nothing twice', bin('knip', 'bin', 'knip.js'), ['--no-progress', '--no-config-hints']],
]

const node = (script, args, environment = {}) => spawnSync(process.execPath, [script, ...args], { stdio: 'inherit', env: { ...process.env, ...environment } }).status === 0

const runCheck = ([name, script, args]) => {
  const ok = node(script, args)
  console.log(`${ok ? 'passed' : 'FAILED'}: ${name}`)
  return ok
}

/** Runs the projects and answers their counts; a run that broke down before it could count is one failure. */
const runTests = (projects) => {
  const folder = mkdtempSync(join(tmpdir(), 'bunkwright-counts-'))
  const file = join(folder, 'counts.json')
  try {
    const ok = node(bin('vitest', 'vitest.mjs'), ['run', '-c', 'tests/vitest.config.ts', '--passWithNoTests', ...projects.flatMap((name) => ['--project', name])], { BUNKWRIGHT_COUNTS: file })
    const counts = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : { passed: 0, failed: 0, skipped: 0 }
    return { ...counts, failed: !ok && counts.failed === 0 ? 1 : counts.failed }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const walkFiles = () => (existsSync(walkFolder) ? readdirSync(walkFolder, { recursive: true }).filter((name) => name.endsWith('.test.ts')) : [])

/** Without a browser the walk does not run: said plainly here, and a failure where the walk is needed. */
const sayNoWalk = (isNeeded) => {
  console.log(`Not run, for no Chromium or Chrome was found on this machine: ${walkFiles().map((name) => join(walkFolder, name)).join(', ')}`)
  console.log('To run them: install Chromium or Chrome (Debian and Ubuntu: apt-get install chromium; macOS: brew install --cask chromium; Windows: winget install Google.Chrome), or name one in BUNKWRIGHT_CHROMIUM.')
  if (isNeeded) console.log('FAILED: the walk is needed here.')
}

const chromium = findChromium()
const walkIsNeeded = Boolean(process.env.CI) || Boolean(process.env.BUNKWRIGHT_NEED_WALK)
const outcomes = checks.map(runCheck)
const counts = runTests(['unit', 'dom', 'shell', ...(chromium === undefined ? [] : ['walk'])])
if (chromium === undefined) sayNoWalk(walkIsNeeded)
if (counts.skipped > 0) console.log(`${counts.skipped} skipped`)
const passed = counts.passed + outcomes.filter(Boolean).length
const failed = counts.failed + outcomes.filter((ok) => !ok).length + (chromium === undefined && walkIsNeeded ? 1 : 0)
console.log(`${passed} passed, ${failed} failed`)
process.exit(failed === 0 && passed > 0 ? 0 : 1)
