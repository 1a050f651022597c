const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** Colour types 4 and 6 of the PNG specification carry transparency. */
const WITH_ALPHA = [4, 6];

export interface PngHeader {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly hasAlpha: boolean;
}

/** @throws RangeError where the bytes are not a PNG's. */
export function readPngHeader(bytes: Buffer): PngHeader {
  if (!bytes.subarray(0, 8).equals(SIGNATURE)) throw new RangeError('not a PNG');
  return {
    widthPx: bytes.readUInt32BE(16),
    heightPx: bytes.readUInt32BE(20),
    hasAlpha: WITH_ALPHA.includes(bytes.readUInt8(25)),
  };
}
