import { parseArgs } from 'node:util'
import { Refusal, type RefusalData } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
import { catalogue } from './catalogue'
import { columns, fill } from './columns'
import { WrongUsage, type Command, type ExitCode, type OwnOptions } from './command'
import { example } from './example'
import { grade } from './grade'
import { judge } from './judge'
import { list } from './list'
import { measure } from './measure'
import { report } from './report'
import { schema } from './schema'
import { show } from './show'
import { sums } from './sums'
import { verify } from './verify'

const words = en.commandLine
const commands = { list, show, report, verify, judge, sums, grade, measure, schema, catalogue, example } as const satisfies Record<keyof typeof words.commands, Command>
type CommandName = keyof typeof commands

/** What the command line needs of the world. */
export interface World {
  readonly out: (text: string) => void
  readonly error: (text: string) => void
  readonly workingFolder: string
  readonly now: () => Date
}

const usage = (): string => [
  words.usage,
  '',
  ...columns(Object.values(words.commands).map(({ form, does }) => [`  ${form}`, does])),
  '',
  ...words.options.map((line) => `  ${line}`),
  '',
  words.exitCodes,
].join('\n')

const isCommand = (name: string): name is CommandName => Object.hasOwn(commands, name)

interface Asked {
  readonly name: CommandName
  readonly words: readonly string[]
  readonly folder: string | undefined
  readonly output: string | undefined
  readonly json: boolean
  readonly values: OwnOptions
}

const options = {
  json: { type: 'boolean', default: false }, folder: { type: 'string' }, output: { type: 'string', short: 'o' }, help: { type: 'boolean', short: 'h', default: false },
  scale: { type: 'string' }, outline: { type: 'string' }, face: { type: 'string' }, 'find-rust': { type: 'boolean' }, sensitivity: { type: 'string' },
} as const
const ofSomeCommands = ['folder', 'output', 'scale', 'outline', 'face', 'find-rust', 'sensitivity'] as const

const parse = (args: readonly string[]) => {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true })
  } catch (error) {
    throw new WrongUsage(error instanceof Error ? error.message : '')
  }
}

/** Reads the arguments; throws `WrongUsage` where they are put wrongly, answers undefined where help is asked for. */
const readAsked = (args: readonly string[]): Asked | undefined => {
  const { values, positionals } = parse(args)
  const [name, ...rest] = positionals
  if (values.help || name === 'help') return undefined
  if (name === undefined) throw new WrongUsage('')
  if (!isCommand(name)) throw new WrongUsage(fill(words.unknownCommand, { command: name }))
  const command: Command = commands[name]
  const gaps = { command: name, form: words.commands[name].form }
  if (rest.length < command.words[0]) throw new WrongUsage(fill(words.wrongUsage.tooFew, gaps))
  if (rest.length > command.words[1]) throw new WrongUsage(fill(words.wrongUsage.tooMany, gaps))
  for (const option of ofSomeCommands)
    if (values[option] !== undefined && !command.options.includes(option)) throw new WrongUsage(fill(words.wrongUsage.unknownOption, gaps))
  return { name, words: rest, folder: values.folder, output: values.output, json: values.json, values }
}

const sayRefused = (refusal: RefusalData, json: boolean, world: World): void => {
  const sentence = sayRefusal(en, refusal)
  world.error(sentence)
  if (json) world.out(JSON.stringify({ refusal: { ...refusal, sentence } }, null, 2))
}

/** Runs one command. Faults of the program itself are thrown. */
export const runCommandLine = async (args: readonly string[], world: World): Promise<ExitCode> => {
  let asked: Asked | undefined
  try {
    asked = readAsked(args)
    if (!asked) {
      world.out(usage())
      return 0
    }
    const answer = await commands[asked.name].run({ ...asked, workingFolder: world.workingFolder, now: world.now, tell: world.error })
    world.out(asked.json ? JSON.stringify(answer.json, null, 2) : answer.lines.join('\n'))
    return answer.exitCode ?? 0
  } catch (fault) {
    if (fault instanceof Refusal) {
      sayRefused(fault.data, asked?.json ?? false, world)
      return 1
    }
    if (!(fault instanceof WrongUsage)) throw fault
    world.error([...(fault.message === '' ? [] : [fault.message, '']), usage()].join('\n'))
    return 2
  }
}
