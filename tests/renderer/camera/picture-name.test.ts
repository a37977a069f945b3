import { describe, expect, it } from 'vitest'
import { pictureName } from '../../../renderer/camera/picture-name'

const at = new Date(2026, 10, 27, 14, 5, 11)

describe('the name of a picture', () => {
  it.each([
    ['Oil condition, left front', 0, 'oil-condition-left-front 2026-11-27 14.05.11.jpg'],
    ['Oil condition, left front', 1, 'oil-condition-left-front 2026-11-27 14.05.11-2.jpg'],
    ['Réglage / état', 0, 'reglage-etat 2026-11-27 14.05.11.jpg'],
    ['../../etc/passwd', 0, 'etc-passwd 2026-11-27 14.05.11.jpg'],
    ['油', 0, 'photograph 2026-11-27 14.05.11.jpg'],
  ])('of %s, number %i within its second', (place, within, name) => {
    expect(pictureName(place, at, within)).toBe(name)
  })

  it('stays short enough for any file system', () => {
    expect(pictureName('a very long name of a check '.repeat(40), at, 11).length).toBeLessThan(130)
  })
})
