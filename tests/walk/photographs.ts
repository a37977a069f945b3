import type { Page } from 'playwright-core'
import { en } from '../../shared-logic/words/en'
import type { PictureFile } from './pictures'

const { photographs } = en.screens.survey

const shown = (page: Page) => page.getByRole('article').getByRole('button', { name: /, view large$/ })

/** How many photographs the open check shows. */
export const photographsShown = (page: Page): Promise<number> => shown(page).count()

/** Waits until a batch is in, reads what is said of it, and puts the line away where it asks for that. */
const readNews = async (page: Page): Promise<string> => {
  // What may be wrong with a picture has a name of its own, and stands until it is read.
  const news = page.locator('output:not([aria-label])').filter({ hasText: /\S/, visible: true }).filter({ has: page.locator('p, li') }).last()
  await news.waitFor()
  const text = await news.innerText()
  const dismiss = page.getByRole('button', { name: photographs.dismiss, exact: true })
  if (await dismiss.isVisible()) await dismiss.click()
  return text
}

/** Does something that brings one photograph in, and waits until the check shows it. */
const untilOneMore = async (page: Page, act: () => Promise<void>): Promise<void> => {
  const before = await photographsShown(page)
  await act()
  await shown(page).nth(before).waitFor()
}

/** Many at once, through the system's own file picker. */
export const addByPicker = async (page: Page, files: readonly PictureFile[]): Promise<string> => {
  const chooser = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: photographs.add, exact: true }).click()
  await (await chooser).setFiles([...files])
  return readNews(page)
}

/** Dropped on the open check. */
export const addByDrop = async (page: Page, file: PictureFile): Promise<void> => {
  const data = await page.evaluateHandle(({ name, type, bytes }) => {
    const transfer = new DataTransfer()
    transfer.items.add(new File([Uint8Array.from(bytes)], name, { type }))
    return transfer
  }, { name: file.name, type: file.mimeType, bytes: [...file.buffer] })
  await untilOneMore(page, async () => {
    await page.getByRole('article').dispatchEvent('dragover', { dataTransfer: data })
    await page.getByRole('article').dispatchEvent('drop', { dataTransfer: data })
  })
}

/** A picture on the clipboard, pasted by the system's own key. */
export const addByPaste = async (page: Page): Promise<void> => {
  await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(64, 48)
    canvas.getContext('2d')?.fillRect(4, 4, 40, 30)
    await navigator.clipboard.write([new ClipboardItem({ 'image/png': await canvas.convertToBlob({ type: 'image/png' }) })])
  })
  await untilOneMore(page, () => page.keyboard.press('ControlOrMeta+v'))
}
