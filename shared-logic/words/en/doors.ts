/** What the doors say: the desktop shell before its window is there, and the loopback host to a browser or a terminal. */
export const doorWords = {
  turnedAway: {
    'not our address': 'This is not the address of this program.',
    'not admitted': 'Bunkwright answers only through the address it printed when it started. Open that address again.',
    'another page': 'Another page asked for this, so it was not done.',
    'no such page': 'There is nothing here.',
    'no such method': 'This address is not asked in this way.',
  },
  host: {
    closing: 'Closing the yard.',
    noBrowser: 'No browser could be opened. Open the address above in one.',
    failed: 'Something went wrong inside the program; what was kept before is kept.',
    portTaken: 'Another program uses that port. Choose another, or leave --port away.',
    usage: 'Usage: npm start -- [--folder FOLDER] [--port PORT] [--no-open] [--phone-on ADDRESS]',
    notBuilt: 'The window is not built. Run npm start, which builds it.',
  },
  shell: {
    title: 'Bunkwright',
    yardMenu: 'Yard',
    showFolder: 'Show the yard’s folder',
    editMenu: 'Edit',
    viewMenu: 'View',
    windowMenu: 'Window',
    cannotOpen: 'The yard cannot be opened',
    close: 'Close',
    openBackup: 'Open the newest good backup',
    backupFound: 'The newest good backup is of {date}. The damaged file stays where it is, beside it.',
    failed: 'The program met a fault and has to close. What was kept before is kept.',
  },
} as const
