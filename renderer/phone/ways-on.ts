import type { Picture } from './picture'

/** What can be done with a picture that did not go through. */
export type WayOn = 'take again' | 'send again' | 'save'

/** Refused for what it is: sent again it would be refused again. */
const sameEachTime = new Set(['photograph.empty', 'photograph.not-a-photograph', 'photograph.too-large', 'photograph.too-many-pixels'])
/** No picture is in it that anybody would want to keep. */
const noPicture = new Set(['photograph.empty', 'photograph.not-a-photograph'])

/** Whether this page holds the file that it is of. */
export const hasFile = ({ why }: Picture): boolean => why !== 'gone' && why !== 'too large' && why !== 'empty'

/** `isStuck`: nothing is sent any more, or not by itself. Removing it is always a way. */
export const waysOn = (picture: Picture, isStuck: boolean): ReadonlySet<WayOn> => {
  const { why, code = '' } = picture
  const ways = new Set<WayOn>()
  if (!isStuck && why !== 'empty' && code !== 'photograph.empty') ways.add('take again')
  if (!isStuck && hasFile(picture) && !sameEachTime.has(code)) ways.add('send again')
  if (hasFile(picture) && !noPicture.has(code)) ways.add('save')
  return ways
}
