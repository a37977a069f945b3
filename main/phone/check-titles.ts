import { catalogue } from '../../shared-logic/checks/catalogue'
import type { PhoneChecks } from '../../shared-logic/phone/phone-door'
import { assess } from '../../shared-logic/survey/assess'
import { factsOf } from '../../shared-logic/survey/facts'
import type { Survey } from '../../shared-logic/survey/records'
import { stopsOf } from '../../shared-logic/survey/walk'
import { wordsOf } from '../../shared-logic/words/check-sentences'
import type { Words } from '../../shared-logic/words/en'
import { sayPosition } from '../../shared-logic/words/position'

/** What a phone is told of a survey: the titles and places of its checks in walking order, and which are open. Nothing of the rig, its owner, answers or verdicts. */
export const checkTitles = (survey: Survey, words: Words): PhoneChecks['stations'] =>
  stopsOf(assess(catalogue, factsOf(survey))).map(({ station, checks }) => ({
    title: words.stations[station],
    checks: checks.map(({ check, position, open }) => ({
      checkId: check.id, position, title: wordsOf(words, check).title, place: sayPosition(position, survey.rig.trailer.axleCount), isOpen: open,
    })),
  }))
