/** What a clock on the wall shows: `date` yyyy-mm-dd, `time` hh:mm:ss, and the zone it hangs in. */
export interface WallClock {
  readonly date: string
  readonly time: string
  readonly zone: string
}

/** An instant, ISO with Z, as the clock on the wall showed it in an IANA zone; in UTC, as it was stored, where this machine does not know the zone. */
export const wallClock = (instant: string, zone: string): WallClock => {
  try {
    const format = new Intl.DateTimeFormat('en-GB', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit', second: '2-digit', hourCycle: 'h23' })
    const parts = new Map(format.formatToParts(new Date(instant)).map(({ type, value }) => [type, value]))
    return { date: `${parts.get('year')}-${parts.get('month')}-${parts.get('day')}`, time: `${parts.get('hour')}:${parts.get('minute')}:${parts.get('second')}`, zone }
  } catch {
    return { date: instant.slice(0, 10), time: instant.slice(11, 19), zone: 'UTC' }
  }
}
