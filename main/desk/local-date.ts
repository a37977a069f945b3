/** The calendar date at an instant in an IANA zone, ISO yyyy-mm-dd. */
export const localDate = (at: Date, zone: string): string => {
  const parts = new Intl.DateTimeFormat('en-GB', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).formatToParts(at)
  const part = (type: 'year' | 'month' | 'day'): string => parts.find((each) => each.type === type)?.value ?? ''
  return `${part('year').padStart(4, '0')}-${part('month')}-${part('day')}`
}
