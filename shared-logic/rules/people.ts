/** Persons a boat's capacity plate allows, from its persons capacity in lb; half a person rounds up. Source: 33 CFR 183.41(b), 183.43. */
export const personsOf = (capacityLb: number): number => Math.max(0, Math.floor((capacityLb + 32) / 141 + 0.5))

/** Mass that counts for people in a boat, kg. Source: ISO 14946:2021, ISO 12217-3:2013. */
export const crewMassKg = (adults: number, children: number): number => adults * 75 + children * 37.5
