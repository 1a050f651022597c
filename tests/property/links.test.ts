import { expect, it } from 'vitest';
import { solveAim } from '../../src/engine/direct/solve-aim';
import type { BallName } from '../../src/engine/lie/position';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { kitFields } from '../../src/store/kit-fields';
import { kitOf } from '../../src/store/kit-of';
import { linkReader } from '../../src/store/links/link-bytes';
import { LONGEST_LINK, readLink, writeLink } from '../../src/store/links/link-text';
import { walkShared } from '../../src/store/links/link-walk';
import type { Shared } from '../../src/store/links/shared';
import { numberAt, withNumberAt } from '../../src/store/number-at';
import { BED_RANGES } from '../../src/store/record-ranges';
import { SHELF_NAMES, type ShelfName, type Shelves } from '../../src/store/records';
import type { SavedPosition } from '../../src/store/saved-position';
import { LINK_FAULT_WORDS } from '../../src/ui/links/link-words';
import { LINK_OF_A_WAY, LINK_OF_VERSION_1, SAID_IN_VERSION_1 } from '../fixtures/link-of-version-1';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { hostileLink } from '../harness/hostile-links';
import { randomQuery } from '../harness/random-shots';
import { between, type Random, seededRandom } from '../harness/seeded-random';
import { bytesOfLink } from '../store/links/sealed-link';

const SHOTS = campaignSize(150, 5000);
const HOSTILE = campaignSize(1500, 100_000);

/** What eight digits leave of a number, and what 15 decimals do. */
const expectAsSaid = (now: number, was: number) =>
  expect(Math.abs(now - was)).toBeLessThanOrEqual(5.1e-8 * Math.abs(was) + 1e-15);

/** The record of a demo with the numbers of a kit. */
function recordOf<S extends ShelfName>(shelf: S, kit: object): Shelves[S] {
  const [demo] = DEMO_CATALOGUE[shelf];
  if (demo === undefined) throw new Error(`No demo of ${shelf}`);
  return kitFields(shelf).reduce<Shelves[S]>((made, { path }) => {
    const value = numberAt(kit, path);
    return value === null ? made : withNumberAt(made, path, value);
  }, demo);
}

/** As many balls as there can be, anywhere on the bed. */
function randomPosition(random: Random): SavedPosition {
  const balls = Array.from({ length: 16 }, (_, number) => ({
    name: (number || 'cue') as BallName,
    xM: between(random, BED_RANGES.xM.min, BED_RANGES.xM.max),
    yM: between(random, BED_RANGES.yM.min, BED_RANGES.yM.max),
  }));
  const position = SAID_IN_VERSION_1.position as SavedPosition;
  return { ...position, balls, legal: 'low' };
}

it(`gives the same answer on the other side, of ${SHOTS} shots with their kits`, {
  timeout: CAMPAIGN_TIMEOUT_MS,
}, () => {
  const random = seededRandom(20_261_201);
  let [answered, worstRad] = [0, 0];
  for (let index = 0; index < SHOTS; index += 1) {
    const { shot, kit } = randomQuery(random, 0.002);
    const headingRad = random() < 0.5 ? null : between(random, -3, 3);
    const pocket = { distanceM: between(random, 0.1, 2), mouthM: between(random, 0.09, 0.15) };
    const records = Object.fromEntries(
      SHELF_NAMES.map((shelf) => [shelf, recordOf(shelf, kit)]),
    ) as unknown as Shelves;
    const position = randomPosition(random);
    const link = writeLink({
      shot: { shot: { ...shot, headingRad }, pocket },
      position,
      kit: records,
    });
    expect(link.length).toBeLessThan(LONGEST_LINK);
    const read = readLink(link);
    if (!read.ok || read.shared.shot === null) throw new Error(link);
    const { shared } = read;
    expect(read.mended, link).toBe(0);
    expect(shared.position?.balls).toHaveLength(position.balls.length);
    for (const [at, ball] of position.balls.entries()) {
      expectAsSaid(shared.position?.balls[at]?.xM ?? Number.NaN, ball.xM);
      expectAsSaid(shared.position?.balls[at]?.yM ?? Number.NaN, ball.yM);
    }
    const here = kitOf(records.cues, records.cloths, records.balls, records.tables);
    const { cues, cloths, balls, tables } = shared.kit as Shelves;
    const [mine, theirs] = [
      solveAim(shot, here),
      solveAim(read.shared.shot.shot, kitOf(cues, cloths, balls, tables)),
    ];
    expect(theirs.ok, link).toBe(mine.ok);
    if (!mine.ok || !theirs.ok) continue;
    answered += 1;
    worstRad = Math.max(worstRad, Math.abs(mine.aimRad - theirs.aimRad));
  }
  expect(answered).toBeGreaterThan(SHOTS * 0.7);
  // A thousandth of what the finest figure on the screen tells, 0.1°.
  expect(worstRad).toBeLessThan(1e-6);
  tell(`${answered} answers, at most ${worstRad} rad apart`);
});

it(`takes ${HOSTILE} hostile links for what they are, and reads none longer than it is`, {
  timeout: CAMPAIGN_TIMEOUT_MS,
}, () => {
  const random = seededRandom(20_261_202);
  const fates = new Map<string, number>();
  for (let index = 0; index < HOSTILE; index += 1) {
    const text = hostileLink(index % 2 === 0 ? LINK_OF_VERSION_1 : LINK_OF_A_WAY, random);
    const read = readLink(text);
    const fate = read.ok ? 'ok' : read.fault;
    fates.set(fate, (fates.get(fate) ?? 0) + 1);
    if (!read.ok) {
      expect(LINK_FAULT_WORDS[read.fault]).toMatch(/^[A-Z].{20,80}\.$/);
      continue;
    }
    expectSettled(read.shared, text);
    const link = /[\w-]{5,}$/.exec(text.trim())?.[0] ?? '';
    expect(stepsOf(bytesOfLink(link)), text).toBeLessThanOrEqual(2 * link.length + 60);
  }
  for (const fate of ['ok', 'no-link', 'damaged', 'newer']) {
    expect(fates.get(fate) ?? 0, fate).toBeGreaterThan(HOSTILE * 0.02);
  }
  tell(`${HOSTILE} hostile links: ${JSON.stringify(Object.fromEntries(fates))}`);
});

/** What was taken in is as good as our own: once it has our digits, nothing of it changes any more. */
function expectSettled(shared: Shared, text: string): void {
  const once = readLink(writeLink(shared));
  if (!once.ok) throw new Error(`${once.fault}: ${text}`);
  expect(once.mended, text).toBe(0);
  expect(readLink(writeLink(once.shared)), text).toEqual(once);
}

/** How many things are read of a link's bytes, whatever they claim to hold. */
function stepsOf(bytes: readonly number[]): number {
  const from = linkReader(Uint8Array.from(bytes));
  let steps = 0;
  const counted =
    <A, R>(take: (any: A) => R) =>
    (any: A) => {
      steps += 1;
      return take(any);
    };
  from.count(0);
  walkShared(
    {
      count: counted(from.count),
      number: counted(from.number),
      text: counted(from.text),
      goesOn: () => from.left() > 0,
      meetNewer() {},
    },
    { shot: null, position: null, kit: {} },
  );
  return steps;
}
