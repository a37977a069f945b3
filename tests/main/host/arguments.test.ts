import { expect, it } from 'vitest'
import { readArguments } from '../../../main/host/arguments'

it('nothing said: the usual folder, any port, the browser opened, the likeliest network for a phone', () => {
  expect(readArguments([])).toEqual({ folder: undefined, port: 0, open: true, phoneOn: undefined })
})

it.each(['127.0.0.1', '192.168.1.20', '10.0.0.7', 'fd12:3456::7', '::1', '::a'])('a phone’s door may be put at %s', (address) => {
  expect(readArguments(['--phone-on', address])).toMatchObject({ phoneOn: address })
})

// The unspecified address stands for every network at once. Source: RFC 1122, section 3.2.1.3; RFC 4291, section 2.5.2.
it.each(['0.0.0.0', '::', '0:0:0:0:0:0:0:0', '::0', '', 'localhost', '192.168.1', '192.168.1.256', 'http://192.168.1.20', '192.168.1.20:80', '../x'])('“%s” is not an address to put it at', (address) => {
  expect(readArguments(['--phone-on', address])).toBeUndefined()
})

it.each([['--port', '70000'], ['--port', '-1'], ['--port', '1e3'], ['--port', ''], ['--phone-on'], ['--phone'], ['stray']])('%s %s is not understood', (...args) => {
  expect(readArguments(args)).toBeUndefined()
})
