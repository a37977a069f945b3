import { cleanup, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { TextField } from '../../../renderer/parts/text-field'
import { drawWithDesk } from '../window-with-desk'

afterEach(cleanup)

const Maker = () => {
  const [text, setText] = useState('')
  return <TextField label="Maker" value={text} onChange={setText} maxLength={10} />
}

describe('a text that is pasted longer than may be kept', () => {
  it('stays to be seen whole, and is told to be too long until it is shortened', async () => {
    drawWithDesk(<Maker />, {})
    const field = screen.getByLabelText('Maker')
    await userEvent.click(field)
    await userEvent.paste('Invented Trailer Works')
    expect(screen.getByDisplayValue('Invented Trailer Works')).toBe(field)
    expect(screen.getByText('Maker is too long: 10 characters at most. Nothing was kept of it; shorten it.')).toBeDefined()
    expect(field.getAttribute('aria-invalid')).toBe('true')
    await userEvent.clear(field)
    await userEvent.paste('Invented')
    expect(screen.queryByText(/is too long/)).toBeNull()
  })
  it('blanks at its ends do not make it too long', async () => {
    drawWithDesk(<Maker />, {})
    await userEvent.click(screen.getByLabelText('Maker'))
    await userEvent.paste('  Invented    ')
    expect(screen.queryByText(/is too long/)).toBeNull()
  })
})
