import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
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
  Reflect.deleteProperty(document, 'visibilityState')
})

const alert = async (): Promise<string | undefined> => (await screen.findByRole('alert')).querySelector('p')?.textContent
const isOff = (): boolean => machine.tracks.every(({ readyState }) => readyState === 'ended')

describe('a camera that cannot be had', { timeout: 30_000 }, () => {
  it.each([
    ['NotAllowedError', said.problems.denied.window],
    ['NotReadableError', said.problems['in use']],
    ['AbortError', said.problems['in use']],
    ['NotFoundError', said.problems.none],
    ['OperationError', said.problems.failed],
  ])('%s is said in a sentence, and trying again opens it', async (name, sentence) => {
    machine.refuses = name
    drawCamera()
    expect(await alert()).toBe(sentence)
    expect(screen.getByRole<HTMLButtonElement>('button', { name: said.take }).disabled).toBe(true)
    machine.refuses = undefined
    await userEvent.click(screen.getByRole('button', { name: said.tryAgain }))
    await showsLive('Built-in')
    expect(screen.queryByRole('alert')).toBeNull()
  })

  it('a window that offers none says so, and offers no second try', async () => {
    haveCameras(undefined)
    drawCamera()
    expect(await alert()).toBe(said.problems['not offered'])
    expect(screen.queryByRole('button', { name: said.tryAgain })).toBeNull()
  })

  it('where none is plugged in, the first one that is, is switched on', async () => {
    machine.cameras = {}
    drawCamera()
    expect(await alert()).toBe(said.problems.none)
    act(() => machine.plugIn('Microscope'))
    await showsLive('Microscope')
  })

  it('Space and the letters take nothing while there is no picture', async () => {
    machine.refuses = 'NotAllowedError'
    const { grabbed } = drawCamera()
    await screen.findByRole('alert')
    fireEvent.keyDown(document.body, { key: ' ' })
    await userEvent.keyboard('tbr')
    expect(grabbed).toEqual([])
  })
})

describe('a camera unplugged midway', { timeout: 30_000 }, () => {
  it('is said, the pictures taken stay, and another is chosen', async () => {
    machine.plugIn('Microscope')
    const { grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('  ')
    grabbed[0]?.write()
    await waitFor(() => expect(handedIn).toHaveLength(1))
    act(() => machine.unplug('Built-in'))
    expect(await alert()).toBe(said.problems.unplugged)
    // Both are on their way yet, and arrive.
    grabbed[1]?.write()
    await waitFor(() => expect(handedIn).toHaveLength(2))
    act(() => handedIn.forEach(({ keep }, index) => keep(`photograph ${index}`)))
    await waitFor(() => expect(shots()).toEqual(['Picture 2, kept', 'Picture 1, kept']))
    await userEvent.click(screen.getByRole('button', { name: new RegExp(`${said.device}$`) }))
    expect(within(await screen.findByRole('listbox')).getAllByRole('option').map((each) => each.textContent)).toEqual(['Microscope'])
    await userEvent.click(screen.getByRole('option', { name: 'Microscope' }))
    await showsLive('Microscope')
    await userEvent.keyboard('t')
    expect(shots()).toHaveLength(3)
  })

  it('is noticed where only the list of devices tells', async () => {
    drawCamera()
    await showsLive('Built-in')
    machine.cameras = {}
    act(() => void machine.dispatchEvent(new Event('devicechange')))
    expect(await alert()).toBe(said.problems.unplugged)
    expect(isOff()).toBe(true)
  })

  it('is noticed where only the picture ends, as when the system takes the camera away', async () => {
    drawCamera()
    await showsLive('Built-in')
    act(() => void machine.track.dispatchEvent(new Event('ended')))
    expect(await alert()).toBe(said.problems.unplugged)
    expect(isOff()).toBe(true)
  })

  it('goes on by itself when it is plugged in again', async () => {
    drawCamera()
    await showsLive('Built-in')
    act(() => machine.unplug('Built-in'))
    await screen.findByRole('alert')
    act(() => machine.plugIn('Built-in'))
    await showsLive('Built-in')
    expect(machine.track.readyState).toBe('live')
    expect(screen.queryByRole('alert')).toBeNull()
  })

  it('ends a series, and the next press begins a new one', async () => {
    const { grabbed } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('b')
    await waitFor(() => expect(grabbed.length).toBeGreaterThan(0))
    act(() => machine.unplug('Built-in'))
    await screen.findByRole('alert')
    const before = grabbed.length
    act(() => machine.plugIn('Built-in'))
    await showsLive('Built-in')
    expect(screen.getByRole('button', { name: said.series })).toBeDefined()
    expect(grabbed).toHaveLength(before)
  })
})

describe('the camera is off', { timeout: 30_000 }, () => {
  it('when the view goes, and what was taken still arrives', async () => {
    const { unmount, grabbed, handedIn } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('  ')
    unmount()
    expect(isOff()).toBe(true)
    for (const { write } of grabbed) write()
    await waitFor(() => expect(handedIn).toHaveLength(2))
  })

  it('when permission comes only after the view has gone', async () => {
    const { promise, resolve } = Promise.withResolvers<void>()
    machine.until = promise
    const { unmount } = drawCamera()
    await waitFor(() => expect(machine.asked).toHaveLength(1))
    unmount()
    resolve()
    await waitFor(() => expect(machine.tracks).toHaveLength(1))
    await waitFor(() => expect(isOff()).toBe(true))
  })

  it('while the page is out of sight for long, not while it is for a moment; and on again when it is back', async () => {
    drawCamera()
    await showsLive('Built-in')
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    const turn = async (state: DocumentVisibilityState, ms: number): Promise<void> => {
      Object.defineProperty(document, 'visibilityState', { value: state, configurable: true })
      await act(async () => {
        document.dispatchEvent(new Event('visibilitychange'))
        await vi.advanceTimersByTimeAsync(ms)
      })
    }
    await turn('hidden', 59_000)
    await turn('visible', 0)
    expect(isOff()).toBe(false)
    expect(machine.tracks).toHaveLength(1)
    await turn('hidden', 61_000)
    expect(isOff()).toBe(true)
    expect(screen.getByText(said.off)).toBeDefined()
    await turn('visible', 0)
    vi.useRealTimers()
    await showsLive('Built-in')
    expect(isOff()).toBe(false)
  })

  it('closes by Escape and by Done', async () => {
    const { isClosed } = drawCamera()
    await showsLive('Built-in')
    await userEvent.keyboard('{Escape}')
    expect(isClosed()).toBe(true)
  })
})
