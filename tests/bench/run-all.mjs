import { spawnSync } from 'node:child_process'
import { availableParallelism, loadavg } from 'node:os'
import { join } from 'node:path'
import { build } from 'vite'

/** What is measured: a file of this folder and the function in it that answers lines of name, value, unit, budget and ok. */
const benches = { sums: 'benchSums', shutter: 'benchShutter', drag: 'benchDrag', start: 'benchStart', yard: 'benchYard', intake: 'benchIntake', report: 'benchReport', rust: 'benchRust', slider: 'benchSlider', 'contact-sheet': 'benchContactSheet', 'intake-window': 'benchIntakeWindow' }
const folder = join('tests', 'output', 'bench')

const bundle = (names) =>
  build({
    configFile: false, logLevel: 'error',
    build: { ssr: true, outDir: folder, emptyOutDir: true, rolldownOptions: { input: Object.fromEntries(names.map((name) => [name, join('tests', 'bench', `${name}.ts`)])), output: { entryFileNames: '[name].mjs' } } },
  })

/** Each in a process of its own, so that one's memory is not another's. */
const runOne = (name) => {
  const script = `const { ${benches[name]}: bench } = await import(${JSON.stringify(new URL(`../output/bench/${name}.mjs`, import.meta.url).href)}); process.stdout.write(JSON.stringify(await bench()))`
  const { status, stdout } = spawnSync(process.execPath, ['--expose-gc', '--input-type=module', '--eval', script], { stdio: ['ignore', 'pipe', 'inherit'], encoding: 'utf8', maxBuffer: 10_000_000 })
  if (status !== 0) return [{ name: `${name}: broke off`, value: Number.NaN, unit: '', budget: 'to the end', ok: false }]
  return JSON.parse(stdout)
}

const table = (lines) => {
  const rows = [['', 'measured', 'budget', ''], ...lines.map(({ name, value, unit, budget, ok }) => [name, `${value ?? '–'} ${unit}`.trim(), budget, ok === undefined ? 'not measured' : ok ? 'ok' : 'OVER'])]
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)))
  return rows.map((row) => row.map((cell, column) => cell.padEnd(widths[column])).join('  ').trimEnd()).join('\n')
}

const asked = process.argv.slice(2)
const unknown = asked.filter((name) => !Object.hasOwn(benches, name))
if (unknown.length > 0) {
  console.error(`Usage: npm run bench [-- ${Object.keys(benches).join(' | ')}]`)
  process.exit(2)
}
const names = asked.length > 0 ? asked : Object.keys(benches)
const [busy = 0] = loadavg()
await bundle(names)
const lines = names.flatMap(runOne)
console.log(table(lines))
if (busy > availableParallelism()) console.log(`The machine was at work already (load ${busy.toFixed(1)} on ${availableParallelism()} cores): measure again when it is idle.`)
process.exit(lines.every(({ ok }) => ok !== false) ? 0 : 1)
