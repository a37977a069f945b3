import { packagedNode } from '../../main/start/install.mjs'
import { place, root } from '../../main/start/places.mjs'
import { prepare } from '../../main/start/prepare.mjs'
import { runChild } from '../../main/start/run-child.mjs'

/** `npm run bench [-- NAME …]`: installs and builds, then measures what is promised, under the Node the tools want. */
process.chdir(root)
const own = await prepare()
const { code } = await runChild(packagedNode() ?? own, [place('tests', 'bench', 'run-all.mjs'), ...process.argv.slice(2)])
process.exit(code)
