import { refuse } from '../../shared-logic/contract/refusal'
import type { Desk } from '../../shared-logic/contract/contract'

export const fillExample = async (_desk: Desk): Promise<void> => refuse('yard.no-example')
