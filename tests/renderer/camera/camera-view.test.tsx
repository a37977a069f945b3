import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { seriesLength, seriesPerSecond } from '../../../renderer/camera/use-series'
import { drawCamera, said, shots, showsLive } from './draw-camera'
import { FakeMachine, haveCameras } from './fake-camera'

let machine: FakeMachine
beforeEach(() => {
  machine = new FakeMachine({ 'Built-in': {} })
  haveCameras(machine)
})
afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
  vi.useRealTimers()
  window.localStorage.clear()
})

const press = (name: string): Promise<void> => userEvent.click(screen.getByRole('button', { name }))
const names = (handedIn: readonly { readonly file: File }[]): string[] => handedIn.map(({ file }) => file.name)
const settle = (): Promise<void> => act(async () => { for (let turn = 0; turn < 20; turn += 1) await Promise.resolve() })

describe('the shutter', { timeout: 30_000 }, () => {
  it('asks for the picture alone, at the largest size, when the view is opened', async () => {
    drawCamera()
    await showsLive('Built-in')
    expect(machine.asked).toEqual([{ audio: false, video: { width: { ideal: 16_384 }, height: { ideal: 16_384 }, facingMode: { ideal: 'environment' } } }])
  })

  it('takes by Space and by T from anywhere, and by Enter and a press on itself', async () => {
    const { grabbed } = drawCamera()
    await showsLive('Built-in')
    const shutter = screen.getByRole('button', { name: said.take })
    expect(document.activeElement).toBe(shutter)
    await userEvent.keyboard(' ')
    await userEvent.keyboard('{Enter}')
    await userEvent.click(shutter)
    fireEvent.keyDown(screen.getByRole('dialog'), { key: ' ' })
    for (const { write } of grabbed) write()
    await settle()
    act(() => screen.getByRole('button', { name: said.done }).focus())
    await userEvent.keyboard('t')
    await waitFor(() => expect(grabbed).toHaveLength(5))
  })

  it('a key held down takes one picture', async () => {
    const { grabbed } = drawCamera()
    await showsLive('Built-in')
    for (const repeat of [false, true, true]) fireEvent.keyDown(document.body, { key: ' ', repeat })
    await settle()
    expect(grabbed).toHaveLength(1)
  })

  it('single letters can be turned off; Space stays', async () => {
    window.localStorage.setItem('bunkwright.single-keys', 'off')
    const { grabbed } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('tb ')
    await settle()
    expect(grabbed).toHaveLength(1)
    expect(screen.getByText(said.spaceHint)).toBeDefined()
  })

  it('shows the picture before it is written or kept, and says which are kept', async () => {
    const { grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard(' ')
    expect(shots()).toEqual(['Picture 1, not kept yet'])
    grabbed[0]?.write()
    await waitFor(() => expect(handedIn).toHaveLength(1))
    expect(shots()).toEqual(['Picture 1, not kept yet'])
    handedIn[0]?.keep('photograph 1')
    await waitFor(() => expect(shots()).toEqual(['Picture 1, kept']))
    expect(screen.getByText('Picture 1 taken.')).toBeDefined()
  })

  it('hands in a JPEG named after place and time, in plain letters, and no two alike', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: new Date(2026, 10, 27, 14, 5, 11) })
    const { grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('  ')
    for (const { write } of grabbed) write()
    await waitFor(() => expect(handedIn).toHaveLength(2))
    expect(names(handedIn)).toEqual(['oil-condition-left-front 2026-11-27 14.05.11.jpg', 'oil-condition-left-front 2026-11-27 14.05.11-2.jpg'])
    expect(handedIn[0]?.file.type).toBe('image/jpeg')
  })

  it('hands pictures in as they were taken, whichever is written first', async () => {
    const { grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('  ')
    grabbed[1]?.write()
    await settle()
    expect(handedIn).toHaveLength(0)
    grabbed[0]?.write()
    await waitFor(() => expect(handedIn).toHaveLength(2))
    expect(names(handedIn)).toEqual(names(handedIn).toSorted((a, b) => a.length - b.length))
  })

  it('takes no more than can be written, and says so', async () => {
    const { grabbed } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('     ')
    await screen.findByText(said.notTaken)
    expect(grabbed).toHaveLength(4)
    grabbed[0]?.write()
    await settle()
    await userEvent.keyboard(' ')
    await waitFor(() => expect(grabbed).toHaveLength(5))
    expect(screen.queryByText(said.notTaken)).toBeNull()
  })

  it('holds no more pictures than memory is for, while the desk does not answer', async () => {
    const { grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    for (let count = 0; count < 30; count += 1) {
      await userEvent.keyboard(' ')
      for (const { write } of grabbed) write()
      await settle()
    }
    expect(handedIn).toHaveLength(24)
    expect(screen.getByText(said.notTaken)).toBeDefined()
  })

  it('remembers the last ones of many, and every one goes in', async () => {
    const { grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    for (let count = 1; count <= 45; count += 1) {
      fireEvent.keyDown(document.body, { key: ' ' })
      await settle()
      grabbed.at(-1)?.write()
      await settle()
      act(() => handedIn.at(-1)?.keep(`photograph ${count}`))
      await settle()
    }
    expect(handedIn).toHaveLength(45)
    expect(shots()).toEqual(Array.from({ length: 12 }, (_, index) => `Picture ${45 - index}, kept`))
  })

  it('a picture that cannot be written is not shown as taken, and the next goes in', async () => {
    const { grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard(' ')
    grabbed[0]?.failToWrite()
    await screen.findByText(said.notMade)
    expect(screen.queryAllByRole('listitem')).toEqual([])
    await userEvent.keyboard(' ')
    grabbed[1]?.write()
    await waitFor(() => expect(handedIn).toHaveLength(1))
  })
})

describe('retaking', { timeout: 30_000 }, () => {
  it('removes the last picture, and one that is had back is shown again', async () => {
    const { grabbed, handedIn, takenBack, changeStanding } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('  ')
    for (const { write } of grabbed) write()
    await waitFor(() => expect(handedIn).toHaveLength(2))
    act(() => handedIn.forEach(({ keep }, index) => keep(`photograph ${index + 1}`)))
    await waitFor(() => expect(shots()).toEqual(['Picture 2, kept', 'Picture 1, kept']))
    await press(said.retake)
    expect(shots()).toEqual(['Picture 1, kept'])
    expect(takenBack).toEqual(['photograph 2'])
    expect(document.activeElement).toBe(screen.getByRole('button', { name: said.take }))
    // Longer than the list of photographs takes to follow.
    await act(() => new Promise((later) => { setTimeout(later, 200) }))
    expect(shots()).toEqual(['Picture 1, kept'])
    act(() => changeStanding((before) => new Set([...before, 'photograph 2'])))
    expect(shots()).toEqual(['Picture 2, kept', 'Picture 1, kept'])
  })

  it('removes one still on its way as soon as it is kept, so that it can be had back', async () => {
    const { grabbed, handedIn, takenBack } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard(' r')
    expect(screen.queryAllByRole('listitem')).toEqual([])
    expect(takenBack).toEqual([])
    grabbed[0]?.write()
    await waitFor(() => expect(handedIn).toHaveLength(1))
    handedIn[0]?.keep('photograph 1')
    await waitFor(() => expect(takenBack).toEqual(['photograph 1']))
  })

  it('a picture that was let go on its way to the desk is not shown as taken', async () => {
    const { grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard(' ')
    grabbed[0]?.write()
    await waitFor(() => expect(handedIn).toHaveLength(1))
    handedIn[0]?.keep(undefined)
    await waitFor(() => expect(screen.queryAllByRole('listitem')).toEqual([]))
  })
})

describe('a series', { timeout: 30_000 }, () => {
  const beat = 1000 / seriesPerSecond
  const runFor = async (grabbed: readonly { readonly write: () => void }[], ms: number): Promise<void> => {
    for (let passed = 0; passed < ms; passed += 50) {
      await act(() => vi.advanceTimersByTimeAsync(50))
      for (const { write } of grabbed) write()
    }
  }

  it('takes three a second until it is pressed again', async () => {
    const { grabbed } = drawCamera()
    await showsLive('Built-in')
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'setTimeout', 'clearTimeout'] })
    fireEvent.keyDown(document.body, { key: 'b' })
    await runFor(grabbed, 1000 - 100)
    expect(grabbed).toHaveLength(seriesPerSecond)
    expect(screen.getByRole('button', { name: 'Stop, 3' })).toBeDefined()
    fireEvent.keyDown(document.body, { key: 'b' })
    await runFor(grabbed, 1000)
    expect(grabbed).toHaveLength(seriesPerSecond)
  })

  it('ends by itself when it is full', async () => {
    const { grabbed } = drawCamera()
    await showsLive('Built-in')
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'setTimeout', 'clearTimeout'] })
    fireEvent.keyDown(document.body, { key: 'b' })
    await runFor(grabbed, seriesLength * beat + 2000)
    expect(grabbed).toHaveLength(seriesLength)
    expect(screen.getByRole('button', { name: said.series })).toBeDefined()
  })

  it('leaves out the beats for which there is no room, and goes on', async () => {
    const { grabbed } = drawCamera()
    await showsLive('Built-in')
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'setTimeout', 'clearTimeout'] })
    fireEvent.keyDown(document.body, { key: 'b' })
    await runFor([], 3000)
    expect(grabbed).toHaveLength(4)
    expect(screen.queryByText(said.notTaken)).toBeNull()
    await runFor(grabbed, 1000)
    expect(grabbed.length).toBeGreaterThan(5)
  })
})

describe('what can be set', { timeout: 30_000 }, () => {
  const choose = async (label: string, option: RegExp | string): Promise<void> => {
    await userEvent.click(screen.getByRole('button', { name: new RegExp(`${label}$`) }))
    await userEvent.click(within(await screen.findByRole('listbox')).getByRole('option', { name: option }))
  }

  it('another camera is chosen by its name, and the one before is switched off', async () => {
    machine.plugIn('Microscope', { widthPx: 2592, heightPx: 1944 })
    drawCamera()
    await showsLive('Built-in')
    await choose(said.device, 'Microscope')
    await showsLive('Microscope')
    expect(machine.tracks.map(({ deviceId, readyState }) => [deviceId, readyState])).toEqual([['id of Built-in', 'ended'], ['id of Microscope', 'live']])
    expect(machine.asked.at(-1)?.video).toMatchObject({ deviceId: { exact: 'id of Microscope' } })
  })

  it('the camera that took the last picture is opened the next time, by its name', async () => {
    machine.plugIn('Microscope')
    const { asked } = drawCamera({ camera: 'Microscope' })
    await showsLive('Microscope')
    expect(machine.asked).toHaveLength(1)
    await choose(said.device, 'Built-in')
    await showsLive('Built-in')
    const saved = (): unknown[] => asked.flatMap(({ name, input }) => (name === 'settings.save' ? [input] : []))
    expect(saved()).toEqual([])
    await userEvent.keyboard('t')
    await waitFor(() => expect(saved()).toEqual([{ settings: expect.objectContaining({ camera: 'Built-in' }) }]))
  })

  it('where names are told only after permission, the remembered camera is opened after that', async () => {
    machine.plugIn('Microscope')
    machine.isAllowed = false
    drawCamera({ camera: 'Microscope' })
    await showsLive('Microscope')
    expect(machine.tracks.map(({ deviceId, readyState }) => [deviceId, readyState])).toEqual([['id of Built-in', 'ended'], ['id of Microscope', 'live']])
  })

  it('a remembered camera that is not plugged in is made good by another', async () => {
    drawCamera({ camera: 'Microscope' })
    await showsLive('Built-in')
    expect(machine.track.readyState).toBe('live')
  })

  it('one camera vanishing just as it is chosen is made good by another', async () => {
    machine.plugIn('Microscope')
    drawCamera()
    await showsLive('Built-in')
    machine.cameras = { 'Built-in': {} }
    await choose(said.device, 'Microscope')
    await showsLive('Built-in')
    expect(machine.tracks.at(-1)?.readyState).toBe('live')
  })

  it('offers smaller resolutions of the same shape, and takes the one chosen', async () => {
    drawCamera()
    await showsLive('Built-in')
    await choose(said.resolution, '640 × 360 px, 0.2 MP')
    expect(machine.track.applied).toEqual([{ width: { exact: 640 }, height: { exact: 360 } }])
    await screen.findByRole('button', { name: /640 × 360 px/ })
  })

  it('says what the camera gives where it does not give the resolution asked for', async () => {
    machine = new FakeMachine({ 'Built-in': { widthPx: 4000, heightPx: 3000, refusesWidths: [1600] } })
    haveCameras(machine)
    drawCamera()
    await showsLive('Built-in')
    await choose(said.resolution, /^1600/)
    expect(machine.track.applied).toEqual([{ width: { exact: 1600 }, height: { exact: 1200 } }, { width: { ideal: 1600 }, height: { ideal: 1200 } }])
    await screen.findByText('The camera does not give 1600 × 1200 px. It gives 4000 × 3000 px.')
  })

  it('light and zoom are there only where the camera has them', async () => {
    drawCamera()
    await showsLive('Built-in')
    expect(screen.queryByRole('switch')).toBeNull()
    expect(screen.queryByRole('slider')).toBeNull()
  })

  it('light is switched, zoom is set, each by itself', async () => {
    machine = new FakeMachine({ 'Built-in': { torch: true, zoom: { min: 100, max: 400, step: 10 } } })
    haveCameras(machine)
    drawCamera()
    await showsLive('Built-in')
    await userEvent.click(screen.getByRole('switch', { name: said.light }))
    await waitFor(() => expect(machine.track.applied).toEqual([{ advanced: [{ torch: true }] }]))
    await waitFor(() => expect(screen.getByRole<HTMLInputElement>('switch').checked).toBe(true))
    fireEvent.change(screen.getByRole('slider', { name: said.zoom }), { target: { value: '250' } })
    await waitFor(() => expect(machine.track.applied.at(-1)).toEqual({ advanced: [{ zoom: 250 }] }))
    expect(screen.getByText('50 % of the way')).toBeDefined()
  })
})
