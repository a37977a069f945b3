/**
 * What a page of ours may do, said by both doors in every answer. No script or style but our own files, no frame, no
 * form, nothing from elsewhere; pictures may be blobs, for previews of what is about to be handed in.
 */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "connect-src 'self'",
  "font-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

/** Nothing of what a page may ask a person's system for. */
const noFeature = 'microphone=(), geolocation=(), display-capture=(), usb=(), serial=(), hid=(), payment=()'

/** Sent with every answer of every door. */
export const safeHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': `camera=(), ${noFeature}`,
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
}

/** The window's own doors, the shell and the loopback host: its camera view may ask for the camera, no frame within it may. */
export const windowHeaders: Readonly<Record<string, string>> = { ...safeHeaders, 'Permissions-Policy': `camera=(self), ${noFeature}` }
