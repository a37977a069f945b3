import { afterEach, beforeEach, expect, it } from 'vitest'
import type { z } from 'zod'
import { photographReplySchema } from '../../../shared-logic/phone/phone-door'
import { photograph } from '../host/running-host'
import { pictureId, runDoor, type RunningDoor } from './running-door'

type PhotographReply = z.infer<typeof photographReplySchema>

let at: RunningDoor
beforeEach(async () => {
  at = await runDoor()
})
afterEach(() => at.stop())

const send = async (number: number, place?: { readonly checkId: string; readonly position: string }): Promise<PhotographReply> => {
  const door = await at.openDoor()
  const sent = await door.send(await door.enter(), pictureId(number), await photograph(number), { about: { ...place } })
  return photographReplySchema.parse(await sent.json())
}
const here = { checkId: 'papers.identification-plate', position: 'rig' }
const elsewhere = { checkId: 'papers.number-matches', position: 'rig' }

it('a picture whose reply the phone did not hear is not doubled through the next door, though the surveyor has moved it meanwhile', async () => {
  const first = await send(1, here)
  const [picture] = await at.kept()
  await at.opened.desk['photographs.assign']({ photographIds: [picture?.id ?? ''], place: elsewhere })
  for (let door = 0; door < 3; door += 1) expect(await send(1, here)).toEqual(first)
  expect(await at.kept()).toMatchObject([{ id: picture?.id, ...elsewhere }])
})

it('nor does it come back when the surveyor has taken it away', async () => {
  await send(1, here)
  const [picture] = await at.kept()
  await at.opened.desk['photographs.remove']({ photographId: picture?.id ?? '' })
  await send(1, here)
  expect(await at.kept()).toEqual([])
})

it('the surveyor is told of each door what came through it, and so is the phone', async () => {
  await send(1)
  const door = await at.openDoor()
  const cookie = await door.enter()
  expect((await at.opened.desk['phone.state']({ surveyId: at.surveyId })).door?.arrived).toEqual([])
  expect(await (await door.ask('arrived', { headers: { cookie } })).json()).toEqual({ pictureIds: [], told: [] })
})

it('another survey has its own memory: the same name there is another picture', async () => {
  await send(1)
  const surveyId = await at.newSurvey()
  const door = await at.openDoor({ surveyId })
  await (await door.send(await door.enter(), pictureId(1), await photograph(2))).text()
  expect((await at.opened.desk['surveys.get']({ surveyId })).photographs).toHaveLength(1)
})
