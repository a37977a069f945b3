import { createHash } from 'node:crypto'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Pixels } from '../../shared-logic/measuring/pixels'
import { colourless } from '../../shared-logic/rust/colourless'
import { featuresOf, rustMask } from '../../shared-logic/rust/find-rust'
import { mediansBy, quantile } from './judge'
import { onAllCores } from './on-all-cores'
import { type Judged, judgedSensitivity } from './scene-tasks'
import type { ScenePlan } from './scenes/plan'
import { renderScene } from './scenes/render-scene'

/** Odd seeds judge; whoever tunes the finder keeps to even ones. */
const judgingSeed = (index: number): number => 10_001 + 2 * index

/** All decoys of one kind together, worst first. */
function falseByKind(scenes: readonly Judged[]): { kind: string, falsePx: number, decoyPx: number }[] {
  const sums = new Map<string, { falsePx: number, decoyPx: number }>()
  for (const { decoys } of scenes) {
    for (const [kind, { falsePx, decoyPx }] of decoys) {
      const before = sums.get(kind) ?? { falsePx: 0, decoyPx: 0 }
      sums.set(kind, { falsePx: before.falsePx + falsePx, decoyPx: before.decoyPx + decoyPx })
    }
  }
  return [...sums].map(([kind, sum]) => ({ kind, ...sum })).toSorted((one, other) => other.falsePx / other.decoyPx - one.falsePx / one.decoyPx)
}

const falseShare = (decoys: readonly { falsePx: number, decoyPx: number }[]): number => decoys.reduce((sum, { falsePx }) => sum + falsePx, 0) / decoys.reduce((sum, { decoyPx }) => sum + decoyPx, 0)

/** Where the finder is weak: the median of every kind of light and ground, and the worst scenes. */
function weaknesses(scenes: readonly Judged[]): string {
  const by = (name: string, groupOf: (plan: ScenePlan) => string): string => `${name}: ${mediansBy(scenes.map(({ plan, agreement }) => ({ group: groupOf(plan), value: agreement })))}`
  const worst = scenes.toSorted((one, other) => one.agreement - other.agreement).slice(0, 12)
  return [
    by('light', (plan) => plan.light), by('ground', (plan) => plan.ground), by('rust', (plan) => plan.rust), by('member', (plan) => plan.member),
    by('surface', (plan) => (plan.wet ? 'wet' : 'dry')), by('shadow', (plan) => (plan.shadow ? 'shadow across' : 'no shadow')), by('JPEG', (plan) => (plan.jpegQuality < 75 ? '60 to 74' : '75 to 95')),
    `false on decoys: ${falseByKind(scenes).map(({ kind, falsePx, decoyPx }) => `${kind} ${((100 * falsePx) / decoyPx).toFixed(1)} %`).join(', ')}`,
    `worst: ${worst.map(({ seed, agreement, plan }) => `${seed} ${agreement.toFixed(2)} (${plan.ground}, ${plan.light}, ${plan.rust})`).join('; ')}`,
  ].join('\n')
}

const titleOf = ({ seed, plan, foundShare }: Judged): string => `${seed}: ${plan.ground}, ${plan.light}, ${plan.decoys.join(' and ')}: ${(100 * foundShare).toFixed(2)} %`

describe('the rust that the finder proposes in rendered photographs of known truth', () => {
  let scenes: readonly Judged[] = []
  let bare: readonly Judged[] = []
  let clean: readonly Judged[] = []
  beforeAll(async () => {
    const all = await onAllCores('find-rust', 'judged', [
      ...Array.from({ length: 200 }, (_, i) => ({ seed: judgingSeed(i), options: {} })),
      ...Array.from({ length: 30 }, (_, i) => ({ seed: judgingSeed(1000 + i), options: { rust: 'none' } as const })),
      ...Array.from({ length: 20 }, (_, i) => ({ seed: judgingSeed(2000 + i), options: { rust: 'none', decoys: [] } as const })),
    ])
    scenes = all.slice(0, 200)
    clean = all.slice(200, 230)
    bare = all.slice(230)
  }, 600_000)

  afterAll(() => {
    const agreements = scenes.map(({ agreement }) => agreement)
    const plain = scenes.map(({ plainAgreement }) => plainAgreement)
    console.log(`find rust over ${scenes.length} scenes: intersection over union median ${quantile(agreements, 0.5).toFixed(3)}, tenth percentile ${quantile(agreements, 0.1).toFixed(3)} (a plain hue rule ${quantile(plain, 0.5).toFixed(3)}, ${quantile(plain, 0.1).toFixed(3)}); false on decoys ${(100 * falseShare(falseByKind(scenes))).toFixed(2)} %; without rust ${(100 * Math.max(...bare.map(({ foundShare }) => foundShare))).toFixed(2)} % of a face at worst, beside decoys ${(100 * Math.max(...clean.map(({ foundShare }) => foundShare))).toFixed(2)} %`)
  })

  it('agrees with the truth by an intersection over union of 0.85 in the median and 0.70 at the tenth percentile of 200 scenes', () => {
    const agreements = scenes.map(({ agreement }) => agreement)
    expect(agreements).toHaveLength(200)
    expect(quantile(agreements, 0.5), weaknesses(scenes)).toBeGreaterThanOrEqual(0.85)
    expect(quantile(agreements, 0.1), weaknesses(scenes)).toBeGreaterThanOrEqual(0.7)
  })

  it('lies on red paint, orange carpet, lenses, wood, leaves, mud, hands and run-off stains with less than 2 % of their area, in the median scene and as a whole', () => {
    const withDecoys = scenes.filter(({ decoys }) => decoys.size > 0)
    expect(withDecoys.length).toBeGreaterThan(100)
    expect(quantile(withDecoys.map(({ decoys }) => falseShare([...decoys.values()])), 0.5), weaknesses(scenes)).toBeLessThan(0.02)
    expect(falseShare(falseByKind(scenes)), weaknesses(scenes)).toBeLessThan(0.02)
  })

  it('is under 0.5 % of every face that has neither rust nor anything like it on it', () => {
    expect(bare).toHaveLength(20)
    expect(bare.filter(({ foundShare }) => foundShare >= 0.005).map(titleOf)).toEqual([])
  })

  it('is under 0.5 % of the faces together, and nothing at all on most, where there is no rust but carpet, paint, leaves or mud', () => {
    expect(clean).toHaveLength(30)
    const shares = clean.map(({ foundShare }) => foundShare)
    expect(shares.reduce((total, share) => total + share, 0) / shares.length, clean.filter(({ foundShare }) => foundShare >= 0.005).map(titleOf).join('\n')).toBeLessThan(0.005)
    expect(quantile(shares, 0.5)).toBeLessThan(0.0005)
  })

  it('is no gift of the scenes: a plain hue rule, as it is often seen, stays well below the bar on the same scenes', () => {
    expect(quantile(scenes.map(({ plainAgreement }) => plainAgreement), 0.5)).toBeLessThan(0.75)
  })

  it('is looked for in every coloured scene, and in none of the same scenes made grey', async () => {
    expect(scenes.filter((scene) => scene.colourless).map(({ seed }) => seed)).toEqual([])
    for (let i = 0; i < 4; i += 1) expect(colourless(await madeGrey((await renderScene(judgingSeed(i))).pixels)), `seed ${judgingSeed(i)}`).toBe(true)
  }, 60_000)

  it('comes from scenes that are the same to the last byte each time they are rendered, and found the same each time', async () => {
    const one = await renderScene(judgingSeed(7))
    const again = await renderScene(judgingSeed(7))
    const other = await renderScene(judgingSeed(8))
    expect(sum(again.pixels.data)).toBe(sum(one.pixels.data))
    expect(sum(again.truth.data)).toBe(sum(one.truth.data))
    expect(sum(other.pixels.data)).not.toBe(sum(one.pixels.data))
    expect(sum(rustMask(featuresOf(again.pixels, again.face), judgedSensitivity).data)).toBe(sum(rustMask(featuresOf(one.pixels, one.face), judgedSensitivity).data))
  }, 60_000)
})

const sum = (data: Uint8Array | Uint8ClampedArray): string => createHash('sha256').update(data).digest('hex')

/** As a camera set to black and white stores it. */
async function madeGrey({ width, height, data }: Pixels): Promise<Pixels> {
  const jpeg = await sharp(data, { raw: { width, height, channels: 4 } }).removeAlpha().greyscale().jpeg({ quality: 80 }).toBuffer()
  const read = await sharp(jpeg).toColourspace('srgb').ensureAlpha().raw().toBuffer({ resolveWithObject: true })
  return { width: read.info.width, height: read.info.height, data: new Uint8Array(read.data) }
}
