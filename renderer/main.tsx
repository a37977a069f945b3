import './client/no-eval'
import './style/fonts.css'
import './style/tokens.css'
import './style/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app'
import { makeQueryClient } from './client/use-procedure'

const root = document.getElementById('root')
if (!root) throw new Error('the page has no root element')
createRoot(root).render(<StrictMode><App client={makeQueryClient()} /></StrictMode>)
