import { writeFileSync } from 'node:fs'
import type { Reporter, TestModule } from 'vitest/node'

/** Ends a run with one plain line; where `BUNKWRIGHT_COUNTS` names a file, the counts go there instead, for `npm test` to add up. */
export default class Counts implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const counts = { passed: 0, failed: 0, skipped: 0 }
    for (const module of modules) {
      // A file that could not be read has no tests to count: it is one failure.
      if (module.state() === 'failed' && [...module.children.allTests('failed')].length === 0) counts.failed += 1
      for (const test of module.children.allTests()) {
        const { state } = test.result()
        counts[state === 'passed' || state === 'failed' ? state : 'skipped'] += 1
      }
    }
    counts.failed += errors.length
    const file = process.env['BUNKWRIGHT_COUNTS']
    if (file !== undefined) writeFileSync(file, JSON.stringify(counts))
    else console.log(`${counts.passed} passed, ${counts.failed} failed${counts.skipped > 0 ? `, ${counts.skipped} skipped` : ''}`)
  }
}
