import { cleanup, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { drawCamera, showsLive } from './draw-camera'
import { FakeMachine, haveCameras } from './fake-camera'

beforeEach(() => haveCameras(new FakeMachine({ 'Built-in': {} })))
afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
})

it('holds the window from the shutter until the picture is kept', async () => {
  const isAskedBeforeClosing = (): boolean => !window.dispatchEvent(new Event('beforeunload', { cancelable: true }))
  const { grabbed, handedIn } = drawCamera()
  await showsLive('Built-in')
  expect(isAskedBeforeClosing()).toBe(false)
  await userEvent.keyboard(' ')
  await userEvent.keyboard(' ')
  expect(isAskedBeforeClosing()).toBe(true)
  grabbed[0]?.write()
  grabbed[1]?.failToWrite()
  await waitFor(() => expect(handedIn).toHaveLength(1))
  expect(isAskedBeforeClosing()).toBe(true)
  handedIn[0]?.keep('photograph 1')
  await waitFor(() => expect(isAskedBeforeClosing()).toBe(false))
})
