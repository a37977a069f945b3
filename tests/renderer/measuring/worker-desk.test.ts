import { beforeAll, describe, expect, it } from 'vitest'
import type { FromWorker, ToWorker } from '../../../renderer/measuring/messages'
import { workerDesk } from '../../../renderer/measuring/worker-desk'
import { measuredArea, type MeasurementGiven } from '../../../shared-logic/measuring/area'
import type { Pixels } from '../../../shared-logic/measuring/pixels'
import { featuresOf, foundMasks } from '../../../shared-logic/rust/find-rust'
import { renderScene, type Scene } from '../../corrosion/scenes/render-scene'

const bitmap = { close: () => undefined } as unknown as ImageBitmap

/** A worker's desk in this thread, with all it told. */
const deskOn = (pixels: Pixels) => {
  const told: FromWorker[] = []
  const send = workerDesk((message) => told.push(message), () => pixels)
  send({ kind: 'picture', bitmap })
  const settled = async (turn: number): Promise<FromWorker> => {
    for (;;) {
      const last = told.find((each) => each.turn === turn && (each.kind === 'measured' || each.kind === 'refused'))
      if (last) return last
      await new Promise((resolve) => { setTimeout(resolve, 5) })
    }
  }
  return { told, send: (message: ToWorker) => send(message), settled }
}

describe('the computing beside the window', () => {
  let scene: Scene
  let finding: (sensitivity: number) => MeasurementGiven
  beforeAll(async () => {
    scene = await renderScene(11, { widthPx: 480, member: 'rail', ground: 'painted grey', rust: 'spot', light: 'overcast', decoys: [], wet: false, shadow: false })
    const { widthPx, heightPx } = scene.plan
    finding = (sensitivity) => ({ widthPx, heightPx, scale: scene.scale, face: scene.face, outline: { by: 'finder', finder: 'rust 1', sensitivity, strokes: [] } })
  })

  it('comes to the same area as the same chain run at once', async () => {
    const desk = deskOn(scene.pixels)
    desk.send({ kind: 'measure', turn: 1, given: finding(0.5), isScaled: true })
    const answer = await desk.settled(1)
    expect(answer).toEqual({ kind: 'measured', turn: 1, result: measuredArea(finding(0.5), foundMasks(featuresOf(scene.pixels, scene.face), 0.5)) })
    expect(desk.told.map(({ kind }) => kind)).toEqual(['looking', 'outlined', 'outlined', 'measured'])
  })

  it('answers the newest of many wishes and lets those between fall', async () => {
    const desk = deskOn(scene.pixels)
    for (let turn = 1; turn <= 30; turn += 1) desk.send({ kind: 'measure', turn, given: finding(turn / 30), isScaled: true })
    await desk.settled(30)
    const measured = desk.told.filter(({ kind }) => kind === 'measured')
    expect(measured.map(({ turn }) => turn)).toEqual([30])
    expect(desk.told.filter(({ kind }) => kind === 'outlined').length).toBeLessThan(5)
  })

  it('comes back to the first area when a change is taken back at once', async () => {
    const desk = deskOn(scene.pixels)
    desk.send({ kind: 'measure', turn: 1, given: finding(0.5), isScaled: true })
    const first = await desk.settled(1)
    desk.send({ kind: 'measure', turn: 2, given: finding(0.9), isScaled: true })
    desk.send({ kind: 'measure', turn: 3, given: finding(0.5), isScaled: true })
    expect(await desk.settled(3)).toEqual({ ...first, turn: 3 })
  })

  it('shows what was found, and tells no area, while there is no scale', async () => {
    const desk = deskOn(scene.pixels)
    desk.send({ kind: 'measure', turn: 1, given: finding(0.5), isScaled: false })
    expect(await desk.settled(1)).toEqual({ kind: 'measured', turn: 1, result: undefined })
    expect(desk.told.find(({ kind }) => kind === 'outlined')).toMatchObject({ outline: expect.stringMatching(/^M/) as unknown })
  })

  it('refuses a grey photograph to the finder and lets it be outlined by hand', async () => {
    const grey = scene.pixels.data.slice()
    for (let at = 0; at < grey.length; at += 4) grey.fill(grey[at + 1] ?? 0, at, at + 3)
    const desk = deskOn({ ...scene.pixels, data: grey })
    desk.send({ kind: 'measure', turn: 1, given: finding(0.5), isScaled: true })
    expect(await desk.settled(1)).toEqual({ kind: 'refused', turn: 1, refusal: { code: 'measure.no-colour' } })
    desk.send({ kind: 'measure', turn: 2, given: { ...finding(0.5), outline: { by: 'polygon', points: scene.face } }, isScaled: true })
    expect((await desk.settled(2)).kind).toBe('measured')
  })

  it('refuses a crossed outline and a scale of no length, each by its own code, and goes on', async () => {
    const desk = deskOn(scene.pixels)
    const { face: _face, ...bare } = finding(0.5)
    const crossed: MeasurementGiven = { ...bare, outline: { by: 'polygon', points: [[100, 100], [200, 200], [200, 100], [100, 200]] } }
    desk.send({ kind: 'measure', turn: 1, given: crossed, isScaled: true })
    expect(await desk.settled(1)).toMatchObject({ kind: 'refused', refusal: { code: 'measure.outline-crossed' } })
    desk.send({ kind: 'measure', turn: 2, given: { ...finding(0.5), scale: { kind: 'length', from: [5, 5], to: [5, 5], lengthM: 0.1 } }, isScaled: true })
    expect(await desk.settled(2)).toMatchObject({ kind: 'refused', refusal: { code: 'measure.scale-zero-length' } })
    desk.send({ kind: 'measure', turn: 3, given: finding(0.5), isScaled: true })
    expect((await desk.settled(3)).kind).toBe('measured')
  })
})
