import type { StationCheckWords } from '../../../check-words'

const more = 'Fit more or stronger straps, or lead them flatter that way, before it is towed; the tie-down plan says which would do.'
const short = (direction: string): { because: string; remedy: string } => ({ because: `Weakest ${direction}: {held} held of {needed} needed, {share}. By the benchmark; law for private towing may ask for something else.`, remedy: more })

export const tieDownDirectionWords: StationCheckWords = {
  'tie-down.directions': {
    title: 'Hold in each direction',
    question: 'Are the straps set as the rig’s record has them?',
    how: 'Compare number, places, leads and labels with the tie-down plan. The plan then says what they hold forward, rearward, to each side and upward.',
    criterion: {
      us: 'Straps, friction and bow stop hold 0.435 of the boat’s weight forward, 0.5 rearward, 0.25 to each side and 0.2 upward by working load limit (federal benchmark for commercial carriers).',
      eu: 'Straps, friction and bow stop hold 0.8 of the boat’s weight forward and 0.5 rearward and to each side (EN 12195-1, taken as benchmark); 0.2 upward is shown beside it.',
    },
    consequence: 'Where the straps hold least, the boat goes first: into the car, off the stern, or off the bunks.',
    fields: { straps: { label: 'Straps', options: { 'as recorded': 'As recorded', 'differ from the record': 'Differ from the record' } } },
    outcomes: {
      holds: { because: 'Held each way. Weakest: {held} held of {needed} needed, {share}.' },
      'rests on the bow stop': { because: 'Forward, the rest falls to bow stop and winch post: they must bear {force}, and what they bear is not recorded.', remedy: 'Ask the maker what bow stop and post bear, or add a bow tie down and aft, before the next trip.' },
      'short forward': short('forward'),
      'short rearward': short('rearward'),
      'short left': short('to the left'),
      'short right': short('to the right'),
      'short up': short('upward'),
      waits: { because: 'Cannot be worked out, because straps, their leads or ratings, or the boat’s mass are not recorded; the tie-down plan names what it waits for.' },
      differ: { because: 'The straps are not set as recorded; the plan does not speak for them.' },
    },
  },
}
