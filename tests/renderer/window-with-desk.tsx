import { QueryClientProvider } from '@tanstack/react-query'
import { configure, render } from '@testing-library/react'
import type { ReactNode } from 'react'
import { Router } from 'wouter'
import { hashLocation } from '../../renderer/client/hash-location'
import { makeQueryClient } from '../../renderer/client/use-procedure'
import type { InputOf, OutputOf, ProcedureName } from '../../shared-logic/contract/contract'
import type { Reply } from '../../shared-logic/contract/reply'
import { defaultSettings, type Settings } from '../../shared-logic/survey/settings'

// A machine that runs other tests beside these is slow; nothing here is about speed.
configure({ asyncUtilTimeout: 8_000 })

/** Answers of a desk at the other end of the bridge: a value, at once or in time, or a refusal as a reply. */
export type Answers = { readonly [Name in ProcedureName]?: (input: InputOf<Name>) => OutputOf<Name> | Reply | Promise<OutputOf<Name> | Reply> }

export interface Asked {
  readonly name: string
  readonly input: unknown
}

const isReply = (value: unknown): value is Reply => typeof value === 'object' && value !== null && 'ok' in value

/** Draws a screen in a window whose desk answers as given; tells what was asked of it. */
export const drawWithDesk = (screen: ReactNode, answers: Answers, settings: Partial<Settings> = {}) => {
  const asked: Asked[] = []
  const all: Record<string, ((input: never) => unknown) | undefined> = { 'settings.get': () => ({ settings: { ...defaultSettings, ...settings }, saved: true }), ...answers }
  const call = (name: string, input: unknown): Promise<unknown> => {
    asked.push({ name, input })
    const answer = all[name]
    if (!answer) return Promise.reject(new Error(`nothing answers ${name}`))
    return Promise.resolve(answer(input as never)).then((value) => (isReply(value) ? value : { ok: true, value }))
  }
  Object.defineProperty(window, 'bunkwright', { value: { call }, configurable: true })
  const client = makeQueryClient()
  const drawn = render(
    <QueryClientProvider client={client}>
      <Router hook={hashLocation}>{screen}</Router>
    </QueryClientProvider>,
  )
  return { ...drawn, asked, client }
}
