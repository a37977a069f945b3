import { describe, expect, it } from 'vitest'
import { dataFolder } from '../../main/data-folder'

describe('where the yard is kept', () => {
  it.each<[NodeJS.Platform, NodeJS.ProcessEnv, string]>([
    ['linux', {}, '/home/a/.local/share/bunkwright/yard'],
    ['linux', { XDG_DATA_HOME: '/data' }, '/data/bunkwright/yard'],
    ['linux', { XDG_DATA_HOME: 'not/absolute' }, '/home/a/.local/share/bunkwright/yard'],
    ['darwin', {}, '/home/a/Library/Application Support/bunkwright/yard'],
    ['linux', { BUNKWRIGHT_FOLDER: '/here' }, '/here'],
    ['linux', { BUNKWRIGHT_FOLDER: '' }, '/home/a/.local/share/bunkwright/yard'],
  ])('on %s with %j: %s', (platform, environment, folder) => {
    expect(dataFolder(platform, environment, '/home/a')).toBe(folder)
  })

  it('on Windows is the roaming application data, or its usual place', () => {
    expect(dataFolder('win32', { APPDATA: 'R' }, 'H')).toMatch(/^R[\\/]bunkwright[\\/]yard$/)
    expect(dataFolder('win32', {}, 'H')).toMatch(/^H[\\/]AppData[\\/]Roaming[\\/]bunkwright[\\/]yard$/)
  })
})
