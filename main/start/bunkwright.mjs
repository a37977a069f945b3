#!/usr/bin/env node
import { place } from './places.mjs'
import { prepare } from './prepare.mjs'
import { runChild } from './run-child.mjs'

/** The command line: `bunkwright …`, `npm run cli -- …`. */
const { code } = await runChild(await prepare(), [place('out', 'main', 'cli.js'), ...process.argv.slice(2)])
process.exit(code)
