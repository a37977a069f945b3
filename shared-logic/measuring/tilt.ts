/**
 * What a known length leaves in when the surface is tilted across it: areas come out too small by the cosine. Degrees, and the share missing.
 * Source: plane geometry (cosine). Four corners of a rectangle take it out.
 */
export const tiltNote = [10, 15, 20, 30, 45].map((degrees) => ({ degrees, missingShare: 1 - Math.cos((degrees * Math.PI) / 180) }))
