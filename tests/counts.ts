import type { Reporter, TestModule } from 'vitest/node'

/** Ends a run with one plain line. */
export default class Counts implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const counts = { passed: 0, failed: 0, skipped: 0 }
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const { state } = test.result()
        counts[state === 'passed' || state === 'failed' ? state : 'skipped'] += 1
      }
    }
    console.log(`${counts.passed} passed, ${counts.failed} failed${counts.skipped > 0 ? `, ${counts.skipped} skipped` : ''}`)
  }
}
