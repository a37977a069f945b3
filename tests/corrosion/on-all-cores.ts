import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'
import { build } from 'vite'
import type { sceneTasks } from './scene-tasks'
import type { SceneOptions } from './scenes/plan'

type Tasks = typeof sceneTasks

export interface SceneJob { readonly task: keyof Tasks, readonly seed: number, readonly options: SceneOptions }

type Answer<T extends keyof Tasks> = { readonly result: Awaited<ReturnType<Tasks[T]>> } | { readonly fault: string }

/** The worker as one plain file: under the test runner's own loader every call across files is a look-up, four times as slow a pixel. */
async function builtWorker(name: string): Promise<string> {
  const outDir = fileURLToPath(new URL(`../output/corrosion/${name}`, import.meta.url))
  await build({
    configFile: false, logLevel: 'error', ssr: { external: ['sharp'] },
    build: { ssr: fileURLToPath(new URL('./scene-worker.ts', import.meta.url)), outDir, emptyOutDir: true, minify: false, target: 'node20', rolldownOptions: { output: { entryFileNames: 'scene-worker.mjs' } } },
  })
  return `${outDir}/scene-worker.mjs`
}

/** One thread that takes jobs off the queue until none is left. */
async function emptied<T extends keyof Tasks>(file: string, task: T, queue: { at: number }, jobs: readonly Omit<SceneJob, 'task'>[], results: Awaited<ReturnType<Tasks[T]>>[]): Promise<void> {
  const worker = new Worker(file)
  const done = new Promise<void>((resolve, reject) => {
    let at = -1
    const next = (): void => {
      at = queue.at++
      const job = jobs[at]
      if (job === undefined) resolve()
      else worker.postMessage({ task, ...job })
    }
    worker.on('error', reject)
    worker.on('message', (answer: Answer<T>) => {
      if ('fault' in answer) reject(new Error(answer.fault))
      else {
        results[at] = answer.result
        next()
      }
    })
    next()
  })
  try {
    await done
  } finally {
    await worker.terminate()
  }
}

/** Does a task for every job, on as many threads as there are cores; results in the order of the jobs. `name` keeps one test's build apart from another's. */
export async function onAllCores<T extends keyof Tasks>(name: string, task: T, jobs: readonly Omit<SceneJob, 'task'>[]): Promise<Awaited<ReturnType<Tasks[T]>>[]> {
  const file = await builtWorker(name)
  const results: Awaited<ReturnType<Tasks[T]>>[] = []
  const queue = { at: 0 }
  await Promise.all(Array.from({ length: Math.min(4, availableParallelism()) }, () => emptied(file, task, queue, jobs, results)))
  return results
}
