import type { Role } from '../../shared-logic/drawings/drawing'
import type { Verdict } from '../../shared-logic/survey/verdict'

/** Text: 15 : 1 and 7 : 1 on white paper. */
export const ink = '#1b2126'
export const softInk = '#4d5860'
export const hairline = '#b4bcc2'
/** Behind a picture that does not fill its column. */
export const mat = '#f1f3f4'

/** Okabe and Ito 2008, colour-blind-safe. Edges and shapes only: words beside them are ink. */
export const verdictColour: Readonly<Record<Verdict, string>> = {
  pass: '#009e73',
  advisory: '#e69f00',
  fail: '#d55e00',
  'not seen': '#4d5860',
  'not applicable': '#4d5860',
}

/** What a line or area of a drawing is painted with on paper. */
export const roleColour: Readonly<Record<Role, string>> = {
  ink,
  hairline,
  faint: '#e4e8ea',
  hull: '#6d7a83',
  metal: '#4d5860',
  rubber: '#353d43',
  oil: '#c9a227',
  strap: '#0072b2',
  paper: '#ffffff',
  select: '#0072b2',
  pass: verdictColour.pass,
  advisory: verdictColour.advisory,
  fail: verdictColour.fail,
  'not seen': verdictColour['not seen'],
  mark: '#111111',
  casing: '#f0e442',
}

/** Areas: a hull is a light tint, so that what is drawn in it can be seen. */
export const areaColour: Readonly<Record<Role, string>> = { ...roleColour, hull: '#e1e9ef' }
