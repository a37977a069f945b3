import { keepPreviousData, QueryClient, useMutation, useQuery, useQueryClient, type UseMutationResult, type UseQueryResult } from '@tanstack/react-query'
import type { InputOf, OutputOf, ProcedureName } from '../../shared-logic/contract/contract'
import { call } from './desk-client'

type Noun = 'yard' | 'settings' | 'rigs' | 'surveys' | 'reports' | 'corrosion' | 'phone'

/** What is asked anew after a writing procedure, by noun. Where the surveyor stands is asked by nobody else. */
const touched: Partial<Record<ProcedureName, readonly Noun[]>> = {
  'yard.openExample': ['yard', 'settings', 'rigs', 'surveys', 'reports', 'corrosion'],
  'settings.save': ['settings'],
  'rigs.save': ['rigs', 'surveys', 'yard', 'corrosion'],
  'rigs.remove': ['rigs', 'surveys', 'reports', 'yard', 'corrosion'],
  'surveys.start': ['surveys', 'rigs', 'yard'],
  'surveys.answer': ['surveys', 'rigs', 'corrosion'],
  'surveys.clear': ['surveys', 'rigs', 'corrosion'],
  'surveys.discard': ['surveys', 'rigs', 'reports', 'yard', 'corrosion'],
  'surveys.reopen': ['surveys', 'rigs', 'corrosion'],
  'photographs.add': ['surveys'],
  'photographs.describe': ['surveys'],
  'photographs.remove': ['surveys'],
  'photographs.restore': ['surveys'],
  'photographs.mark': ['surveys'],
  'photographs.turn': ['surveys'],
  'photographs.turnAll': ['surveys'],
  'photographs.removeAll': ['surveys'],
  'photographs.restoreAll': ['surveys'],
  'photographs.assign': ['surveys'],
  'photographs.choose': ['surveys'],
  'photographs.order': ['surveys'],
  'phone.open': ['phone'],
  'phone.close': ['phone'],
  'reports.issue': ['reports', 'surveys', 'rigs', 'corrosion'],
}

export const makeQueryClient = (): QueryClient =>
  new QueryClient({ defaultOptions: { queries: { retry: false, staleTime: 10_000, networkMode: 'always' }, mutations: { networkMode: 'always' } } })

export const keyOf = <Name extends ProcedureName>(name: Name, input: InputOf<Name>): readonly [string, Name, InputOf<Name>] => [name.split('.')[0] ?? name, name, input]

interface QueryChoices {
  /** False while the question cannot be asked yet. */
  readonly enabled?: boolean
  /** Keeps the last answer on show while the next is fetched (search, paging). */
  readonly keepLast?: boolean
}

/** The answer of a reading procedure, kept and shared by name and input. */
export const useQueryOf = <Name extends ProcedureName>(name: Name, input: InputOf<Name>, { enabled = true, keepLast = false }: QueryChoices = {}): UseQueryResult<OutputOf<Name>> =>
  useQuery<OutputOf<Name>, Error, OutputOf<Name>>({
    queryKey: keyOf(name, input),
    queryFn: ({ signal }) => call(name, input, { signal }),
    enabled,
    ...(keepLast && { placeholderData: keepPreviousData }),
  })

/** Everything that this procedure may have changed is asked anew. */
export const useInvalidation = (): ((name: ProcedureName) => Promise<void>) => {
  const client = useQueryClient()
  return async (name) => {
    await Promise.all((touched[name] ?? []).map((noun) => client.invalidateQueries({ queryKey: [noun] })))
  }
}

interface MutationChoices {
  /** One after the other, in the order given. */
  readonly inTurn?: boolean
}

/** A writing procedure as a mutation; what it touched is asked anew afterwards, whether it was kept or refused. */
export const useMutationOf = <Name extends ProcedureName>(name: Name, { inTurn = false }: MutationChoices = {}): UseMutationResult<OutputOf<Name>, Error, InputOf<Name>> => {
  const invalidate = useInvalidation()
  return useMutation<OutputOf<Name>, Error, InputOf<Name>>({ mutationFn: (input) => call(name, input), onSettled: () => invalidate(name), ...(inTurn && { scope: { id: name } }) })
}
