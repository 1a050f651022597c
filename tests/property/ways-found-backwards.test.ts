import { beforeAll, describe, expect, it } from 'vitest';
import { Chains } from '../../src/engine/goal/chains';
import type { PlayedKind } from '../../src/engine/goal/goal';
import { kindOfVia } from '../../src/engine/goal/kind-of-via';
import { laidTable, playLaid } from '../../src/engine/goal/laid-table';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { leastElevation } from '../../src/engine/lie/least-elevation';
import type { Position } from '../../src/engine/lie/position';
import type { PocketName } from '../../src/engine/table/pocket-shape';
import { searchStretch } from '../../src/engine/ways/search-stretch';
import { waysStretches } from '../../src/engine/ways/stretches';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { NINE_FOOT } from '../harness/invented-positions';
import { between, type Random, seededRandom } from '../harness/seeded-random';
import { randomPosition, waysQuestion } from '../harness/ways-positions';

const OF_A_KIND = campaignSize(2, 15);
const KINDS: readonly PlayedKind[] = ['bank', 'kick', 'combination', 'carom'];

interface Fallen {
  readonly position: Position;
  readonly kind: PlayedKind;
  readonly pocket: PocketName;
}

/** What a random stroke in a random position sends into a pocket by one of the kinds; mostly nothing. */
function fallenBy(random: Random): Fallen | null {
  const position = randomPosition(random, 3 + Math.floor(5 * random()));
  const [cueBall, ...others] = position;
  if (cueBall === undefined) return null;
  const [out, clock] = [between(random, 0, 0.45), between(random, 0, 2 * Math.PI)];
  const contact = { side: out * Math.cos(clock), height: out * Math.sin(clock) };
  const aimRad = between(random, -Math.PI, Math.PI);
  const from = { x: cueBall.xM, y: cueBall.yM };
  const least = leastElevation(from, aimRad, others, NINE_FOOT, DEFAULT_KIT, contact);
  const speedMps = between(random, 1, 5);
  const laid = laidTable(position, NINE_FOOT);
  const chains = new Chains(laid.names);
  let fallen: Fallen | null = null;
  const stroke = { ...contact, aimRad, speedMps, elevationRad: least.elevationRad };
  playLaid(laid, stroke, DEFAULT_KIT, {
    until: (event) => {
      const name = laid.names[event.ball];
      if (event.kind === 'pocketed' && typeof name === 'number') {
        const kind = kindOfVia(chains.viaOf(event.ball) ?? [], name);
        if (kind !== null && kind !== 'direct') fallen = { position, kind, pocket: event.pocket };
      }
      chains.take(event);
      return fallen !== null;
    },
  });
  return fallen;
}

function fallenOfAllKinds(): readonly Fallen[] {
  const random = seededRandom(1702);
  const all: Fallen[] = [];
  while (all.length < KINDS.length * OF_A_KIND) {
    const fallen = fallenBy(random);
    const alike = all.filter(({ kind }) => kind === fallen?.kind);
    if (fallen !== null && alike.length < OF_A_KIND) all.push(fallen);
  }
  return all;
}

describe(`positions in which a random stroke did it, ${OF_A_KIND} of a kind`, () => {
  let all: readonly (Fallen & { readonly isFound: boolean })[] = [];
  beforeAll(() => {
    all = fallenOfAllKinds().map((fallen) => {
      const { position, kind, pocket } = fallen;
      const question = waysQuestion(position, { kinds: [kind], pocket });
      const ways = waysStretches(question).flatMap((part) => searchStretch(question, part).ways);
      return { ...fallen, isFound: ways.some(({ goal }) => goal.pocket === pocket) };
    });
  }, CAMPAIGN_TIMEOUT_MS);

  it('are found again, the kind into that pocket, in nine of ten', () => {
    for (const kind of KINDS) {
      const found = all.filter((one) => one.kind === kind && one.isFound).length;
      tell(`found backwards: ${kind} ${found} of ${OF_A_KIND}`);
    }
    const found = all.filter(({ isFound }) => isFound).length;
    expect(found).toBeGreaterThanOrEqual(0.9 * KINDS.length * OF_A_KIND);
  });
});
