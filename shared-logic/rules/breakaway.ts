/** How long breakaway brakes have to hold, s. Source: 49 CFR 393.43(d); District of Columbia Municipal Regulations 18-721. */
export const breakawayHoldS = 15 * 60

/** Voltages of a 12 V breakaway battery at rest: full, low, flat. Common practice, no source. */
export const breakawayBatteryV = { full: 12.6, low: 12, flat: 10.5 } as const
