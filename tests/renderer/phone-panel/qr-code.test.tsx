import { cleanup, render, screen } from '@testing-library/react'
import fc from 'fast-check'
import jsQR from 'jsqr'
import { afterEach, expect, it } from 'vitest'
import { QrCode } from '../../../renderer/phone-panel/qr-code'

afterEach(cleanup)

/** The drawn code as a camera would see it at some pixels a module: dark squares of the path on light. */
const pictureOf = (svg: Element, scale: number): { data: Uint8ClampedArray; edge: number; modules: number } => {
  const modules = Number(svg.getAttribute('viewBox')?.split(' ')[2])
  const edge = modules * scale
  const data = new Uint8ClampedArray(edge * edge * 4).fill(255)
  for (const [, x = '', y = ''] of svg.querySelector('path')?.getAttribute('d')?.matchAll(/M(\d+) (\d+)h1v1h-1z/g) ?? [])
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row += 1)
      for (let column = Number(x) * scale; column < (Number(x) + 1) * scale; column += 1) data.fill(0, (row * edge + column) * 4, (row * edge + column) * 4 + 3)
  return { data, edge, modules }
}

/** Read back by a library that has nothing to do with the one that draws. */
it('whatever address it holds, another reader reads that from it; four modules around it are light', () => {
  const secret = fc.stringMatching(/^[A-Za-z0-9_-]{43}$/)
  const host = fc.oneof(fc.ipV4(), fc.ipV6().map((address) => `[${address}]`))
  fc.assert(fc.property(fc.constantFrom('http', 'https'), host, fc.integer({ min: 1024, max: 65_535 }), secret, (scheme, address, port, hash) => {
    const text = `${scheme}://${address}:${port}/#${hash}`
    render(<QrCode text={text} label="code" />)
    const svg = screen.getByRole('img', { name: 'code' })
    const { data, edge, modules } = pictureOf(svg, 4)
    expect(jsQR(data, edge, edge)?.data).toBe(text)
    const isDark = (x: number, y: number): boolean => data[(y * 4 * edge + x * 4) * 4] === 0
    for (let along = 0; along < modules; along += 1)
      for (let deep = 0; deep < 4; deep += 1) for (const [x, y] of [[along, deep], [along, modules - 1 - deep], [deep, along], [modules - 1 - deep, along]] as const) expect(isDark(x, y)).toBe(false)
    cleanup()
  }), { numRuns: 40 })
})

it('is dark on light whatever the window’s colours are', () => {
  render(<QrCode text="http://192.0.2.7:41234/#secret" label="code" />)
  const svg = screen.getByRole('img', { name: 'code' })
  expect(svg.querySelector('rect')?.getAttribute('fill')).toBe('#ffffff')
  expect(svg.querySelector('path')?.getAttribute('fill')).toBe('#000000')
})
