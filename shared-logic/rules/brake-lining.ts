import { inchM } from '../units/unit-table'

/** How the lining is held to its shoe or pad, which decides from where it is measured. */
export const liningFixings = ['bonded', 'riveted'] as const
export type LiningFixing = (typeof liningFixings)[number]

/**
 * Least thickness, m: bonded over the shoe or plate, riveted over the rivet heads.
 * Sources: bonded 1.6 mm (1/16 in), 49 CFR 393.47(d) (hydraulic and electric), of which the inch is the smaller: neither figure is below the limit;
 * riveted 1/32 in, 49 CFR 570.59(c).
 */
export const leastLiningM: Readonly<Record<LiningFixing, number>> = { bonded: inchM / 16, riveted: inchM / 32 }

/** Renewed at this thickness or less in a good shop: bonded 3 mm, riveted 1.5 mm over the heads. Source: trade literature, shop advice. */
export const worthRenewingM: Readonly<Record<LiningFixing, number>> = { bonded: 0.003, riveted: 0.0015 }
