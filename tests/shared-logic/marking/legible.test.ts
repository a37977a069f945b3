import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { roleColour } from '../../../main/report/colours'

/** Relative luminance of '#rrggbb', and contrast. Source: WCAG 2.2, definitions of relative luminance and contrast ratio. */
const luminance = (colour: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((from) => Number.parseInt(colour.slice(from, from + 2), 16) / 255).map((part) => (part <= 0.040_45 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4))
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}
const contrast = (a: number, b: number): number => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)

describe('a mark on a photograph', () => {
  it('stands out from any ground by its core or its casing, 3 : 1 at least (WCAG 2.2, 1.4.11)', () => {
    const [core, casing] = [luminance(roleColour.mark), luminance(roleColour.casing)]
    const grounds = Array.from({ length: 1001 }, (_, index) => index / 1000)
    const least = Math.min(...grounds.map((ground) => Math.max(contrast(core, ground), contrast(casing, ground))))
    expect(least).toBeGreaterThanOrEqual(3)
    // Its words, dark on light, are text (WCAG 2.2, 1.4.6).
    expect(contrast(core, casing)).toBeGreaterThanOrEqual(7)
  })

  it('has the same two colours in the window as on the page, whatever the light; the light one is the yellow of Okabe and Ito (2008)', () => {
    const css = readFileSync('renderer/drawing/drawing.module.css', 'utf8')
    const inWindow = (role: string): string[] => [...css.matchAll(new RegExp(String.raw`\.(?:stroke|fill)-${role} \{ (?:stroke|fill): (#\w+); \}`, 'g'))].map(([, colour = '']) => (colour.length === 4 ? colour.replaceAll(/[\da-f]/g, '$&$&') : colour))
    expect(inWindow('mark')).toEqual([roleColour.mark, roleColour.mark])
    expect(inWindow('casing')).toEqual([roleColour.casing, roleColour.casing])
    expect(roleColour.casing).toBe('#f0e442')
  })
})
