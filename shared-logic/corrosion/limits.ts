/**
 * Where graded corrosion becomes a finding. The mapping is common practice, no source, except where named.
 * Shares are 0 to 1, lengths m, areas m2.
 */
export const corrosionLimits = {
  /** Painted steel: above this share of a face is an advisory (above Ri 3). */
  paintedShare: 0.01,
  /** Paint broken down. Analogue: IMO MSC.1/Circ.1330, 4.1.3, POOR above 20 %. */
  brokenDownShare: 0.2,
  /** Of the length of edges and welds. Analogue: IMO MSC.1/Circ.1330, 4.1.3, FAIR from 20 %. */
  edgeShare: 0.2,
  /** Metallic coatings: red rust above this share is an advisory (below Rp 9). */
  zincShare: 0.001,
  /** A bare spot larger than this is named. Yardstick: ISO 1461:2009, 6.3, the largest area a galvanizer may repair. */
  bareSpotM2: 0.001,
  /** And the share of a part: ISO 1461:2009, 6.3. */
  bareShare: 0.005,
  /** Zinc put on in a repair, at least, m: ISO 1461:2009, 6.3. */
  zincRepairM: 0.0001,
  /** Loss of wall worth an advisory. */
  lossAdvisory: 0.1,
  /** General thinning that fails. */
  thinningFail: 0.25,
  /** Loss in a pit that fails. Analogue: IACS UR Z10.5 8.2, remaining thickness above 70 % of as-built. */
  pitFail: 0.3,
  /** Aluminium beside a weld, where 6061-T6 keeps about half its strength. */
  weldZonePitFail: 0.15,
  /** Eaten-away spot that fails, across. Source: New Zealand vehicle inspection requirements, general trailers 3-1. */
  eatenAcrossM: 0.05,
  /** Section modulus or area lost of a whole section. Analogue: IACS Common Structural Rules, Ch 13 Sec 2: not below 90 %. */
  sectionLoss: 0.1,
  /** Pitted share of a side from which the five deepest pits are measured. Analogue: IACS UR Z10.5 8.2. */
  pittingIntensity: 0.15,
} as const

/** Diameter of the circle of the same area, m. */
export const acrossOf = (areaM2: number): number => 2 * Math.sqrt(areaM2 / Math.PI)
