import { describe, expect, it } from 'vitest'
import { AnswerQueue, type SendChange } from '../../../renderer/survey/answer-queue'
import type { Answer } from '../../../shared-logic/survey/answer'

const chosen = (condition: string): Answer => ({ values: { condition } })
const left = { checkId: 'hubs.oil-condition', position: 'axle 1 left' }
const right = { checkId: 'hubs.oil-condition', position: 'axle 1 right' }
const leftKey = 'hubs.oil-condition @ axle 1 left'
const settled = () => new Promise((done) => setTimeout(done, 5))

const recording = (refuseFirst = 0) => {
  const log: string[] = []
  let refusals = refuseFirst
  const send: SendChange = async (place, answer) => {
    await Promise.resolve()
    log.push(`${place.position}: ${answer === undefined ? 'cleared' : JSON.stringify(answer.values['condition'])}`)
    if (refusals > 0) {
      refusals -= 1
      throw new Error('the disk is full')
    }
  }
  return { log, send }
}

describe('answers on their way to the desk', () => {
  it('are kept in the order they were given', async () => {
    const { log, send } = recording()
    const queue = new AnswerQueue(send)
    queue.put(left, chosen('clear'))
    queue.put(right, chosen('dark'))
    queue.put(left, undefined)
    await settled()
    expect(log).toEqual(['axle 1 left: "clear"', 'axle 1 right: "dark"', 'axle 1 left: cleared'])
  })
  it('skip what was changed again before its turn came', async () => {
    const { log, send } = recording()
    const queue = new AnswerQueue(send)
    queue.put(right, chosen('clear'))
    queue.put(left, chosen('clear'))
    queue.put(left, chosen('dark'))
    queue.put(left, chosen('milky'))
    await settled()
    expect(log).toEqual(['axle 1 right: "clear"', 'axle 1 left: "milky"'])
  })
  it('stay beside their reason when refused, and do not hold up the next', async () => {
    const { log, send } = recording(1)
    const queue = new AnswerQueue(send)
    queue.put(left, chosen('milky'))
    queue.put(right, chosen('clear'))
    await settled()
    expect(queue.changes().get(leftKey)).toMatchObject({ state: 'failed', answer: chosen('milky') })
    expect(log).toHaveLength(2)
  })
  it('can be tried again as they were', async () => {
    const { log, send } = recording(1)
    const queue = new AnswerQueue(send)
    queue.put(left, chosen('milky'))
    await settled()
    queue.tryAgain(leftKey)
    await settled()
    expect(queue.changes().get(leftKey)?.state).toBe('saved')
    expect(log).toEqual(['axle 1 left: "milky"', 'axle 1 left: "milky"'])
  })
})
