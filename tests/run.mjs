import { packagedNode } from '../main/start/install.mjs'
import { place, root } from '../main/start/places.mjs'
import { prepare } from '../main/start/prepare.mjs'
import { runChild } from '../main/start/run-child.mjs'

/** `npm test`, on a fresh clone too: installs and builds, then runs everything under the Node the tools want. */
process.chdir(root)
const own = await prepare()
const node = packagedNode() ?? own
const { code } = await runChild(node, ['--experimental-strip-types', '--disable-warning=ExperimentalWarning', place('tests', 'run-all.mjs'), ...process.argv.slice(2)])
process.exit(code)
