import type { Verified } from '../../shared-logic/proof/problem'
import { refuse } from '../../shared-logic/contract/refusal'
import type { Parts, Procedures } from './parts'
import { needSurvey } from './under-way'
import { verifyOneSurvey } from './verify-survey'

interface UnderWay {
  readonly stop: AbortController
  readonly verified: Promise<Verified>
}

/** Verifying reads every original, a piece at a time between other calls. Asked for twice at once it is done once. */
export const proofProcedures = ({ yard }: Parts): Procedures<'proof'> => {
  const underWay = new Map<string, UnderWay>()
  const begin = (surveyId: string): UnderWay => {
    const stop = new AbortController()
    const verified = verifyOneSurvey(yard, surveyId, { signal: stop.signal })
      .catch((error: unknown) => (stop.signal.aborted ? refuse('proof.stopped') : Promise.reject(error)))
      .finally(() => underWay.delete(surveyId))
    const begun = { stop, verified }
    underWay.set(surveyId, begun)
    return begun
  }
  return {
    'proof.verify': async ({ surveyId }) => {
      await yard.read((db) => needSurvey(db, surveyId))
      return (underWay.get(surveyId) ?? begin(surveyId)).verified
    },
    'proof.stop': async ({ surveyId }) => {
      const begun = underWay.get(surveyId)
      begun?.stop.abort()
      await begun?.verified.catch(() => undefined)
      return {}
    },
  }
}
