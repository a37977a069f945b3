/** What the start says on the terminal, on standard error: standard output is the program's own. */
export const lines = {
  installing: 'Installing what is missing; the first time this takes a minute.',
  installFailed: 'What the program needs could not be installed. The lines above say why; with a network, run the same command again.',
  building: 'Building what has changed.',
  buildFailed: 'The program could not be built. The lines above say why.',
  oldNode: (version) => `Node ${version} is too old to run the program, and none newer could be installed beside it. Install Node 22.12 or newer.`,
  fetchingElectron: 'Fetching Electron for the desktop window; this is done once.',
  noElectron: {
    fetch: 'Electron could not be fetched, so the same program is served to your browser on this machine alone.',
    display: 'There is no display here, so the program is served to a browser on this machine alone.',
    asked: 'Served to your browser on this machine alone, as asked.',
    broken: 'Electron could not be started, so the same program is served to your browser on this machine alone.',
  },
}

export const tell = (line) => void process.stderr.write(`${line}\n`)
