import { afterAll, beforeAll, expect, it } from 'vitest'
import { join } from 'node:path'
import type { MarkLayer } from '../../../shared-logic/marking/marks'
import { photograph } from '../host/running-host'
import { pageTexts, readPdf } from '../report/read-pdf'
import { openWorkplace, tandem, type Workplace } from './command-line'

let at: Workplace
beforeAll(async () => {
  at = await openWorkplace()
  await at.put('hub.jpg', await photograph(7))
})
afterAll(() => at.clear())

const layer: MarkLayer = { widthPx: 64, heightPx: 48, scale: { kind: 'length', from: [4, 40], to: [44, 40], lengthM: 0.1 }, marks: [{ kind: 'length', from: [10, 10], to: [30, 10] }, { kind: 'text', at: [32, 24], text: 'weeping seal' }] }
const reportOf = async (name: string, photographs: unknown) => {
  await at.put(`${name}.json`, { ...tandem, units: 'metric', photographs })
  return at.run('report', `${name}.json`, '-o', `${name}.pdf`)
}

it('a survey file’s photograph is printed turned, with its marks and its lengths', async () => {
  const { code, error } = await reportOf('marked', [{ path: 'hub.jpg', check: 'hubs.oil-level', position: 'axle 1 right', quarterTurns: 1, marks: layer }])
  expect([code, error]).toEqual([0, ''])
  const text = (await pageTexts(await readPdf(join(at.folder, 'marked.pdf')))).join(' ')
  expect(text).toContain('weeping seal')
  expect(text).toContain('known: 100 mm')
  expect(text).toMatch(/50 mm ± \d/)
})

it.each([
  ['leave the picture', { ...layer, marks: [{ kind: 'arrow', from: [10, 10], to: [65, 10] }] }, /Mark 1 leaves the picture/],
  ['were drawn on a picture of another size', { ...layer, widthPx: 48, heightPx: 64 }, /another size.*64 × 48 px/],
])('marks that %s are refused in a sentence, and no report is written', async (what, marks, sentence) => {
  const { code, out, error } = await reportOf(what.replaceAll(' ', '-'), [{ path: 'hub.jpg', marks }])
  expect(code).not.toBe(0)
  expect(out + error).toMatch(sentence)
})
