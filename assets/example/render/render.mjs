// Draws the pictures of the example from their truth in ../pictures.json: node assets/example/render/render.mjs [name …]
import { readFile, writeFile } from 'node:fs/promises'
import { photograph } from './photograph.mjs'

const pictures = JSON.parse(await readFile(new URL('../pictures.json', import.meta.url), 'utf8'))
const wanted = new Set(process.argv.slice(2))

for (const picture of pictures) {
  const name = picture.file.replace('.jpg', '')
  if (wanted.size > 0 && !wanted.has(name)) continue
  const { draw } = await import(`./scenes/${name}.mjs`)
  const bytes = await photograph(draw(picture.truth), picture)
  await writeFile(new URL(`../${picture.file}`, import.meta.url), bytes)
  console.log(`${picture.file} ${Math.round(bytes.byteLength / 1000)} kB`)
}
