/** Options that some commands alone know. */
export interface OwnOptions {
  readonly scale?: string | undefined
  readonly outline?: string | undefined
  readonly face?: string | undefined
  readonly 'find-rust'?: boolean | undefined
  readonly sensitivity?: string | undefined
}

/** What a command is given: its words after the name, and where it stands. */
export interface Given {
  readonly words: readonly string[]
  readonly folder: string | undefined
  readonly output: string | undefined
  /** Options of single commands, as written. */
  readonly values: OwnOptions
  /** Relative paths are taken from here. */
  readonly workingFolder: string
  readonly now: () => Date
  /** Says on standard error how far long work has come. */
  readonly tell: (line: string) => void
}

/** What a command answers: lines for a person, and the same as data for a script. */
export interface Answer {
  readonly lines: readonly string[]
  readonly json: unknown
  /** 1 where what was looked for is not as it should be; 0 when left away. */
  readonly exitCode?: ExitCode
}

/** 0 done, 1 input refused or something not as recorded, 2 wrong usage. */
export type ExitCode = 0 | 1 | 2

export interface Command {
  /** How many words it takes, at the least and at the most. */
  readonly words: readonly [number, number]
  readonly options: readonly ('folder' | 'output' | keyof OwnOptions)[]
  readonly run: (given: Given) => Promise<Answer>
}

/** Thrown for a call that is put wrongly: answered with the usage and exit code 2. */
export class WrongUsage extends Error {
  override readonly name = 'WrongUsage'
}
