/** The largest picture that is taken in. A phone is told before it sends one in vain. */
export const largestPhotographBytes = 100_000_000
