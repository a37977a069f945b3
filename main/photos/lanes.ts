/** Runs jobs in the order they come, at most as many at once as there are lanes. */
export interface Lanes {
  run<Result>(job: () => Promise<Result>): Promise<Result>
}

export const openLanes = (count: number): Lanes => {
  const waiting: (() => void)[] = []
  let free = count
  const enter = async (): Promise<void> => {
    if (free > 0) free -= 1
    else await new Promise<void>((resolve) => waiting.push(resolve))
  }
  /** A lane is handed straight to the next in the queue, so that none can slip in between. */
  const leave = (): void => {
    const next = waiting.shift()
    if (next) next()
    else free += 1
  }
  return {
    async run(job) {
      await enter()
      try {
        return await job()
      } finally {
        leave()
      }
    },
  }
}
