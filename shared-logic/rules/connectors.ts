import type { wirePlugs } from '../rig/trailer'
import type { RuleBook } from './rule-book'

export type Plug = (typeof wirePlugs)[number]

/** What a contact of a trailer plug does. */
export const plugFunctions = ['left turn', 'right turn', 'tail', 'stop', 'rear fog', 'reversing', 'electric brakes', 'permanent supply', 'switched supply', 'return'] as const
export type PlugFunction = (typeof plugFunctions)[number]

interface Contact {
  /** Pin number, or o'clock of a 7-way blade looking at the mating face with the latch up; 0 is its centre. */
  readonly at: number
  readonly does: readonly PlugFunction[]
  readonly colour: string
}

/** Source: ISO 11446 contact tables (pin 12 is reserved). */
const iso11446: readonly Contact[] = [
  { at: 1, does: ['left turn'], colour: 'yellow' },
  { at: 2, does: ['rear fog'], colour: 'blue' },
  { at: 3, does: ['return'], colour: 'white' },
  { at: 4, does: ['right turn'], colour: 'green' },
  { at: 5, does: ['tail'], colour: 'brown' },
  { at: 6, does: ['stop'], colour: 'red' },
  { at: 7, does: ['tail'], colour: 'black' },
  { at: 8, does: ['reversing'], colour: 'pink' },
  { at: 9, does: ['permanent supply'], colour: 'orange' },
  { at: 10, does: ['switched supply'], colour: 'grey' },
  { at: 11, does: ['return'], colour: 'black/white' },
  { at: 13, does: ['return'], colour: 'white/red' },
]

/** Source: 7-way connector pages (layout named as SAE J2863 there). */
const sevenBlade: readonly Contact[] = [
  { at: 11, does: ['tail'], colour: 'brown' },
  { at: 1, does: ['permanent supply'], colour: 'black' },
  { at: 3, does: ['right turn', 'stop'], colour: 'green' },
  { at: 5, does: ['electric brakes'], colour: 'blue' },
  { at: 7, does: ['return'], colour: 'white' },
  { at: 9, does: ['left turn', 'stop'], colour: 'yellow' },
  { at: 0, does: ['reversing'], colour: 'purple' },
]

/** Source: 7-way connector pages, functions only. The fifth wire of a 5-flat is the reverse lock-out of surge brakes. */
const flat: readonly PlugFunction[] = ['return', 'tail', 'left turn', 'right turn', 'stop']

/** The contacts of a plug whose layout is published; undefined for the others. ISO 1724 is pins 1 to 7 of ISO 11446. */
export const contactsOf = (plug: Plug, ruleBook: RuleBook): readonly Contact[] | undefined => {
  if (plug === '13 round') return iso11446
  if (plug === '7 blade') return sevenBlade
  return plug === '7 round' && ruleBook === 'eu' ? iso11446.filter((contact) => contact.at <= 7) : undefined
}

/** What a plug can carry; undefined for the American round 7-pin, whose layouts differ. */
export const functionsOf = (plug: Plug, ruleBook: RuleBook): ReadonlySet<PlugFunction> | undefined => {
  if (plug === '4 flat') return new Set(flat)
  if (plug === '5 flat') return new Set<PlugFunction>([...flat, 'reversing'])
  const contacts = contactsOf(plug, ruleBook)
  return contacts && new Set(contacts.flatMap((contact) => contact.does))
}
