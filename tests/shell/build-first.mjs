import { build } from '../../main/start/build.mjs'

/** The bundle under test is the one of these sources. */
export default build
