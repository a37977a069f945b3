/** One speed symbol of a tyre's sidewall. */
interface SpeedSymbol {
  readonly kmPerHour: number
  readonly fromMemory?: true
}

/** Source: published speed symbol table; B, C and D from memory. */
const speedSymbols: Readonly<Record<string, SpeedSymbol>> = {
  B: { kmPerHour: 50, fromMemory: true }, C: { kmPerHour: 60, fromMemory: true }, D: { kmPerHour: 65, fromMemory: true },
  E: { kmPerHour: 70 }, F: { kmPerHour: 80 }, G: { kmPerHour: 90 }, J: { kmPerHour: 100 }, K: { kmPerHour: 110 }, L: { kmPerHour: 120 },
  M: { kmPerHour: 130 }, N: { kmPerHour: 140 }, P: { kmPerHour: 150 }, Q: { kmPerHour: 160 }, R: { kmPerHour: 170 }, S: { kmPerHour: 180 },
  T: { kmPerHour: 190 }, U: { kmPerHour: 200 }, H: { kmPerHour: 210 }, V: { kmPerHour: 240 }, W: { kmPerHour: 270 }, Y: { kmPerHour: 300 },
}

/** Top speed the symbol allows, km/h; undefined for a letter that is no speed symbol. */
export const speedOfSymbolKmPerHour = (symbol: string): number | undefined => speedSymbols[symbol.trim().toUpperCase()]?.kmPerHour

/** Trailer tyres marked ST without a symbol: 65 mph. Source: ST tyre load and pressure guidance, published practice. */
export const unmarkedTrailerTyreKmPerHour = 104
