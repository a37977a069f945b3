/** The same place two years before, photographed the other way askew: the rust was smaller. */
export { draw } from './rust-spot.mjs'
