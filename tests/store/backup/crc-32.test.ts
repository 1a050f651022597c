import { crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../../src/store/backup/crc-32';

describe('the CRC-32', () => {
  it('of the nine digits is the published check value', () => {
    // Check value of CRC-32/ISO-HDLC in the catalogues of such codes (from memory).
    expect(crc32(new TextEncoder().encode('123456789'))).toBe('cbf43926');
  });

  it('is that of zlib, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(crc32(bytes)).toBe(zlibCrc32(bytes).toString(16).padStart(8, '0'));
      }),
    );
  });
});
