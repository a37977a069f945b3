import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'

const folder = join(process.cwd(), 'out', 'renderer')
const read = (name: string): Buffer => readFileSync(join(folder, name))
const filesIn = (html: string): string[] => Array.from(html.matchAll(/(?:src|href)="\.\/(assets\/[\w.-]+\.(?:js|css))"/g), ([, name = '']) => name)

/** Scripts and styles; the two faces come after them (25 kB), and until then the phone's own letters stand in. */
it('the phone’s page is light enough for a weak signal: 100 kB compressed at most, and nothing of the desktop’s catalogue in it', () => {
  const html = read('phone.html').toString()
  const files = filesIn(html)
  const bytes = ['phone.html', ...files].reduce((sum, name) => sum + gzipSync(read(name)).byteLength, 0)
  expect(files.filter((name) => name.endsWith('.js')).length).toBeGreaterThan(0)
  expect(bytes).toBeLessThan(100_000)
  const scripts = files.filter((name) => name.endsWith('.js')).map((name) => read(name).toString())
  // What a script would load later counts too: there is nothing.
  expect(scripts.join('')).not.toMatch(/\bimport\(/)
  expect(scripts.join('')).toContain(en.screens.phone.page.hand.take)
  expect(scripts.join('')).not.toContain(en.checks['hubs.oil-level']?.question)
})

it('the window keeps its own page, and neither page loads the other’s', () => {
  const [window, phone] = ['index.html', 'phone.html'].map((name) => filesIn(read(name).toString()))
  expect(window?.some((name) => /assets\/index-[\w-]+\.js/.test(name))).toBe(true)
  expect(phone?.some((name) => /assets\/index-/.test(name))).toBe(false)
  expect(window?.some((name) => /assets\/phone-/.test(name))).toBe(false)
})
