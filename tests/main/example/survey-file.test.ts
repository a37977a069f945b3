import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { assessFile } from '../../../shared-logic/survey/file-to-survey'
import { summarize } from '../../../shared-logic/survey/assess'
import { measuredLength } from '../../../shared-logic/marking/length-of'
import { surveyFileSchema } from '../../../shared-logic/survey/survey-file'

const folder = 'assets/example'
const file = surveyFileSchema.parse(JSON.parse(readFileSync(join(folder, 'survey.json'), 'utf8')))

describe('the example survey as one file', () => {
  it('answers every check its rig is asked before a tow', () => {
    expect(summarize(assessFile(file))).toMatchObject({ verdict: 'fail', open: 0 })
  })
  it('names pictures that lie beside it', () => {
    expect(file.photographs.length).toBeGreaterThan(11)
    expect(file.photographs.filter(({ path }) => !existsSync(join(folder, path)))).toEqual([])
  })
  it('marks up a picture whose known length measures a strap as wide as it was drawn, 50 mm, within what it says', () => {
    const strap = file.photographs.find(({ path }) => path === 'strap-frayed.jpg')?.marks
    const width = strap?.marks.find((mark) => mark.kind === 'length')
    if (strap?.scale === undefined || width?.kind !== 'length') throw new Error('the strap is not measured')
    const { lengthM, uncertaintyM } = measuredLength(strap.scale, strap, width.from, width.to)
    expect(Math.abs(lengthM - 0.05)).toBeLessThanOrEqual(uncertaintyM)
    expect(uncertaintyM).toBeLessThan(0.001)
  })
})
