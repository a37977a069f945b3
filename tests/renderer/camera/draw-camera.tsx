import { fireEvent, screen, waitFor } from '@testing-library/react'
import { useState } from 'react'
import { CameraView } from '../../../renderer/camera/camera-view'
import type { Grabbed } from '../../../renderer/camera/grab-picture'
import type { StillPhotograph } from '../../../renderer/camera/still-photograph'
import { useQueryOf } from '../../../renderer/client/use-procedure'
import { settingsSchema, type Settings } from '../../../shared-logic/survey/settings'
import { en } from '../../../shared-logic/words/en'
import { drawWithDesk } from '../window-with-desk'

export const said = en.screens.camera

/** One picture on its way: the test says when it is written and when it is kept. */
export interface Picture {
  readonly still: StillPhotograph | undefined
  readonly write: () => void
  readonly failToWrite: () => void
}

export interface HandedIn {
  readonly file: File
  /** Kept as the photograph of this id; undefined lets it go. */
  readonly keep: (photographId: string | undefined) => void
}

/** The camera view over a place that keeps what the test lets it keep. */
export const drawCamera = (settings: Partial<Settings> = {}) => {
  const grabbed: Picture[] = []
  const handedIn: HandedIn[] = []
  const takenBack: string[] = []
  let isClosed = false
  const grab = async (_video: HTMLVideoElement, still: StillPhotograph | undefined): Promise<Grabbed> => {
    const { promise, resolve, reject } = Promise.withResolvers<Blob>()
    grabbed.push({ still, write: () => resolve(new Blob(['picture'], { type: 'image/jpeg' })), failToWrite: () => reject(new Error('no memory')) })
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- jsdom has no ImageBitmap
    return { thumbnail: { width: 256, height: 144, close: () => undefined } as ImageBitmap, jpeg: promise }
  }
  const setStanding: { current: (how: (before: ReadonlySet<string>) => ReadonlySet<string>) => void } = { current: () => undefined }
  const Place = () => {
    const [standing, change] = useState<ReadonlySet<string>>(new Set())
    setStanding.current = change
    return (
      <CameraView
        place="Oil condition, left front" standing={standing} news={null} grab={grab} onClose={() => { isClosed = true }}
        onPicture={(file) =>
          new Promise((resolve) => {
            handedIn.push({ file, keep: (photographId) => {
              if (photographId !== undefined) change((before) => new Set([...before, photographId]))
              resolve(photographId)
            } })
          })}
        onTakeBack={async (photographId) => {
          takenBack.push(photographId)
          change((before) => new Set([...before].filter((each) => each !== photographId)))
        }}
      />
    )
  }
  /** As in the window, where the settings are read long before a camera is opened. */
  const WithSettings = () => (useQueryOf('settings.get', {}).data === undefined ? null : <Place />)
  const drawn = drawWithDesk(<WithSettings />, { 'settings.save': (input) => ({ settings: settingsSchema.parse(input.settings) }) }, settings)
  return { ...drawn, grabbed, handedIn, takenBack, isClosed: () => isClosed, changeStanding: (how: (before: ReadonlySet<string>) => ReadonlySet<string>) => setStanding.current(how) }
}

/** Waits for the live picture and lets it show its first frame. */
export const showsLive = async (camera: string): Promise<void> => {
  const video = await screen.findByLabelText(said.live.replace('{camera}', camera))
  fireEvent.loadedData(video)
  await waitFor(() => { if (screen.getByRole<HTMLButtonElement>('button', { name: said.take }).disabled) throw new Error('the shutter is not ready') })
}

export const shots = (): string[] => screen.getAllByRole('listitem').map((each) => each.textContent)
