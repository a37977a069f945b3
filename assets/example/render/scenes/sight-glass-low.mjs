import { hubGlass } from '../hub-glass.mjs'

/** Clear amber oil, its level from the truth. */
export const draw = ({ oilLevel }) => hubGlass({ oilLevel, deep: '#6d3a06', middle: '#b06a12', bright: '#e5a94a', clear: 0.82 })
