import { findElectron } from './electron.mjs'
import { lines, tell } from './lines.mjs'
import { place, root } from './places.mjs'
import { prepare } from './prepare.mjs'
import { runChild } from './run-child.mjs'

/** Opens the desktop window; where Electron cannot be had, serves the same program to the browser. */

const inBrowser = '--in-browser'
const args = process.argv.slice(2).filter((argument) => argument !== inBrowser)
const node = await prepare()

const serve = async (why) => {
  tell(lines.noElectron[why])
  const { code } = await runChild(node, [place('out', 'main', 'host.js'), ...args])
  process.exit(code)
}

/** It never came up: the system lacks a library it needs, or its sandbox is not allowed. */
const didNotStart = ({ started, code, signal }) => !started || code === 127 || signal === 'SIGTRAP' || signal === 'SIGABRT'

if (process.argv.includes(inBrowser)) await serve('asked')
const electron = findElectron(node)
if (electron.path === undefined) await serve(electron.why)
const { ELECTRON_RUN_AS_NODE: _asNode, ...environment } = process.env
const end = await runChild(electron.path, [root, ...args], environment)
if (didNotStart(end)) await serve('broken')
process.exit(end.code)
