import { hubGlass } from '../hub-glass.mjs'

/** Oil that holds water: pale, and nothing to be seen through it. */
export const draw = ({ oilLevel, isMilky }) => hubGlass({ oilLevel, deep: '#a59271', middle: '#d3c5a6', bright: '#efe8d6', clear: isMilky ? 0.97 : 0.7 })
