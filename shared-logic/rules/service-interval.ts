import { addMonths } from 'date-fns/addMonths'
import { differenceInCalendarDays } from 'date-fns/differenceInCalendarDays'
import { formatISO } from 'date-fns/formatISO'
import { parseISO } from 'date-fns/parseISO'

const isoDate = (date: Date): string => formatISO(date, { representation: 'date' })

/** When a job last done on `last` falls due again, ISO date. */
export const dueOn = (last: string, months: number): string => isoDate(addMonths(parseISO(last), months))

/** Days past a date; negative before it. */
export const daysPast = (due: string, today: string): number => differenceInCalendarDays(parseISO(today), parseISO(due))

/** How a job stands: `long overdue` once twice its interval has gone by. Common practice, no source. */
export type ServiceState = 'in date' | 'overdue' | 'long overdue'
export const serviceState = (last: string, months: number, today: string): ServiceState => {
  if (daysPast(dueOn(last, 2 * months), today) > 0) return 'long overdue'
  return daysPast(dueOn(last, months), today) > 0 ? 'overdue' : 'in date'
}
