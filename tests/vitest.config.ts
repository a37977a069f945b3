import react from '@vitejs/plugin-react'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

export default defineConfig({
  root,
  test: {
    // By itself it would leave one core to look at: half the machine where there are two.
    maxWorkers: '100%',
    testTimeout: 30_000,
    reporters: ['default', './tests/counts.ts'],
    coverage: {
      provider: 'v8',
      include: ['main/**/*.ts', 'shared-logic/**/*.ts', 'renderer/**/*.{ts,tsx}'],
      reportsDirectory: 'coverage',
      thresholds: { 'shared-logic/**': { lines: 90, branches: 80 } },
    },
    projects: [
      { extends: true, test: { name: 'unit', environment: 'node', include: ['tests/**/*.test.ts'], exclude: ['tests/walk/**', 'tests/shell/**', 'node_modules/**'] } },
      { extends: true, plugins: [react()], test: { name: 'dom', environment: 'jsdom', include: ['tests/**/*.test.tsx'] } },
      {
        extends: true,
        test: {
          name: 'shell', environment: 'node', include: ['tests/shell/**/*.test.ts'], globalSetup: ['tests/shell/build-first.mjs'],
          alias: { electron: fileURLToPath(new URL('./shell/stand-in/stand-in.ts', import.meta.url)) },
        },
      },
      // After all the others, so that a browser's waiting is not waiting for them.
      { extends: true, test: { name: 'walk', environment: 'node', include: ['tests/walk/**/*.test.ts'], globalSetup: ['tests/shell/build-first.mjs'], testTimeout: 480_000, hookTimeout: 120_000, expect: { poll: { timeout: 20_000 } }, sequence: { groupOrder: 1 } } },
    ],
  },
})
