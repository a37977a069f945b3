/**
 * Load one tyre may carry, kg, for load index 50 upwards in steps of one.
 * Source: two independent published load index tables (kg for 50-119, lb for 50-130), each figure checked against the other.
 */
const loadsFrom50Kg = [
  190, 195, 200, 206, 212, 218, 224, 230, 236, 243, // 50
  250, 257, 265, 272, 280, 290, 300, 307, 315, 325, // 60
  335, 345, 355, 365, 375, 387, 400, 412, 425, 437, // 70
  450, 462, 475, 487, 500, 515, 530, 545, 560, 580, // 80
  600, 615, 630, 650, 670, 690, 710, 730, 750, 775, // 90
  800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, // 100
  1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, // 110
  1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, // 120
  1900, // 130
] as const

/** Load of one tyre with this index, kg; undefined outside 50-130. */
export const loadOfIndexKg = (loadIndex: number): number | undefined => loadsFrom50Kg[loadIndex - 50]

/**
 * What the tyres of one axle carry together, kg. Single fitting: of a marking '96/94' the first number counts,
 * on a tandem axle too, for each of its wheels stands alone.
 */
export const tyresCarryKg = (loadIndex: number, tyreCount: number): number | undefined => {
  const each = loadOfIndexKg(loadIndex)
  return each === undefined ? undefined : each * tyreCount
}

/**
 * Load a passenger-car tyre counts for on a trailer, kg.
 * Source: 49 CFR 571.120 S5.1.2, as quoted in the agency's letter of 17 November 1976.
 */
export const passengerTyreOnTrailerKg = (loadKg: number): number => loadKg / 1.1
