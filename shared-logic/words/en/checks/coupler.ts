import type { StationCheckWords } from '../../check-words'
import { couplerBallWords } from './coupler/ball'
import { couplerChainWords } from './coupler/chains'
import { couplerHeadWords } from './coupler/head'

export const couplerWords: StationCheckWords = { ...couplerHeadWords, ...couplerBallWords, ...couplerChainWords }
