import type { Rig } from '../../shared-logic/rig/rig'

/** Folded for finding and sorting: no accents, no capitals, so that 'elan' finds 'Élan'. */
export const fold = (text: string): string => text.normalize('NFKD').replaceAll(/\p{Mn}/gu, '').toLowerCase()

const joined = (parts: readonly (string | undefined)[]): string => fold(parts.filter((part) => part !== undefined && part !== '').join(' \n '))

/** All a rig is found by. */
export const rigSearchText = (rig: Rig): string =>
  joined([
    rig.name, rig.owner?.name, rig.owner?.contact, rig.trailer.identificationNumber, rig.trailer.registration, rig.trailer.maker, rig.trailer.model,
    rig.boat?.name, rig.boat?.maker, rig.boat?.model, rig.boat?.hullIdentificationNumber,
  ])

/** All a survey is found by: its rig, and where, when and under which number. */
export const surveySearchText = (rig: Rig, survey: { readonly place?: string | undefined; readonly reportNumber?: string | undefined; readonly surveyDate: string }): string =>
  `${rigSearchText(rig)} \n ${joined([survey.place, survey.reportNumber, survey.surveyDate])}`

/** The words of a search, folded. */
export const searchWords = (search: string | undefined): string[] => fold(search ?? '').split(/\s+/).filter((word) => word !== '').slice(0, 12)
