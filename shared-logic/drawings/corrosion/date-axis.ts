/** A mark on an axis of dates. */
export interface DateTick {
  readonly date: string
  readonly label: string
}

/** Months between marks: from every month to every fifty years. */
const steps = [1, 2, 3, 6, 12, 24, 60, 120, 240, 600]
const shortMonths = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

const monthOf = (iso: string): number => Number(iso.slice(0, 4)) * 12 + Number(iso.slice(5, 7)) - 1
const firstOf = (month: number): string => `${String(Math.floor(month / 12)).padStart(4, '0')}-${String((month % 12) + 1).padStart(2, '0')}-01`

/** Firsts of months or years between two ISO dates, at most `most` of them. */
export const dateTicks = (from: string, to: string, most: number): readonly DateTick[] => {
  const [first, last] = [monthOf(from) + (from.slice(8, 10) === '01' ? 0 : 1), monthOf(to)]
  const step = steps.find((months) => Math.floor(last / months) - Math.ceil(first / months) + 1 <= most) ?? 1200
  const start = Math.ceil(first / step) * step
  return Array.from({ length: Math.max(0, Math.floor((last - start) / step) + 1) }, (_, index) => {
    const month = start + index * step
    return { date: firstOf(month), label: step >= 12 ? String(Math.floor(month / 12)) : `${shortMonths[month % 12] ?? ''} ${Math.floor(month / 12)}` }
  })
}
