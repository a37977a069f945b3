/** Resistance of copper wire at 20 degC, ohm per metre, by gauge. From memory: decides no fail. */
const resistanceOhmPerM = { '18 AWG': 0.02095, '16 AWG': 0.01317, '14 AWG': 0.008286, '12 AWG': 0.005211, '10 AWG': 0.003277 } as const
export type WireGauge = keyof typeof resistanceOhmPerM
export const wireGauges = ['18 AWG', '16 AWG', '14 AWG', '12 AWG', '10 AWG'] as const satisfies readonly WireGauge[]

/** Volts lost out and back over a run of wire: 2 L I r. */
export const voltageDropV = (gauge: WireGauge, runM: number, currentA: number): number => 2 * runM * currentA * resistanceOhmPerM[gauge]

/** Share of 12 V that may be lost. Source: published marine wiring tables, 10 % for what is not safety-critical. */
export const dropShare = (dropV: number): number => dropV / 12
export const mostDropShare = 0.1

/** Volts lost at a lamp: good up to the first, to be attended to over the second. Common practice, no source; no rule was found. */
export const lampDropV = { good: 0.5, attend: 1 } as const

/** Current of one electric brake at 12 to 13 V, A. Source: published magnet test figures for 10 and 12 in drums (7.5 to 8.2 A for two). */
export const brakeMagnetA = 4
