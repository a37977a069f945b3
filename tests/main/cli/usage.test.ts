import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openWorkplace, type Workplace } from './command-line'

let at: Workplace
beforeAll(async () => {
  at = await openWorkplace()
})
afterAll(() => at.clear())

describe('a call that is put wrongly', () => {
  it.each<[string[]]>([
    [[]], [['sing']], [['__proto__']], [['judge']], [['judge', 'a.json', 'b.json']], [['judge', 'a.json', '--folder', 'x']], [['list', '-o', 'x']], [['list', 'x']],
    [['schema']], [['schema', 'rig']], [['show']], [['report']], [['list', '--colour']], [['list', '--folder']],
  ])('%j is answered with the usage on standard error, exit code 2', async (args) => {
    const { code, out, error } = await at.run(...args)
    expect([code, out]).toEqual([2, ''])
    expect(error).toContain('Usage: bunkwright COMMAND')
    expect(error).toContain('judge SURVEY.json')
  })

  it.each([['help'], ['--help'], ['-h']])('%s is answered with the usage, exit code 0', async (word) => {
    const { code, out } = await at.run(word)
    expect(code).toBe(0)
    expect(out).toContain('Exit code 0: done. 1: input refused')
  })
})
