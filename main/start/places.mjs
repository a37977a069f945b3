import { fileURLToPath } from 'node:url'
import { join } from 'node:path'

/** The checkout this file lies in. */
export const root = fileURLToPath(new URL('../..', import.meta.url))
export const place = (...parts) => join(root, ...parts)
