/** For the ref of a field that takes the focus when it appears: the browser scrolls to what it gives the focus, react-aria does not. */
export const intoSight = (element: HTMLElement | null): void => element?.focus()
