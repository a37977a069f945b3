const codes = new Set(['door.busy', 'door.broken-off', 'door.no-answer', 'photograph.disk-full', 'photograph.read-only'])

/** Whether a photograph was refused for the moment, not for itself: no room on the disk, no answer. Handed over again it may go in. */
export const mayGoInLater = (code: string): boolean => codes.has(code) || code.startsWith('disk.')
