import { build } from './build.mjs'
import { install } from './install.mjs'
import { nodeToUse } from './node-version.mjs'

/** Installs what is missing and builds what is stale. Answers the Node to run the program with. */
export const prepare = async () => {
  install()
  await build()
  return nodeToUse()
}
