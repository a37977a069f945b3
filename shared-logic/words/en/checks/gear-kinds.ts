import type { CheckWords, StationCheckWords } from '../../check-words'
import { fieldOptions } from '../field-options'

interface KindWords {
  readonly title: string
  readonly question: string
  readonly how: string
  readonly gear: string
}

/** One question for all gear that comes in kinds; the kinds are called as the register calls them. */
const kindWords = (path: string, { title, question, how, gear }: KindWords): CheckWords => ({
  title,
  question,
  how: `${how} Put it into the rig’s record: then the checks of that kind are asked, and no others.`,
  criterion: 'The kind decides which checks are asked. Until the record names it, a walk-round asks only what is common to all kinds.',
  consequence: `Until the record has it, ${gear} is looked at in part only.`,
  outcomes: Object.fromEntries(
    Object.entries(fieldOptions[path] ?? {}).map(([kind, label]) => [kind, { option: label, because: `${title}: ${label.toLowerCase()}. The rig’s record does not have it yet${kind === 'none' ? '' : ', so the checks of that kind were not asked'}.` }]),
  ),
})

export const gearKindWords: StationCheckWords = {
  'winch.kind': kindWords('trailer.winch', { title: 'Kind of winch', question: 'What winch has it?', how: 'Look what it pulls with, a strap or a cable, and whether by hand.', gear: 'the winch' }),
  'bunks.kind': kindWords('trailer.supports', { title: 'Kind of hull support', question: 'What does the hull lie on?', how: 'Look under the boat: bunks, rollers or both.', gear: 'what the hull lies on' }),
  'axles.kind': kindWords('trailer.suspension', { title: 'Kind of suspension', question: 'What springs has it?', how: 'Look between axle and frame: leaves, a square tube with arms, or coils.', gear: 'the suspension' }),
  'hubs.kind': kindWords('trailer.hubLubrication', { title: 'Kind of hub lubrication', question: 'Do the hubs run in oil or in grease?', how: 'Look at the cap: a sight glass means oil, a nipple or plain cap means grease.', gear: 'the lubrication' }),
  'brakes.kind': kindWords('trailer.brakes', { title: 'Kind of brakes', question: 'What brakes has it?', how: 'Look behind a wheel and at the coupling: one that slides in works surge brakes; two wires to each wheel mean electric ones.', gear: 'the brakes' }),
}
