/** The divisor, bits reversed (ISO/IEC 8802-3, frame check sequence). */
const POLYNOMIAL = 0xedb88320;

const OF_BYTE: readonly number[] = Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  return rest;
});

/** A checksum that tells every short damage, in eight hex digits. */
export function crc32(bytes: Uint8Array): string {
  let rest = 0xffffffff;
  for (const byte of bytes) rest = (rest >>> 8) ^ (OF_BYTE[(rest ^ byte) & 0xff] ?? 0);
  return ((rest ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}
