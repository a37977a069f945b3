import { refuse } from '../../shared-logic/contract/refusal'
import type { Desk } from '../../shared-logic/contract/contract'
import { catalogueVersion } from '../../shared-logic/checks/catalogue'
import { countYard } from '../store/surveys'
import { localDate } from './local-date'
import type { Parts, Procedures } from './parts'

/** `desk` is asked for late: the example is filled in through the whole desk. */
export const yardProcedures = ({ yard, clock, zone, version, fillExample }: Parts, desk: () => Desk): Procedures<'yard'> => ({
  'yard.about': async () => ({
    version,
    catalogueVersion,
    folder: yard.folder,
    today: localDate(clock(), zone),
    zone,
    ...(await yard.read(countYard)),
  }),
  'yard.openExample': async () => {
    const { rigCount, surveyCount } = await yard.read(countYard)
    if (rigCount + surveyCount > 0) refuse('yard.not-empty')
    await fillExample(desk())
    return { rigCount: (await yard.read(countYard)).rigCount }
  },
})
