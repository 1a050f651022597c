import { describe, expect, it } from 'vitest';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../../src/store/default-desk';
import { kitFields } from '../../../src/store/kit-fields';
import { LINK_NUMBERS } from '../../../src/store/links/link-layout';
import { linkBytes, readLink, writeLink } from '../../../src/store/links/link-text';
import { SHELF_NAMES } from '../../../src/store/records';
import {
  LINK_OF_A_WAY,
  LINK_OF_VERSION_1,
  SAID_IN_VERSION_1,
  SAID_OF_A_WAY,
} from '../../fixtures/link-of-version-1';
import { bytesOfLink, sealedLink } from './sealed-link';

const SHOT = { shot: DEFAULT_SHOT, pocket: DEFAULT_POCKET };
/** A cue's numbers are counted before they come: one more is said, and is there. */
function cueWithOneNumberMore(): readonly number[] {
  const { cues } = SAID_IN_VERSION_1.kit;
  const bytes = bytesOfLink(writeLink({ kit: cues ? { cues } : {} }));
  const countAt = 3 + (cues?.name.length ?? 0) + 1;
  expect(bytes[countAt]).toBe(LINK_NUMBERS.cues.length);
  return [...bytes.with(countAt, LINK_NUMBERS.cues.length + 1), 0];
}

const faultOf = (text: string) => {
  const read = readLink(text);
  return read.ok ? 'none' : read.fault;
};

describe('a link of version 1', () => {
  it('opens as what it said', () => {
    expect(readLink(LINK_OF_VERSION_1)).toEqual({ ok: true, shared: SAID_IN_VERSION_1, mended: 0 });
  });

  it.each([
    ['an address', (link: string) => `https://example.org/leeway/#kit/link/${link}`],
    ['an address in a message', (link: string) => `Try it: http://x/#kit/link/${link}. See you`],
    [
      'an address with its # written out',
      (link: string) => `https://example.org/%23kit/link/${link}`,
    ],
    ['a line of its own', (link: string) => `\n  ${link}\n`],
  ])('opens out of %s', (_, around) => {
    expect(readLink(around(LINK_OF_VERSION_1))).toMatchObject({ ok: true });
  });

  it('is damaged by any one letter that is another, or is not there', () => {
    const letters = [...LINK_OF_VERSION_1];
    const faults = letters.flatMap((letter, at) => [
      faultOf(letters.with(at, letter === 'A' ? 'B' : 'A').join('')),
      faultOf(letters.toSpliced(at, 1).join('')),
    ]);
    // The last letter has two bits that stand for nothing.
    expect(faults.filter((fault) => fault !== 'damaged').length).toBeLessThanOrEqual(1);
  });
});

describe('a position with its way', () => {
  const bytes = bytesOfLink(LINK_OF_A_WAY);
  const position = { ...SAID_OF_A_WAY, legal: [3, 5] };
  const wayOf = (read: ReturnType<typeof readLink>) =>
    read.ok ? { drill: read.shared.position?.drill, mended: read.mended } : read.fault;

  it('opens as what it said, and takes few bytes more than the position', () => {
    const shared = { shot: null, position, kit: {} };
    expect(readLink(LINK_OF_A_WAY)).toEqual({ ok: true, shared, mended: 0 });
    expect(writeLink({ position })).toBe(LINK_OF_A_WAY);
    const { drill: _way, ...bare } = position;
    expect(linkBytes(LINK_OF_A_WAY)).toBeLessThan(linkBytes(writeLink({ position: bare })) + 50);
  });

  it('is told of by a bit that older apps take for newer: all else they open as ever', () => {
    expect(bytes[1]).toBe(64 + 2);
    const { drill: _way, ...bare } = position;
    expect(bytesOfLink(writeLink({ position: bare }))[1]).toBe(2);
    expect(bytesOfLink(writeLink({ position: { ...bare, drill: null } }))[1]).toBe(2);
  });

  it('keeps who tried it, and how often, at home', () => {
    const tries = [{ playerId: 'player-at-home', atMs: 1, went: true }];
    const drill = { ...position.drill, tries };
    expect(writeLink({ position: { ...position, drill } })).toBe(LINK_OF_A_WAY);
  });

  it.each([
    ['a stroke that nobody can play', { stroke: { ...position.drill.stroke, speedMps: 1e6 } }],
    ['a step that is none', { via: [{ ball: 0, by: 'cue' } as const] }],
    ['a ball that is none', { via: [{ cushion: 'left', by: 16 } as const] }],
    ['more steps than are ever kept', { via: Array(501).fill({ cushion: 'far', by: 'cue' }) }],
  ])('is opened without its way, and says so, where that has %s', (_, over) => {
    const link = writeLink({ position: { ...position, drill: { ...position.drill, ...over } } });
    expect(wayOf(readLink(link))).toEqual({ drill: null, mended: 1 });
  });

  it('is of a newer app where its kind is not known, and damaged where it has no position', () => {
    // Kind, steps and, in eleven bytes, the stroke stand last.
    const kindAt = bytes.length - 11 - 6;
    expect(bytes.slice(kindAt, kindAt + 6)).toEqual([1, 2, 0, 7, 3, 2]);
    expect(faultOf(sealedLink(bytes.with(kindAt, 9)))).toBe('newer');
    expect(faultOf(sealedLink([1, 64, ...bytes.slice(kindAt)]))).toBe('damaged');
  });
});

describe('a link that this version does not know', () => {
  const bytes = bytesOfLink(LINK_OF_VERSION_1);

  it.each([
    ['a later version', [2, ...bytes.slice(1)]],
    ['a version far off, of another form', [200, 3, 1, 2, 3]],
    ['a part that came later', [1, 128, 1, ...bytes.slice(2)]],
    ['a number of the kit that came later', cueWithOneNumberMore()],
  ])('is told to be of a newer one: %s', (_, data) => {
    expect(faultOf(sealedLink(data))).toBe('newer');
  });

  it('is damaged, and not newer, where it does not end where it should', () => {
    expect(faultOf(sealedLink([...bytes, 0]))).toBe('damaged');
    expect(faultOf(sealedLink(bytes.slice(0, -1)))).toBe('damaged');
    expect(faultOf(sealedLink([1, 0]))).toBe('damaged');
    expect(faultOf(sealedLink([0, 1]))).toBe('damaged');
  });
});

it.each(['', ' ', 'https://example.org/', '#kit/link/', 'two words', 'x'.repeat(2401)])(
  'finds no link in "%.20s"',
  (text) => {
    expect(faultOf(text)).toBe('no-link');
  },
);

it('has every number of the kit in it', () => {
  for (const shelf of SHELF_NAMES) {
    const paths = kitFields(shelf).map(({ path }) => path);
    expect([...LINK_NUMBERS[shelf]].sort()).toEqual([...paths].sort());
  }
});

it('mends what is out of range, and counts it', () => {
  const fast = { ...SHOT, shot: { ...DEFAULT_SHOT, speedMps: 1e6, cutRad: Math.PI / 2 } };
  const read = readLink(writeLink({ shot: fast }));
  // The cut is at the end of its range, and off by what eight digits leave: nothing to be told.
  expect(read).toMatchObject({ ok: true, mended: 1 });
});

it('keeps exactly what has eight digits or fewer, and takes few bytes', () => {
  const shot = { ...DEFAULT_SHOT, cutRad: 0.418879, elevationRad: 0.05236 };
  const link = writeLink({ shot: { ...SHOT, shot } });
  expect(readLink(link)).toMatchObject({ shared: { shot: { shot, pocket: DEFAULT_POCKET } } });
  expect(linkBytes(link)).toBeLessThanOrEqual(30);
  expect(linkBytes(LINK_OF_VERSION_1)).toBeLessThanOrEqual(170);
});
