import { describe, expect, it } from 'vitest'
import { sampleHash, sampleSurvey } from '../../main/report/sample-survey'
import { sampleReport } from '../../main/report/sample-report'
import type { Harm } from '../../../shared-logic/proof/originals'

const survey = sampleSurvey({ photographs: 4 })
const report = (harmed?: readonly (readonly [number, Harm])[]) => sampleReport({}, { survey, ...(harmed && { harmed: new Map(harmed.map(([index, harm]) => [sampleHash(index), harm])) }) })
const methodOf = (document: ReturnType<typeof report>): string => document.method.filter((paragraph) => paragraph.startsWith('Photographs are')).join('\n')
const shownAs = (document: ReturnType<typeof report>, index: number) => document.photographs.find(({ sha256 }) => sha256 === sampleHash(index))

describe('what a report says of its originals', () => {
  it('is that they are unaltered only where every one was looked at and found so', () => {
    expect(methodOf(report([]))).toContain('kept unaltered under their SHA-256 fingerprint')
    expect(report([]).originalsHarmed).toBeUndefined()
    for (const harm of ['missing', 'changed', 'unreadable'] as const) {
      const document = report([[2, harm]])
      expect(methodOf(document)).not.toContain('unaltered')
      expect(shownAs(document, 2)?.original?.harm).toBe(harm)
      expect(document.photographs.filter(({ original }) => original !== undefined)).toHaveLength(1)
    }
  })

  it('does not call changed what could not be read', () => {
    const document = report([[0, 'unreadable']])
    expect(document.originalsHarmed).toContain(`Original not readable: photograph ${shownAs(document, 0)?.number}.`)
    expect(shownAs(document, 0)?.original?.sentence).toMatch(/^Not shown to be as it came in/)
  })

  it('is that a copy is printed only where one is, and the first page tells of one and of many', () => {
    const fromCopies = 'Where the picture of one of these is printed, it is from the copy made before.'
    expect(methodOf(report([[2, 'missing']]))).toContain(fromCopies)
    const without = (...gone: number[]) => methodOf(sampleReport({}, { survey, harmed: new Map([[sampleHash(1), 'missing'], [sampleHash(2), 'changed']]), withoutPicture: new Set(gone.map((index) => sampleHash(index))) }))
    expect(without(1)).toContain(fromCopies)
    expect(without(1, 2)).not.toContain(fromCopies)
    expect(methodOf(report([]))).not.toContain(fromCopies)
    expect(report([]).harmInShort).toBeUndefined()
    expect(report([[2, 'missing']]).harmInShort).toContain('Of one photograph the original was not found as it came in')
    expect(report([[2, 'missing'], [1, 'changed']]).harmInShort).toContain('Of 2 photographs the original was not found as it came in')
  })

  it('of a survey that is only a file is no more than that each was read: there was none to hold it to', () => {
    expect(methodOf(report())).toContain('fingerprint is of each file as it was read for this report')
    expect(methodOf(report())).not.toMatch(/unaltered|kept/)
  })

  it('is nothing where there is no photograph', () => expect(methodOf(sampleReport({ photographs: 0 }, { harmed: new Map() }))).toBe(''))
})
