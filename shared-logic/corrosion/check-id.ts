/** The check whose answers hold the corroded spots. */
export const corrosionCheckId = 'frame.corrosion'
