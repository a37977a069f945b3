import { cruise } from 'dependency-cruiser'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'

/** Holds the arrows of the house. A run that has read next to nothing is a failure: the parser may be missing. */

process.chdir(fileURLToPath(new URL('../..', import.meta.url)))
const fewestModules = 100
const rules = createRequire(import.meta.url)('./rules.cjs')

const { output } = await cruise(['main', 'shared-logic', 'renderer'], { ...rules.options, ruleSet: { forbidden: rules.forbidden }, validate: true, exclude: { path: '^main/start/' } })
const { summary } = output
for (const { rule, from, to, cycle } of summary.violations) console.error(`${rule.name}: ${from} → ${cycle ? cycle.map(({ name }) => name).join(' → ') : to}`)
console.log(`${summary.totalCruised} modules, ${summary.violations.length} arrows the wrong way`)
if (summary.totalCruised < fewestModules) console.error(`fewer than ${fewestModules} modules were read: is the parser @swc/core there?`)
process.exitCode = summary.violations.length > 0 || summary.totalCruised < fewestModules ? 1 : 0
