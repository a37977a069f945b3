import { daysPast, dueOn } from './service-interval'

/** Months after which a weighing no longer speaks for the rig as it is loaded now. Common practice, no source. */
export const weighingMonths = 12

/** Whether a weighing is older than that on a day; both ISO dates. On the day it turns twelve months it is not. */
export const isOldWeighing = (weighedOn: string, today: string): boolean => daysPast(dueOn(weighedOn, weighingMonths), today) > 0
