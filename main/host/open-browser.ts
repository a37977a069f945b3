import { spawn } from 'node:child_process'

const opener = (platform: NodeJS.Platform, environment: NodeJS.ProcessEnv): readonly string[] | undefined => {
  if (platform === 'darwin') return ['open']
  if (platform === 'win32') return ['rundll32.exe', 'url.dll,FileProtocolHandler']
  const hasDisplay = (environment['DISPLAY'] ?? '') !== '' || (environment['WAYLAND_DISPLAY'] ?? '') !== ''
  return hasDisplay ? ['xdg-open'] : undefined
}

/** Asks the system to show the address; false where there is nothing to show it on. A refusal of the system is told to `onFailure`. */
export const openBrowser = (address: string, onFailure: () => void, platform: NodeJS.Platform = process.platform, environment: NodeJS.ProcessEnv = process.env): boolean => {
  const [program, ...before] = opener(platform, environment) ?? []
  if (program === undefined) return false
  const child = spawn(program, [...before, address], { stdio: 'ignore', detached: true })
  child.on('error', onFailure)
  child.on('exit', (code) => {
    if (code !== 0) onFailure()
  })
  child.unref()
  return true
}
