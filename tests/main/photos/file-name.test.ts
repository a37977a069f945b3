import { expect, test } from 'vitest'
import { plainFileName } from '../../../main/photos/file-name'

test.each([
  ['strap.jpg', 'strap.jpg'],
  ['C:\\Users\\someone\\strap.jpg', 'strap.jpg'],
  ['/home/someone/strap.jpg', 'strap.jpg'],
  ['../../strap.jpg', 'strap.jpg'],
  ['stra\u0000p\r\n.jpg', 'strap.jpg'],
  ['photo\u202egpj.exe', 'photogpj.exe'],
  ['Nabe links – Öl.jpg', 'Nabe links – Öl.jpg'],
  ['轴承.jpg', '轴承.jpg'],
  ['', 'photograph'],
  ['folder/', 'photograph'],
  ['..', 'photograph'],
])('%j is kept as %j', (given, kept) => {
  expect(plainFileName(given)).toBe(kept)
})

test('a very long name keeps its ending', () => {
  expect(plainFileName(`${'a'.repeat(400)}.jpg`)).toMatch(/^a{251}\.jpg$/)
})
