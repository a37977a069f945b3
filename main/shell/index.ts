import { fileURLToPath } from 'node:url'
import { startProgram } from './program'

startProgram({
  rendererFolder: fileURLToPath(new URL('../renderer', import.meta.url)),
  preload: fileURLToPath(new URL('../preload/preload.cjs', import.meta.url)),
})
