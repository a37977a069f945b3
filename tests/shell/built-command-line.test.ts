import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { tandem } from '../main/cli/command-line'
import { differenceOf } from '../main/photos/pictures'
import { sceneAt } from '../main/photos/scene'

const bundle = fileURLToPath(new URL('../../out/main/cli.js', import.meta.url))
let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'bunkwright-built-cli-'))
  writeFileSync(join(folder, 'survey.json'), JSON.stringify(tandem))
  writeFileSync(join(folder, 'wrong.json'), JSON.stringify({ ...tandem, purpose: 'fun' }))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const run = (...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, ...args], { cwd: folder, encoding: 'utf8' })
  return { status, stdout, stderr }
}

describe('the built command line, as a script calls it', () => {
  it('leaves with 0 and data on standard output when done', () => {
    const { status, stdout, stderr } = run('judge', 'survey.json', '--json')
    expect([status, stderr]).toEqual([0, ''])
    expect(JSON.parse(stdout)).toMatchObject({ verdict: 'advisory' })
  })

  it('leaves with 1 and the sentence on standard error when the input is refused', () => {
    const { status, stdout, stderr } = run('judge', 'wrong.json')
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toMatch(/^purpose: choose one of purchase, hire out/)
  })

  it('leaves with 2 and the usage on standard error when it is called wrongly', () => {
    const { status, stdout, stderr } = run('judge')
    expect([status, stdout]).toEqual([2, ''])
    expect(stderr).toContain('Usage: bunkwright COMMAND')
  })

  it('reads a HEIC, in a thread of its own that the bundle carries with it', async () => {
    copyFileSync(fileURLToPath(new URL('../main/photos/fixtures/scene.heic', import.meta.url)), join(folder, 'hub.heic'))
    const { status, stderr } = run('measure', 'hub.heic', '--scale', '0,10 480,10 480 mm', '--outline', '100,70 200,70 200,170 100,170', '-o', 'copy.jpg', '--json')
    expect([status, stderr]).toEqual([0, ''])
    const copy = await readFile(join(folder, 'copy.jpg'))
    expect(await sharp(copy).metadata()).toMatchObject({ format: 'jpeg', width: 480, height: 320 })
    // Between the marks the copy still shows the scene.
    for (const [x, y] of [[150, 120], [400, 80], [60, 280], [420, 260]] as const) {
      const [red, green, blue] = await sharp(copy).extract({ left: x, top: y, width: 1, height: 1 }).raw().toBuffer()
      expect(differenceOf([red ?? -1, green ?? -1, blue ?? -1], sceneAt(x, y))).toBeLessThan(16)
    }
  })

  it('writes a report from a survey file', () => {
    const { status, stdout } = run('report', 'survey.json', '-o', 'out.pdf', '--json')
    expect(status).toBe(0)
    expect(JSON.parse(stdout)).toMatchObject({ file: join(folder, 'out.pdf'), verdict: 'advisory' })
  })
})
