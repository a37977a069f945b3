import { expect, it } from 'vitest'
import { phoneNameFrom } from '../../../renderer/phone/phone-name'
import { pairRequestSchema } from '../../../shared-logic/phone/phone-door'

/** Shapes of a browser's account of itself, with devices of our own invention. Source: RFC 9110, section 10.1.5 (products and comments). */
it.each([
  ['Mozilla/5.0 (Linux; Slipway 14; SW-220 Build/ABC.1) Web/537.36', 'Slipway 14, SW-220'],
  ['Mozilla/5.0 (Linux; Slipway 10; K) Web/537.36', 'Slipway 10'],
  ['Mozilla/5.0 (Tiller; CPU Tiller OS 17_0 like Desk) Web/605.1', 'Tiller'],
  ['Mozilla/5.0 (Slipway 14; Mobile; rv:128.0) Web/128.0', 'Slipway 14'],
  ['Mozilla/5.0', ''],
  ['', ''],
])('%s is called %s', (userAgent, name) => {
  expect(phoneNameFrom(userAgent)).toBe(name)
})

it('is never longer than the door takes', () => {
  const phoneName = phoneNameFrom(`Web/1 (${'a very long device; '.repeat(40)})`)
  expect(pairRequestSchema.safeParse({ secret: 'x', phoneName }).success).toBe(true)
})
