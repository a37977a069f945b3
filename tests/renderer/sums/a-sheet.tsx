import { SumsPage } from '../../../renderer/sums/sums-page'
import { contract, type InputOf } from '../../../shared-logic/contract/contract'
import type { Rig } from '../../../shared-logic/rig/rig'
import { drawWithDesk, type Answers } from '../window-with-desk'

export const rigId = '0197a000-0000-7000-8000-000000000001'
export const today = '2026-11-25'
export const saved = ({ rig }: InputOf<'rigs.save'>) => ({ id: rigId, rig, surveyCount: 0 })
const about = { version: '1', catalogueVersion: '1', folder: 'yard', today, zone: 'UTC', rigCount: 1, surveyCount: 0 }

/** The sums of a rig on the screen, before a desk that keeps what it is given. */
export const openSheet = (rig: Rig, more: Answers = {}) =>
  drawWithDesk(<SumsPage rigId={rigId} />, { 'rigs.get': () => ({ id: rigId, rig, surveyCount: 0 }), 'rigs.save': saved, 'yard.about': () => about, ...more }, { units: 'metric' })

/** Every rig the desk was given to keep, in that order. */
export const keptRigs = (asked: readonly { name: string; input: unknown }[]): Rig[] => asked.filter(({ name }) => name === 'rigs.save').map(({ input }) => contract['rigs.save'].input.parse(input).rig)
