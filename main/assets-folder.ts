import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** A file every copy of the assets has: by it the folder is known for ours. */
const landmark = join('fonts', 'AtkinsonHyperlegibleNext-Regular.ttf')

/**
 * The folder `assets`, looked for upward from this module: beside `main/` in the sources, beside `out/` once built and
 * once packed. Throws when no copy is there, for then the installation is broken.
 */
export const assetsFolder = (from: string = import.meta.url): string => {
  for (let folder = dirname(fileURLToPath(from)); ; folder = dirname(folder)) {
    const assets = join(folder, 'assets')
    if (existsSync(join(assets, landmark))) return assets
    if (dirname(folder) === folder) throw new Error('the folder assets is missing from this installation')
  }
}
