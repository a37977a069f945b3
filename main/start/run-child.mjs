import { spawn } from 'node:child_process'
import { constants } from 'node:os'

const passed = ['SIGINT', 'SIGTERM', 'SIGHUP']

/** Runs a program in our place: its terminal is ours, signals are passed on, and we leave with its code. */
export const runChild = (program, args, environment = process.env) =>
  new Promise((resolve) => {
    const child = spawn(program, args, { stdio: 'inherit', env: environment })
    const pass = (signal) => void child.kill(signal)
    for (const signal of passed) process.on(signal, pass)
    const done = (end) => {
      for (const signal of passed) process.off(signal, pass)
      resolve(end)
    }
    child.once('error', () => done({ code: 127, started: false }))
    child.once('exit', (code, signal) => done({ code: code ?? 128 + (constants.signals[signal] ?? 0), signal, started: true }))
  })
