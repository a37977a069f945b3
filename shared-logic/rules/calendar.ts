const daysIn = (year: number, month: number): number => new Date(Date.UTC(year, month, 0)).getUTCDate()
const padded = (value: number, length: number): string => String(value).padStart(length, '0')

/** An ISO date some months later; the last day of the month where the day does not exist there. */
export const addMonths = (iso: string, months: number): string => {
  const [year = 0, month = 1, day = 1] = iso.split('-').map(Number)
  const index = year * 12 + month - 1 + months
  const laterYear = Math.floor(index / 12)
  const laterMonth = (index % 12) + 1
  return `${padded(laterYear, 4)}-${padded(laterMonth, 2)}-${padded(Math.min(day, daysIn(laterYear, laterMonth)), 2)}`
}

/** Days from one ISO date to a later one; negative when it is earlier. */
export const daysBetween = (from: string, to: string): number => Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000)
