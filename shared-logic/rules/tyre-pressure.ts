/** Shares of the placard pressure at which a cold tyre is low, much too low, or high. Common practice, no source. */
export const lowShare = 0.9
export const muchTooLowShare = 0.8
export const highShare = 1.1

/** Share of the mass that may rest on the coupling, at most, in any published band: what the tyres must carry at the least is the rest. */
export const mostCouplingShare = 0.15

/** A cut this long that reaches the cords condemns the tyre, m. Source: New Zealand damage limits. */
export const longCutM = 0.025

/** Room between tyre and mudguard, m. Common practice, no source. */
export const mudguardRoomM = 0.025
