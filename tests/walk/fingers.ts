import type { Page } from 'playwright-core'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'

/** Fingers on the glass, by places of the window. */
export interface Fingers {
  /** One finger down at the first place, along the others, and up at the last. */
  readonly draw: (places: readonly PixelPoint[]) => Promise<void>
  /** Two fingers down, moved apart or together, and up: each from its first to its second place. */
  readonly pinch: (one: readonly [PixelPoint, PixelPoint], other: readonly [PixelPoint, PixelPoint]) => Promise<void>
  /** A finger down and along the places, and left there until the answer is called. */
  readonly hold: (places: readonly PixelPoint[]) => Promise<() => Promise<void>>
}

const steps = 6
/** A finger that flies off the glass throws what is under it, and the next tap only stops that: these move at a hand's pace and rest before they leave. */
const stepMs = 16
const restMs = 120

export const fingersOn = async (page: Page): Promise<Fingers> => {
  const session = await page.context().newCDPSession(page)
  const send = async (type: 'touchStart' | 'touchMove' | 'touchEnd', places: readonly PixelPoint[]): Promise<void> => {
    await session.send('Input.dispatchTouchEvent', { type, touchPoints: places.map(([x, y], id) => ({ x, y, id })) })
    await page.waitForTimeout(stepMs)
  }
  const lift = async (places: readonly PixelPoint[]): Promise<void> => {
    await page.waitForTimeout(restMs)
    await send('touchMove', places)
    await send('touchEnd', [])
  }
  const between = ([x1, y1]: PixelPoint, [x2, y2]: PixelPoint, share: number): PixelPoint => [x1 + (x2 - x1) * share, y1 + (y2 - y1) * share]
  const hold: Fingers['hold'] = async ([first = [0, 0], ...others]) => {
    await send('touchStart', [first])
    let from = first
    for (const to of others) {
      for (let step = 1; step <= steps; step += 1) await send('touchMove', [between(from, to, step / steps)])
      from = to
    }
    return () => lift([from])
  }
  return {
    hold,
    draw: async (places) => (await hold(places))(),
    pinch: async (one, other) => {
      await send('touchStart', [one[0]])
      await send('touchStart', [one[0], other[0]])
      for (let step = 1; step <= steps; step += 1) await send('touchMove', [between(...one, step / steps), between(...other, step / steps)])
      await lift([one[1], other[1]])
    },
  }
}
