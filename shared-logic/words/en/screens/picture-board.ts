/** The hand on a photograph: coming closer, a crosshair moved by keys, points that are dragged; measuring and marking share it. */
export const pictureBoardWords = {
  undo: 'Undo',
  redo: 'Redo',
  zoomIn: 'Closer',
  zoomOut: 'Further',
  fit: 'Whole picture',
  crosshair: 'Crosshair at {x}, {y}',
  handleAt: '{name}, at {x}, {y}',
  moved: '{name}: {x}, {y}',
  lengthRange: 'Give a length from {least} to {most}.',
  removed: '{name} removed.',
  notShown: 'This photograph cannot be shown. Its file may be gone from the yard’s folder.',
} as const
