import { constants } from 'node:buffer';
import { describe, expect, it } from 'vitest';
import { splitLines } from '../../../src/headless/split-lines';

/** The lines of some bytes that come in pieces of a size. */
async function linesOf(input: Buffer, pieceBytes: number, mostBytes?: number) {
  async function* pieces() {
    for (let from = 0; from < input.length; from += pieceBytes) {
      yield input.subarray(from, from + pieceBytes);
    }
  }
  const lines: (string | null)[] = [];
  for await (const line of splitLines(pieces(), mostBytes)) lines.push(line);
  return lines;
}

const bytes = (text: string) => Buffer.from(text);

describe('the lines of a stream', () => {
  it.each([1, 2, 3, 100])('are whole whatever pieces of %i bytes it comes in', async (size) => {
    const text = 'one\n\nzwölf ➂ 🎱\nlast';
    expect(await linesOf(bytes(text), size)).toEqual(text.split('\n'));
    expect(await linesOf(bytes(`${text}\n`), size)).toEqual(text.split('\n'));
    expect(await linesOf(bytes(''), size)).toEqual([]);
  });

  it('have no byte-order mark, of which some editors write one at the start', async () => {
    expect(await linesOf(bytes('\uFEFF{}\n{"a":"\uFEFF"}'), 2)).toEqual(['{}', '{"a":"\uFEFF"}']);
    expect(await linesOf(bytes('\uFEFF'), 2)).toEqual([]);
  });

  it('end at line feeds alone: a string may hold what else ends lines', async () => {
    expect(await linesOf(bytes('"\u2028\u2029\u0085"\r\n'), 9)).toEqual(['"\u2028\u2029\u0085"\r']);
  });

  it.each([1, 4, 100])('are null where too long, pieces of %i bytes', async (size) => {
    const text = 'fits\nis too long\nfits\n\nthis too';
    expect(await linesOf(bytes(text), size, 4)).toEqual(['fits', null, 'fits', '', null]);
  });

  it('are not held where too long: not even a buffer could hold this one', async () => {
    const piece = Buffer.alloc(16e6, 'x');
    const pieces = Math.ceil(constants.MAX_LENGTH / piece.length) + 1;
    async function* long() {
      for (let count = 0; count < pieces; count++) yield piece;
      yield bytes('\nshort');
    }
    const lines: (string | null)[] = [];
    for await (const line of splitLines(long())) lines.push(line);
    expect(lines).toEqual([null, 'short']);
  });
});
