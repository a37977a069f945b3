import type { Strap, TieDown } from '../rig/tie-down'

/**
 * Whether a strap counts among the tiedowns, in number and in aggregate working load limit. The winch strap does not, unless the rig says so:
 * winch and strap are for loading (common practice, no source). Counted, it is a direct tiedown with half its rating; leaving it out is the
 * stricter reading. Among the forces it counts with its own rating either way.
 */
export const isTiedown = ({ place }: Pick<Strap, 'place'>, { winchStrapCounts }: Pick<TieDown, 'winchStrapCounts'>): boolean => place !== 'winch' || winchStrapCounts === true
