import { describe, expect, it } from 'vitest'
import { tandem } from '../../../main/example/rigs'
import { tieDownPlanOf } from '../../../shared-logic/lashing/plan'
import { composeReport } from '../../../shared-logic/report/compose'
import { reportDocumentSchema, type ReportDocument } from '../../../shared-logic/report/document'
import type { SumsSheet } from '../../../shared-logic/report/sums-document'
import type { Rig } from '../../../shared-logic/rig/rig'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf } from '../../../shared-logic/sums/sums'
import { formatQuantity } from '../../../shared-logic/units/convert'
import { en } from '../../../shared-logic/words/en'
import { sampleReport, sampleSettings } from '../../main/report/sample-report'
import { sampleSurvey } from '../../main/report/sample-survey'

const reportOf = (rig: Rig, ruleBook: 'us' | 'eu' = 'us'): ReportDocument =>
  composeReport({ survey: { ...sampleSurvey(), rig, ruleBook }, settings: { ...sampleSettings, units: 'metric' }, number: 'BW-2026-0007', revision: 1, issuedAt: '2026-11-25T13:05:00Z', programVersion: '0.1.0', words: en })

const sheetOf = (document: ReportDocument, id: SumsSheet['id']): SumsSheet => {
  const found = document.sums?.sheets.find((sheet) => sheet.id === id)
  if (!found) throw new Error(`no sheet ${id}`)
  return found
}
const textsOf = ({ tables }: SumsSheet): string[][] => tables.flatMap(({ rows }) => rows.map((cells) => cells.map(({ text }) => text)))
const cautionsOf = ({ cautions }: ReportDocument): string[] => cautions.map(({ id }) => id)
const mass = (kg: number): string => formatQuantity('mass', kg, 'metric')

describe('the sums of a rig that is known well', () => {
  const document = reportOf(tandem)
  const sums = sumsOf(tandem, 'us', defaultSumsSettings)

  it('print load sheet, balance, tyres, coupling, brakes and tie-down, each with formula, source and what it was worked from', () => {
    expect(document.sums?.sheets.map(({ id }) => id)).toEqual(['load', 'balance', 'tyres', 'coupling', 'brakes', 'tie-down'])
    for (const sheet of document.sums?.sheets ?? []) {
      expect([sheet.id, sheet.formulas.length > 0, sheet.sources.length > 0, sheet.inputs.length > 0]).toEqual([sheet.id, true, true, true])
    }
  })

  it('the load sheet lists every mass with its place, and their total', () => {
    const rows = textsOf(sheetOf(document, 'load'))
    expect(rows).toContainEqual(['Boat, dry', '1,450 kg', '4.96 m', '1.15 m'])
    expect(rows.find(([name]) => name === 'Total')?.[1]).toBe(mass(sums.load.total.massKg ?? NaN))
  })

  it('every known limit stands there with load, rating, reserve and a bar as long as its use', () => {
    const [, limits] = sheetOf(document, 'load').tables
    const known = sums.load.lines.filter(({ limit }) => limit.ratingKg !== undefined)
    expect(limits?.rows.map(([name]) => name?.text)).toEqual(known.map(({ limit }) => en.sums.limits[limit.id]))
    const plate = limits?.rows[0]
    expect(plate?.[2]?.text).toBe('3,175 kg')
    expect(plate?.[4]?.bar?.used).toBeCloseTo((sums.load.total.massKg ?? NaN) / 3_175, 9)
    expect(plate?.[4]?.bar?.wanted).toBeCloseTo(0.85, 9)
  })

  it('names the tightest limit', () => {
    expect(sums.load.governing).toBe('tow vehicle, coupling load')
    expect(sheetOf(document, 'load').lines.map(({ text }) => text)).toContain('The tightest limit is: Tow vehicle, coupling load.')
  })

  it('the balance is drawn from the side and over the tanks, and held against the scales', () => {
    const { figures, tables } = sheetOf(document, 'balance')
    expect(figures).toHaveLength(2)
    expect(figures[0]?.alternative).toContain(mass(sums.balance.lever?.couplingKg ?? NaN))
    expect(tables[0]?.rows[1]?.map(({ text }) => text)).toEqual(['On the coupling', '240 kg', mass(sums.balance.lever?.couplingKg ?? NaN), mass(240 - (sums.balance.lever?.couplingKg ?? NaN))])
  })

  it('the tie-down tells each direction by both federal methods, and the weakest first', () => {
    const sheet = sheetOf(document, 'tie-down')
    const { weakest, methods } = tieDownPlanOf(tandem, 'us')
    expect(sheet.tables.slice(0, 2).map(({ rows }) => rows.length)).toEqual([5, 5])
    expect(methods).toHaveLength(2)
    expect(sheet.lines[0]?.text).toContain(formatQuantity('force', weakest?.heldN ?? NaN, 'metric'))
    expect(sheet.figures).toHaveLength(1)
  })

  it('tyres, coupling and brakes each stand on their own formula and source', () => {
    const grounds = (['tyres', 'coupling', 'brakes'] as const).map((id) => sheetOf(document, id))
    expect(grounds.map(({ formulas: [formula] }) => formula)).toEqual([en.sums.tyres.formula, en.sums.coupling.formula, en.sums.brakes.formula])
    const [tyres, coupling, brakes] = grounds.map(({ inputs }) => inputs.map(({ label }) => label))
    expect(tyres).toEqual(expect.arrayContaining(['Load index', 'Axle loads']))
    expect(coupling).toEqual(expect.arrayContaining(['Coupler', 'Maximum mass of the tow vehicle', 'Breaking force of each chain']))
    expect(brakes).toEqual(expect.arrayContaining(['Brakes', 'Braked axles', 'Travel of the actuator']))
  })

  it('the load sheet tells how full each tank is reckoned, and the tie-down where each strap holds', () => {
    expect(sheetOf(document, 'load').inputs.map(({ label }) => label)).toEqual(expect.arrayContaining(['Petrol', 'Share of the tank filled (1)']))
    const ends = sheetOf(document, 'tie-down').tables.at(-1)
    expect(ends?.heading).toBe(en.report.sums.strapEnds)
    expect(ends?.rows).toHaveLength(tandem.tieDown?.straps.length ?? 0)
    expect(ends?.rows.map(([, , boat]) => boat?.text)).toContain('1.15 m; in the middle; 1.15 m')
  })

  it('names the European category of the trailer by the European book alone', () => {
    const told = (book: 'us' | 'eu'): boolean => sheetOf(reportOf(tandem, book), 'brakes').lines.some(({ text }) => text.startsWith('Category O2'))
    expect([told('us'), told('eu')]).toEqual([false, true])
  })

  it('a verdict never stands without its word', () => {
    const lines = document.sums?.sheets.flatMap((sheet) => sheet.lines) ?? []
    expect(lines.filter(({ verdict, word }) => verdict !== undefined && word !== en.verdicts[verdict])).toEqual([])
  })

  it('bring their cautions: the balance changes, straps are looked at again', () => {
    expect(cautionsOf(document)).toEqual(expect.arrayContaining(['balance changes', 'straps']))
    expect(cautionsOf(document)).not.toContain('each axle weighed')
  })

  it('survive being kept as data, word for word and stroke for stroke', () => {
    expect(reportDocumentSchema.parse(JSON.parse(JSON.stringify(document))).sums).toEqual(document.sums)
  })

  it('in Europe stand by EN 12195-1', () => {
    expect(sheetOf(reportOf(tandem, 'eu'), 'tie-down').tables[0]?.heading).toContain('EN 12195-1')
  })
})

describe('the sums of a rig that is not', () => {
  it('say what they wait for, and print no number that rests on it', () => {
    const { ballToAxleM: _, ...trailer } = tandem.trailer
    const balance = sheetOf(reportOf({ ...tandem, trailer }), 'balance')
    expect(balance.figures).toEqual([])
    expect(balance.lines.find(({ text }) => text.startsWith('Waits for'))).toMatchObject({ verdict: 'not seen', text: expect.stringContaining('Ball centre to axle') })
  })

  it('name a field that cannot be right, and rest nothing on it', () => {
    const document = reportOf({ ...tandem, loading: { ...tandem.loading, stemAftOfBallM: 9 } })
    expect(sheetOf(document, 'load').lines[0]).toMatchObject({ verdict: 'not seen' })
    expect(sheetOf(document, 'balance').figures.map(({ alternative }) => alternative)).toEqual([])
  })

  it('show bounds as bounds: no bar is drawn for a load that is only known between two figures', () => {
    const { weighings: _, ...rig } = tandem
    const document = reportOf({ ...rig, loading: { ...tandem.loading, tanks: [{ aftOfStemM: 3.7 }, { fill: 0, aftOfStemM: 5.6 }] } })
    const [items, limits] = sheetOf(document, 'load').tables
    expect(items?.rows.find(([name]) => name?.text === 'Petrol tank')?.[1]?.text).toBe(`0 kg to ${mass(0.25 * 0.95 * 775)}`)
    expect(limits?.rows.flatMap((cells) => cells.filter(({ bar }) => bar !== undefined))).toEqual([])
    expect(sheetOf(document, 'balance').figures[0]?.alternative).toBe(en.report.sums.side.alternativeWaits)
  })

  it('print the load sheet alone where only the register is filled in', () => {
    const { name, trailer, boat } = tandem
    expect(reportOf({ name, trailer, ...(boat && { boat }) }).sums?.sheets.map(({ id }) => id)).toEqual(['load'])
  })

  it('print nothing where no mass is known', () => {
    expect(reportOf({ name: 'Rig', trailer: {} }).sums).toBeUndefined()
  })

  it('ask for each axle on scales where axles spring by themselves', () => {
    const document = reportOf({ ...tandem, stance: { ...tandem.stance, loadSharing: 'independent' } })
    expect(cautionsOf(document)).toContain('each axle weighed')
    expect(sheetOf(document, 'balance').lines.map(({ text }) => text)).toContain(en.sums.balance.mustBeWeighed)
  })
})

it('a report from before there were sums is read as it was', () => {
  const { sums: _, ...old } = sampleReport()
  expect(reportDocumentSchema.parse(JSON.parse(JSON.stringify(old)))).toEqual(JSON.parse(JSON.stringify(old)))
})
