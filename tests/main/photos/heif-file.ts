/**
 * Takes the coded pictures out of a HEIF file and writes them into another container.
 * Source: ISO/IEC 14496-12 (boxes, meta, iloc, iinf, iref) and 23008-12 (ipco, ipma, ispe, irot, imir, grid).
 */

interface Box {
  readonly type: string
  /** With its head. */
  readonly whole: Buffer
  readonly body: Buffer
}

const boxesIn = (bytes: Buffer): Box[] => {
  const boxes: Box[] = []
  for (let at = 0; at + 8 <= bytes.byteLength; ) {
    const size = bytes.readUInt32BE(at)
    const whole = bytes.subarray(at, at + size)
    boxes.push({ type: whole.toString('latin1', 4, 8), whole, body: whole.subarray(8) })
    at += size
  }
  return boxes
}

const boxOf = (boxes: readonly Box[], type: string): Box => {
  const found = boxes.find((box) => box.type === type)
  if (!found) throw new Error(`no box ${type}`)
  return found
}

export const box = (type: string, ...parts: readonly Buffer[]): Buffer => {
  const body = Buffer.concat(parts)
  const head = Buffer.alloc(8)
  head.writeUInt32BE(body.byteLength + 8)
  head.write(type, 4, 'latin1')
  return Buffer.concat([head, body])
}

const u = (bytes: 1 | 2 | 4, ...values: readonly number[]): Buffer => {
  const written = Buffer.alloc(bytes * values.length)
  for (const [index, value] of values.entries()) written.writeUIntBE(value, index * bytes, bytes)
  return written
}
const fullBox = (type: string, version: number, flags: number, ...parts: readonly Buffer[]): Buffer => box(type, u(4, version * 2 ** 24 + flags), ...parts)

export const ispe = (width: number, height: number): Buffer => fullBox('ispe', 0, 0, u(4, width, height))
/** Quarter turns against the clock. */
export const irot = (turns: number): Buffer => box('irot', u(1, turns))
/** 0 changes top and bottom, 1 left and right: ISO/IEC 23008-12:2022, 6.5.12. */
export const imir = (axis: number): Buffer => box('imir', u(1, axis))
export const nclx = (primaries: number, transfer: number, matrix: number): Buffer => box('colr', Buffer.from('nclx'), u(2, primaries, transfer, matrix), u(1, 0x80))

/** A coded picture or another item, with its properties as whole boxes. */
export interface Item {
  readonly type: string
  readonly data: Buffer
  readonly properties: readonly Buffer[]
  /** Numbers, from 1, of the items it is put together from. */
  readonly madeOf?: readonly number[]
  /** Number of the item it is a small copy of. */
  readonly thumbnailOf?: number
}

/** The coded pictures of a file as heif-enc writes it: one extent each, behind a base; numbers of four bytes. */
export const picturesIn = (file: Buffer): Item[] => {
  const meta = boxesIn(boxOf(boxesIn(file), 'meta').body.subarray(4))
  const iprp = boxesIn(boxOf(meta, 'iprp').body)
  const properties = boxesIn(boxOf(iprp, 'ipco').body).map(({ whole }) => whole)
  const iloc = boxOf(meta, 'iloc').body
  const ipma = boxOf(iprp, 'ipma').body
  if (iloc.readUInt16BE(4) !== 0x4440 || ipma.readUInt32BE(0) !== 0) throw new Error('another layout of the file')
  const ownedBy = new Map<number, Buffer[]>()
  for (let entry = 0, at = 8; entry < ipma.readUInt32BE(4); entry++) {
    const count = ipma.readUInt8(at + 2)
    ownedBy.set(ipma.readUInt16BE(at), [...ipma.subarray(at + 3, at + 3 + count)].map((number) => properties[(number & 0x7f) - 1] ?? Buffer.alloc(0)))
    at += 3 + count
  }
  return Array.from({ length: iloc.readUInt16BE(6) }, (_, index) => iloc.subarray(8 + index * 18, 26 + index * 18)).flatMap((place) => {
    const owned = ownedBy.get(place.readUInt16BE(0))
    const start = place.readUInt32BE(4) + place.readUInt32BE(10)
    return owned === undefined ? [] : [{ type: 'hvc1', data: file.subarray(start, start + place.readUInt32BE(14)), properties: owned }]
  })
}

/** A picture of `columns` x `rows` tiles, cut to a size: the item's own data. Source: ISO/IEC 23008-12, 6.6.2.3. */
export const gridData = (columns: number, rows: number, width: number, height: number): Buffer => Buffer.concat([u(1, 0, 0, rows - 1, columns - 1), u(2, width, height)])

/** Turning and mirroring must be obeyed by every reader. */
const isEssential = (property: Buffer): boolean => ['irot', 'imir', 'hvcC'].includes(property.toString('latin1', 4, 8))

/** A HEIC of these items, numbered from 1; `behind` is laid after the last box. */
export const heifFile = (items: readonly Item[], { primary = 1, behind = Buffer.alloc(0) }: { readonly primary?: number; readonly behind?: Buffer } = {}): Buffer => {
  const properties = items.flatMap((item) => item.properties)
  const ftyp = box('ftyp', Buffer.from('heic'), u(4, 0), Buffer.from('mif1heic'))
  const hdlr = fullBox('hdlr', 0, 0, u(4, 0), Buffer.from('pict'), Buffer.alloc(13))
  const iinf = fullBox('iinf', 0, 0, u(2, items.length), ...items.map((item, index) => fullBox('infe', 2, item.thumbnailOf === undefined ? 0 : 1, u(2, index + 1, 0), Buffer.from(item.type), u(1, 0))))
  const references = items.flatMap((item, index) => [
    ...(item.madeOf ? [box('dimg', u(2, index + 1, item.madeOf.length, ...item.madeOf))] : []),
    ...(item.thumbnailOf === undefined ? [] : [box('thmb', u(2, index + 1, 1, item.thumbnailOf))]),
  ])
  const ipma = fullBox('ipma', 0, 0, u(4, items.length), ...items.map((item, index) => {
    const numbers = item.properties.map((property) => (properties.indexOf(property) + 1) | (isEssential(property) ? 0x80 : 0))
    return Buffer.concat([u(2, index + 1), u(1, numbers.length, ...numbers)])
  }))
  const iprp = box('iprp', box('ipco', ...properties), ipma)
  const metaAt = (dataStart: number): Buffer => {
    let start = dataStart
    const places = items.map((item, index) => {
      const place = Buffer.concat([u(2, index + 1, 0, 1), u(4, start, item.data.byteLength)])
      start += item.data.byteLength
      return place
    })
    const iloc = fullBox('iloc', 0, 0, u(2, 0x4400, items.length), ...places)
    return fullBox('meta', 0, 0, hdlr, fullBox('pitm', 0, 0, u(2, primary)), iloc, iinf, ...(references.length > 0 ? [fullBox('iref', 0, 0, ...references)] : []), iprp)
  }
  const metaBytes = metaAt(0).byteLength
  return Buffer.concat([ftyp, metaAt(ftyp.byteLength + metaBytes + 8), box('mdat', ...items.map(({ data }) => data)), behind])
}
