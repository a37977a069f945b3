/** Makes a closed set closed: a new member does not compile until every place has answered. */
export function assertNever(value: never): never {
  throw new Error(`unexpected value ${JSON.stringify(value)}`)
}
