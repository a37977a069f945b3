// Asks an independent validator whether files are valid PDF/A-3a and PDF/UA-1.
// node tests/validators/pdf/run.mjs FILE.pdf …   exits 0 valid, 1 invalid with the reasons, 2 not available.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const here = fileURLToPath(new URL('.', import.meta.url))
const cache = fileURLToPath(new URL('../../../node_modules/.cache/pdf-validator', import.meta.url))
const classpathFile = join(cache, 'classpath.txt')
const flavours = { '3a': 'PDF/A-3a', ua1: 'PDF/UA-1' }

const unavailable = (why) => {
  console.error(`PDF validator not available: ${why}`)
  process.exit(2)
}

const knownClasspath = () => {
  if (!existsSync(classpathFile)) return undefined
  const classpath = readFileSync(classpathFile, 'utf8').trim()
  return classpath !== '' && classpath.split(delimiter).every((jar) => existsSync(jar)) ? classpath : undefined
}

/** Fetches the validator by Maven once; later runs take it from Maven's own store. */
const fetchClasspath = () => {
  mkdirSync(cache, { recursive: true })
  const maven = spawnSync('mvn', ['-q', '-B', '-f', join(here, 'pom.xml'), 'dependency:build-classpath', `-Dmdep.outputFile=${classpathFile}`], { encoding: 'utf8', timeout: 300_000 })
  if (maven.error) unavailable(`Maven does not start (${maven.error.message})`)
  if (maven.status !== 0) unavailable(`Maven could not fetch it\n${maven.stdout.slice(-800)}`)
  return knownClasspath() ?? unavailable('Maven named no files')
}

/** The reasons a file is not of a flavour; none when it is valid. */
const objections = (classpath, flavour, file) => {
  const java = spawnSync('java', ['-cp', classpath, 'org.verapdf.apps.GreenfieldCliWrapper', '-f', flavour, '--format', 'text', '-v', file], { encoding: 'utf8', timeout: 60_000, stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 64 * 1024 * 1024 })
  if (java.error) unavailable(`Java does not start (${java.error.message})`)
  const verdict = java.stdout.split('\n').find((line) => line.startsWith('PASS ') || line.startsWith('FAIL '))
  if (verdict === undefined) return [`the validator gave no verdict: ${(java.stdout + java.stderr).trim().slice(-800)}`]
  return verdict.startsWith('PASS ') ? [] : java.stdout.split('\n').filter((line) => line.trim() !== '').slice(0, 60)
}

const files = process.argv.slice(2)
if (files.length === 0) {
  console.error('usage: node tests/validators/pdf/run.mjs FILE.pdf …')
  process.exit(1)
}
const java = spawnSync('java', ['-version'], { encoding: 'utf8' })
if (java.error || java.status !== 0) unavailable('there is no Java')
const classpath = knownClasspath() ?? fetchClasspath()
let invalid = 0
for (const file of files) {
  if (!existsSync(file)) {
    console.error(`${file}: no such file`)
    invalid += 1
    continue
  }
  for (const [flavour, name] of Object.entries(flavours)) {
    const reasons = objections(classpath, flavour, file)
    console.log(`${file}: ${reasons.length === 0 ? 'valid' : 'NOT valid'} ${name}`)
    for (const reason of reasons) console.log(`  ${reason}`)
    if (reasons.length > 0) invalid += 1
  }
}
process.exit(invalid === 0 ? 0 : 1)
