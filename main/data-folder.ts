import { homedir } from 'node:os'
import { join } from 'node:path'

const applicationData = (platform: NodeJS.Platform, environment: NodeJS.ProcessEnv, home: string): string => {
  if (platform === 'win32') return environment['APPDATA'] ?? join(home, 'AppData', 'Roaming')
  if (platform === 'darwin') return join(home, 'Library', 'Application Support')
  const named = environment['XDG_DATA_HOME']
  return named?.startsWith('/') === true ? named : join(home, '.local', 'share')
}

/**
 * Where the yard is kept when no folder is named: `BUNKWRIGHT_FOLDER`, else the system's place for application data.
 * Local by default: a folder that a cloud service syncs is no place for a database.
 */
export const dataFolder = (platform: NodeJS.Platform = process.platform, environment: NodeJS.ProcessEnv = process.env, home: string = homedir()): string => {
  const named = environment['BUNKWRIGHT_FOLDER']
  return named !== undefined && named !== '' ? named : join(applicationData(platform, environment, home), 'bunkwright', 'yard')
}
