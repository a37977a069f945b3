import '../style/fonts.css'
import '../style/tokens.css'
import '../style/base.css'
import './phone.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { Handover } from './handover'
import { httpDoor } from './http-door'
import { openShelf } from './lasting-shelf'
import { newId } from './new-id'
import { phoneNameFrom } from './phone-name'
import { PhonePage } from './phone-page'
import { takeSecret } from './secret'
import { smallPicture } from './small-picture'

/** How often the desktop hears of this phone, while someone looks at the page. */
const beatEveryMs = 5_000

const root = document.getElementById('root')
if (!root) throw new Error('the page has no root element')

const begin = async (): Promise<void> => {
  // Before anything is awaited: the secret stands in the address no longer than it must.
  const secret = takeSecret()
  const handover = new Handover({ door: httpDoor, shelf: await openShelf(), shrink: smallPicture, newId, phoneName: phoneNameFrom(navigator.userAgent) })
  // The address of a new code, opened in this tab, differs behind '#' alone: the page is not loaded anew.
  window.addEventListener('hashchange', () => {
    const next = takeSecret()
    if (next !== undefined) handover.join(next)
  })
  window.addEventListener('online', handover.wake)
  window.addEventListener('pageshow', (event) => { if (event.persisted) handover.wake() })
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') handover.wake() })
  setInterval(() => { if (document.visibilityState === 'visible') handover.beat() }, beatEveryMs)
  createRoot(root).render(<StrictMode><PhonePage handover={handover} /></StrictMode>)
  await handover.start(secret)
}

void begin()
