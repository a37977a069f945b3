import react from '@vitejs/plugin-react'
import { defineConfig } from 'electron-vite'
import { resolve } from 'node:path'

export default defineConfig({
  main: {
    build: {
      /** Pure packages of many small files go into the bundle: opened one by one they take longer than all the rest of the start. */
      externalizeDeps: { exclude: ['zod', 'kysely', 'date-fns', 'uuid'] },
      chunkSizeWarningLimit: 4_000,
      outDir: 'out/main',
      rolldownOptions: {
        input: {
          index: resolve('main/shell/index.ts'),
          host: resolve('main/host/index.ts'),
          cli: resolve('main/cli/index.ts'),
        },
      },
    },
  },
  preload: {
    build: {
      outDir: 'out/preload',
      rolldownOptions: {
        input: { preload: resolve('main/preload.ts') },
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: 'renderer',
    base: './',
    plugins: [react()],
    build: {
      outDir: 'out/renderer',
      assetsInlineLimit: 0,
      minify: true,
      chunkSizeWarningLimit: 4_000,
      rolldownOptions: {
        input: {
          index: resolve('renderer/index.html'),
          /** What the door for a phone serves: a page of its own, kept light. */
          phone: resolve('renderer/phone.html'),
        },
      },
    },
  },
})
