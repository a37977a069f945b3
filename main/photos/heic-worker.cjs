'use strict'
/* oxlint-disable no-underscore-dangle, unicorn/require-post-message-target-origin -- so libheif names its functions; a thread has no origin */
/**
 * Runs in a thread of its own and decodes the primary picture of one HEIC file, upright, by the C interface of libheif
 * (heif.h). Taken into the bundle as text, so that the built doors, the command line and the tests all start it alike.
 *
 * workerData: { library, bytes, before, behind } – where libheif lies, the file, and how many bytes to leave free before
 * and behind the pixels in the answer.
 * Answers { width, height, channels, depthBits, primaries, transfer, data } or { failed: code, message }; row by row,
 * 8 bits a channel, or 16 little-endian where the picture has more than 8.
 */
const { parentPort, workerData } = require('node:worker_threads')

const rgb = 1
const interleaved = 10
/** heif_chroma by whether the picture has more than 8 bits and whether it has a see-through ground. */
const layouts = { deepClear: 15, deep: 14, clear: 11, plain: 10 }
const errorBytes = 12

const lib = require(workerData.library)
const error = lib._malloc(errorBytes)
const out = lib._malloc(8)
const word = (at) => lib.HEAPU32[at >> 2]

/** Calls a function that answers a heif_error (code, subcode, message); throws its code. */
const attempt = (name, ...rest) => {
  lib[name](error, ...rest)
  const code = word(error)
  if (code !== 0) throw Object.assign(new Error(`${name}: ${code}.${word(error + 4)}`), { code })
}

const coloursOf = (handle) => {
  lib._heif_image_handle_get_nclx_color_profile(error, handle, out)
  if (word(error) !== 0) return {}
  const profile = word(out)
  return { primaries: word(profile + 4), transfer: word(profile + 8) }
}

/** Rows without their padding; samples of 9 to 16 bits stretched over all 16. */
const copyRows = (image, channels, depthBits, { before, behind }) => {
  const width = lib._heif_image_get_width(image, interleaved)
  const height = lib._heif_image_get_height(image, interleaved)
  const rowBytes = width * channels * (depthBits > 8 ? 2 : 1)
  const plane = lib._heif_image_get_plane_readonly2(image, interleaved, out)
  const stride = word(out)
  const data = new Uint8Array(before + rowBytes * height + behind)
  for (let row = 0; row < height; row += 1) data.set(lib.HEAPU8.subarray(plane + row * stride, plane + row * stride + rowBytes), before + row * rowBytes)
  if (depthBits > 8) {
    const most = 2 ** depthBits - 1
    const samples = new Uint16Array(data.buffer, before, (rowBytes * height) / 2)
    for (let at = 0; at < samples.length; at += 1) samples[at] = Math.round((samples[at] * 65535) / most)
  }
  return { width, height, data }
}

const decode = () => {
  const { bytes } = workerData
  const file = lib._malloc(bytes.byteLength)
  lib.HEAPU8.set(bytes, file)
  const context = lib._heif_context_alloc()
  attempt('_heif_context_read_from_memory_without_copy', context, file, bytes.byteLength, 0)
  attempt('_heif_context_get_primary_image_handle', context, out)
  const handle = word(out)
  const isDeep = lib._heif_image_handle_get_luma_bits_per_pixel(handle) > 8
  const isClear = lib._heif_image_handle_has_alpha_channel(handle) !== 0
  const colours = coloursOf(handle)
  attempt('_heif_decode_image', handle, out, rgb, layouts[isDeep ? (isClear ? 'deepClear' : 'deep') : isClear ? 'clear' : 'plain'], 0)
  const image = word(out)
  const depthBits = isDeep ? lib._heif_image_get_bits_per_pixel_range(image, interleaved) : 8
  const channels = isClear ? 4 : 3
  return { ...copyRows(image, channels, depthBits, workerData), channels, depthBits, ...colours }
}

try {
  const decoded = decode()
  parentPort.postMessage(decoded, [decoded.data.buffer])
} catch (failed) {
  parentPort.postMessage({ failed: failed.code ?? 0, message: String(failed.message ?? failed) })
}
