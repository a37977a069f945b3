import type { Trailer } from '../../rig/trailer'
import { wirePlugs } from '../../rig/trailer'
import { contactsOf, functionsOf, type Plug, type PlugFunction } from '../../rules/connectors'
import { isRequired, lampTable } from '../../rules/lamp-table'
import { commonPractice, published, tradeLiterature } from '../../rules/cite'
import type { RuleBook } from '../../rules/rule-book'
import type { FieldValues } from '../../survey/answer'
import { advisory, choiceCheck, failed, passed, textOf, unseen } from '../builders'
import type { Check, Found, JudgeContext } from '../check'

const isPlug = (value: string): value is Plug => wirePlugs.some((plug) => plug === value)

const plugPages = [published('ISO 11446', 'contact tables as restated'), published('ISO 1724', 'contact table as restated'), tradeLiterature('7-way connector pages')]

const callsFor = (trailer: Trailer, ruleBook: RuleBook, position: string): boolean =>
  lampTable(ruleBook).lamps.some((row) => row.position === position && isRequired(row, trailer) === true)

/** What the rig needs of its plug, most telling first. */
const needed = (trailer: Trailer, ruleBook: RuleBook): PlugFunction[] => [
  ...(trailer.brakes === 'electric' || trailer.brakes === 'electric over hydraulic' ? (['electric brakes'] as const) : []),
  ...((trailer.brakes === 'surge' && trailer.brakeForm === 'disc' && ruleBook === 'us') || callsFor(trailer, ruleBook, 'lamp reversing') ? (['reversing'] as const) : []),
  ...(callsFor(trailer, ruleBook, 'lamp fog') ? (['rear fog'] as const) : []),
]

const lacking = { 'electric brakes': 'no brake feed', reversing: 'no reversing feed', 'rear fog': 'no fog feed' } as const

const judgeSuits = (values: FieldValues, { rig, ruleBook }: JudgeContext): Found | undefined => {
  const plug = textOf(values, 'plug')
  if (plug === undefined || !isPlug(plug)) return undefined
  const offers = functionsOf(plug, ruleBook)
  if (offers === undefined) return { outcome: 'layout not known' }
  const wanted = needed(rig.trailer, ruleBook)
  const missing = wanted.find((each) => !offers.has(each))
  if (missing === 'electric brakes' || missing === 'reversing' || missing === 'rear fog') return { outcome: lacking[missing] }
  return { outcome: rig.trailer.brakes === undefined ? 'brakes not known' : 'suits' }
}

const askedFunctions = ['left turn', 'right turn', 'tail', 'stop', 'rear fog', 'reversing', 'electric brakes', 'return'] as const satisfies readonly PlugFunction[]

const judgeFunctions = (values: FieldValues, { rig, ruleBook }: JudgeContext): Found | undefined => {
  const result = textOf(values, 'result')
  if (result !== 'one at fault') return result === undefined ? undefined : { outcome: result }
  const fault = textOf(values, 'fault')
  if (fault === undefined) return undefined
  const { plug } = rig.trailer
  const contact = plug === undefined ? undefined : contactsOf(plug, ruleBook)?.find((each) => each.does.some((does) => does === fault))
  if (contact === undefined) return { outcome: 'one at fault' }
  if (plug !== '7 blade') return { outcome: 'fault at a pin', values: { pin: contact.at } }
  return contact.at === 0 ? { outcome: 'fault at the centre' } : { outcome: 'fault at a blade', values: { clock: contact.at } }
}

/** The plug: whether it is the right one, sound, and wired by function. */
export const connectorChecks: readonly Check[] = [
  choiceCheck({
    id: 'lights.connector',
    station: 'lights',
    positions: 'once',
    drawing: 'plug',
    photograph: true,
    outcomes: {
      'clean and whole': passed,
      'dull pins': advisory('at next service'),
      'cable pulled from its grip': advisory('before next trip'),
      'green or pitted pins': advisory('before next trip'),
      'bent or burnt pins': failed('before next trip'),
      'body or latch broken': failed('before next trip'),
    },
    sources: [commonPractice],
  }),
  {
    id: 'lights.plug-suits',
    station: 'lights',
    positions: 'once',
    drawing: 'plug',
    fields: [{ kind: 'choice', id: 'plug', options: wirePlugs }],
    outcomes: {
      suits: passed,
      'no brake feed': failed('before it is towed'),
      'no reversing feed': advisory('before next trip'),
      'no fog feed': advisory('before next trip'),
      'layout not known': unseen,
      'brakes not known': unseen,
    },
    judge: judgeSuits,
    sources: plugPages,
  },
  {
    id: 'lights.plug-test',
    station: 'lights',
    positions: 'once',
    drawing: 'plug',
    fields: [
      { kind: 'choice', id: 'result', options: ['all right', 'one at fault', 'several crossed', 'not tested'] },
      { kind: 'choice', id: 'fault', options: askedFunctions, when: { field: 'result', oneOf: ['one at fault'] } },
    ],
    outcomes: {
      'all right': passed,
      'one at fault': failed('before it is towed'),
      'fault at a pin': failed('before it is towed'),
      'fault at a blade': failed('before it is towed'),
      'fault at the centre': failed('before next trip'),
      'several crossed': failed('before it is towed'),
      'not tested': unseen,
    },
    judge: judgeFunctions,
    sources: plugPages,
  },
]
