import { packagedNode } from './install.mjs'
import { lines, tell } from './lines.mjs'

/** The oldest Node that the packages run on. */
const isNewEnough = (version) => {
  const [major = 0, minor = 0] = version.split('.').map(Number)
  return major > 22 || (major === 22 && minor >= 12)
}

/** The Node to run the program with: this one, or the one that came with the packages. */
export const nodeToUse = () => {
  const own = process.versions.node
  const found = isNewEnough(own) ? process.execPath : packagedNode()
  if (found !== undefined) return found
  tell(lines.oldNode(own))
  return process.exit(1)
}
