import type { InputOf, OutputOf, ParsedInputOf } from '../../shared-logic/contract/contract'
import type { PhoneState } from '../../shared-logic/phone/phone-state'
import { refuse } from '../../shared-logic/contract/refusal'
import type { Parts, Procedures } from './parts'
import { needUnderWay } from './under-way'

/** The door on the local network, handed in by whoever can open one: a command line cannot. One stands open at a time. */
export interface PhoneDoor {
  readonly open: (wanted: ParsedInputOf<'phone.open'>) => Promise<PhoneState>
  readonly state: (surveyId: InputOf<'phone.state'>['surveyId']) => OutputOf<'phone.state'>['door']
  /** Closes the door of that survey, if one stands open. */
  readonly close: (surveyId: string) => Promise<void>
  /** Before the program ends. */
  readonly closeAll: () => Promise<void>
}

export const phoneProcedures = ({ yard, phoneDoor }: Parts): Procedures<'phone'> => ({
  'phone.open': async (input) => {
    await yard.read((db) => needUnderWay(db, input.surveyId))
    return phoneDoor ? phoneDoor.open(input) : refuse('phone.no-door')
  },
  'phone.state': async ({ surveyId }) => ({ door: phoneDoor?.state(surveyId) }),
  'phone.close': async ({ surveyId }) => {
    await phoneDoor?.close(surveyId)
    return {}
  },
})
