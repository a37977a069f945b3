import { featuresOf, rustMask } from '../../shared-logic/rust/find-rust'
import { warmUp } from '../../shared-logic/rust/warm-up'
import { colourless } from '../../shared-logic/rust/colourless'
import { renderScene } from '../corrosion/scenes/render-scene'
import type { BenchLine } from './bench-line'

const runs = 15
const featuresBudgetMs = 300
const maskBudgetMs = 50

const middleMs = (work: (run: number) => void): number => {
  const times = Array.from({ length: runs }, (_, run) => {
    const began = performance.now()
    work(run)
    return performance.now() - began
  })
  return Math.round(times.toSorted((a, b) => a - b)[Math.floor(runs / 2)] ?? Number.NaN)
}

const line = (name: string, value: number, budgetMs: number): BenchLine => ({ name, value, unit: 'ms', budget: `under ${budgetMs} ms`, ok: value < budgetMs })

/** Rust found on a 1600 × 1200 preview, as of a 12 MP photograph, and the slider moved over it; the middle one of many. */
export const benchRust = async (): Promise<BenchLine[]> => {
  const { pixels } = await renderScene(74, { widthPx: 1600, heightPx: 1200, member: 'close', rust: 'general' })
  // As the window's worker does when a picture is laid before it.
  warmUp(pixels)
  const began = performance.now()
  const features = featuresOf(pixels)
  const first = Math.round(performance.now() - began)
  return [
    line('find rust on a 1600 px preview, the first time', first, featuresBudgetMs),
    line('find rust on a 1600 px preview', middleMs(() => featuresOf(pixels)), featuresBudgetMs),
    line('move the slider of rust', middleMs((run) => rustMask(features, run / (runs - 1))), maskBudgetMs),
    line('see whether there is colour', middleMs(() => colourless(pixels)), maskBudgetMs),
  ]
}
