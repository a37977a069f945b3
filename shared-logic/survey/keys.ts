/** One check at one position, as a key: 'hubs.oil-level @ axle 1 left'. */
export const placeKey = (checkId: string, position: string): string => `${checkId} @ ${position}`
