import type { FromWriter, ToWriter } from './jpeg-messages'

/** Fine enough that no grade of rust is lost; 12 MP come to 2 to 4 MB. */
const quality = 0.92

const write = async ({ frame, widthPx, heightPx }: ToWriter): Promise<Blob> => {
  const canvas = new OffscreenCanvas(widthPx, heightPx)
  const drawn = canvas.getContext('2d', { alpha: false })
  if (drawn === null) throw new Error('this window cannot draw beside itself')
  drawn.drawImage(frame, 0, 0, widthPx, heightPx)
  // The camera has few frames of its own: each is given back as soon as it is drawn.
  frame.close()
  return canvas.convertToBlob({ type: 'image/jpeg', quality })
}

const answer = (message: FromWriter): void => { self.postMessage(message) }

self.addEventListener('message', ({ data }: MessageEvent<ToWriter>) => {
  const { number } = data
  write(data).then((jpeg) => answer({ number, jpeg }), () => answer({ number }))
})
