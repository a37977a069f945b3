import { parentPort } from 'node:worker_threads'
import { sceneTasks } from './scene-tasks'
import type { SceneJob } from './on-all-cores'

/** Takes one job at a time and answers with its result, or with what went wrong. */
parentPort?.on('message', ({ task, seed, options }: SceneJob) => {
  sceneTasks[task](seed, options).then((result) => parentPort?.postMessage({ result }), (fault: unknown) => parentPort?.postMessage({ fault: `${task} of seed ${seed}: ${String(fault)}` }))
})
