import { describe, expect, it } from 'vitest';
import type { RangeJob } from '../../../../src/engine/player/some-players';
import type { SweepJob } from '../../../../src/worker/engine-work';
import { inventedPlayer } from '../player/open-player';
import { answerAll, giveUp, KNOWN, openChoose, settle } from './open-choose';

async function compared() {
  const opened = await openChoose();
  opened.model.compare();
  await answerAll(opened.hired);
  return opened;
}

describe('choosing a way', () => {
  it('plays it out in thin, true and full', async () => {
    const { model, hired } = await compared();
    const [way] = model.comparison.value.ways;
    if (!way) throw new Error('there are ways');
    model.choose(way);
    expect(model.chosen.value).toBe(way);
    expect(model.fan.value).toEqual([]);
    expect(hired[0]?.asked.at(-1)?.name).toBe('fan');
    await answerAll(hired);
    expect(model.fan.value[0]).toMatchObject({ hit: 'true', aimRad: way.option.stroke.aimRad });
    model.choose(null);
    expect(model.chosen.value).toBeNull();
    expect(model.fan.value).toEqual([]);
  });

  it('shows the play of the one chosen last alone', async () => {
    const { model, hired } = await compared();
    const [first, second] = model.comparison.value.ways;
    if (!first || !second) throw new Error('there are two ways');
    model.choose(first);
    model.choose(null);
    await answerAll(hired);
    expect(model.fan.value).toEqual([]);
    expect(model.problem.value).toBeNull();
  });

  it('works the way of a cell out in full', async () => {
    const { model, hired } = await compared();
    const { map, ways } = model.comparison.value;
    const option = map?.best.flat().findLast((one) => one !== null);
    if (!option) throw new Error('some cell has an option');
    expect(ways.some((way) => way.option.place === option.place)).toBe(false);
    model.chooseCell(option.stroke.side, option.stroke.speedMps);
    await answerAll(hired);
    expect(model.chosen.value?.option).toEqual(option);
    expect(model.fan.value).toHaveLength(5);
  });

  it('takes the way of a cell as it is where it is among those worked out', async () => {
    const { model, hired } = await compared();
    const { map, ways } = model.comparison.value;
    const places = map?.best.flat().map((option) => option?.place);
    const way = ways.find(({ option }) => places?.includes(option.place));
    if (!way) throw new Error('the best way is the best of its cell');
    model.chooseCell(way.option.stroke.side, way.option.stroke.speedMps);
    expect(model.chosen.value).toBe(way);
    await answerAll(hired);
    expect(hired[0]?.asked.at(-1)?.name).toBe('fan');
  });

  it('does nothing at a cell where nothing goes, or that is none', async () => {
    const { model, hired } = await compared();
    const asked = hired[0]?.asked.length;
    model.chooseCell(0.123, 9);
    await settle();
    expect(model.chosen.value).toBeNull();
    expect(hired[0]?.asked).toHaveLength(Number(asked));
  });

  it('says so where it could not be played out', async () => {
    const { model, hired } = await compared();
    model.choose(model.comparison.value.ways[0] ?? null);
    giveUp(hired, 0);
    await settle();
    expect(model.problem.value).toMatch(/choose it again/);
    expect(model.chosen.value).not.toBeNull();
    model.choose(model.comparison.value.ways[0] ?? null);
    await answerAll(hired);
    expect(model.problem.value).toBeNull();
    expect(model.fan.value).toHaveLength(5);
  });

  it('is over once all is compared anew', async () => {
    const { model } = await compared();
    model.choose(model.comparison.value.ways[0] ?? null);
    model.compare();
    expect(model.chosen.value).toBeNull();
  });
});

describe('sending a way to Shot', () => {
  it('fills in the shot, the pocket and how it runs over the table', async () => {
    const { model, sent } = await compared();
    const [way] = model.comparison.value.ways;
    const shot = model.shot.value;
    if (!way || !shot?.ok) throw new Error('there is a way');
    model.choose(way);
    const shared = model.wayToAsk.value;
    expect(model.sendToShot()).toBe(true);
    expect(shared).toMatchObject({ asked: sent.asked, of: { ball: 3, pocket: 'far-right' } });
    const { distanceM, cutRad, target, headingRad } = shot;
    const { side, height, elevationRad, speedMps } = way.option.stroke;
    const stroke = { side, height, elevationRad, speedMps };
    expect(sent.asked?.shot).toEqual({ distanceM, cutRad, ...stroke, headingRad });
    expect(sent.asked?.pocket.distanceM).toBe(target.distanceM);
  });

  it('tells the mouth as wide as this stroke’s ball finds it', async () => {
    const { model, sent } = await compared();
    const shot = model.shot.value;
    const [way] = model.comparison.value.ways;
    if (!way || !shot?.ok) throw new Error('there is a way');
    model.choose(way);
    model.sendToShot();
    const { pocket } = sent.asked ?? {};
    const widths = shot.target.openings?.map(({ halfM }) => 2 * (halfM + 0.028575)) ?? [];
    expect(widths).toHaveLength(3);
    expect(pocket?.mouthM).toBeGreaterThanOrEqual(Math.min(...widths));
    expect(pocket?.mouthM).toBeLessThanOrEqual(Math.max(...widths));
    expect(pocket?.mouthM).not.toBe(shot.target.mouthM);
  });

  it('tells a mouth that is too narrow for Shot as a wider one that lets the same balls in', async () => {
    const { model, sent, hired } = await openChoose();
    // Seen from along the right cushion, the side pocket is all but shut.
    model.place(3, 0.4, 0.4, false);
    model.place('cue', 0, 0.9, false);
    model.playInto('middle-right');
    const shot = model.shot.value;
    if (!shot?.ok) throw new Error(shot?.reason ?? 'there is a shot');
    expect(shot.target.mouthM).toBeLessThan(0.085);
    model.compare();
    await answerAll(hired);
    model.choose(model.comparison.value.ways[0] ?? null);
    expect(model.sendToShot()).toBe(true);
    const pocket = sent.asked?.pocket;
    if (!pocket) throw new Error('a pocket was sent');
    expect(pocket.mouthM).toBe(0.085);
    const radiusM = 0.028575;
    const tanOf = (mouthM: number, distanceM: number) => (mouthM / 2 - radiusM) / distanceM;
    const open = shot.target.openings?.map(({ halfM }) => halfM / shot.target.distanceM) ?? [];
    const sentTan = tanOf(pocket.mouthM, pocket.distanceM);
    expect(sentTan).toBeGreaterThanOrEqual(Math.min(...open) - 1e-12);
    expect(sentTan).toBeLessThanOrEqual(Math.max(...open) + 1e-12);
  });

  it('sends nothing where no way is chosen, or one that is out of date', async () => {
    const { model, sent } = await compared();
    expect(model.sendToShot()).toBe(false);
    model.choose(model.comparison.value.ways[0] ?? null);
    model.nudge('cue', 0.05, 0);
    expect(model.wayToAsk.value).toBeNull();
    expect(model.sendToShot()).toBe(false);
    expect(sent.asked).toBeNull();
    expect(model.problem.value).toMatch(/compare again/);
    model.undo();
    expect(model.problem.value).toBeNull();
    expect(model.sendToShot()).toBe(true);
  });
});

describe('the chance of a way', () => {
  it('is told with how far it may be off, of whom something is known', async () => {
    const { model, hired, player } = await openChoose();
    const some = [[0, 0, 0, 0, 0, 0]];
    player.known.value = { ...inventedPlayer(), some };
    model.compare();
    await answerAll(hired);
    const [way] = model.comparison.value.ways;
    if (!way) throw new Error('there are ways');
    model.choose(way);
    expect(model.range.value).toBeNull();
    await answerAll(hired);
    const job = hired[0]?.asked.at(-1)?.job as RangeJob;
    expect(job).toMatchObject({ some, share: way.chance });
    // All that is not known of the kit: what of it counts as chance the player's own law says.
    expect(job.asked.spread.massRatio).toBe(KNOWN.spread.massRatio);
    expect(model.range.value?.low).toBeCloseTo(way.chance - 0.1, 12);
    model.choose(null);
    expect(model.range.value).toBeNull();
  });

  it('counts of the kit’s unknowns what is not the same shot after shot', async () => {
    const { model, hired, player } = await openChoose();
    model.compare();
    await answerAll(hired);
    const sweeps = () => (hired[0]?.asked ?? []).filter(({ name }) => name === 'sweep');
    const spreads = () => sweeps().map(({ job }) => (job as SweepJob).asked.question.spread);
    expect(spreads()[0]?.massRatio).toBe(KNOWN.spread.massRatio);
    player.known.value = inventedPlayer();
    expect(model.comparison.value.isStale).toBe(true);
    model.compare();
    await answerAll(hired);
    const last = spreads().at(-1);
    expect(last?.massRatio).toBeCloseTo(KNOWN.spread.massRatio / 2, 12);
    expect(last?.rollFriction).toBeCloseTo(KNOWN.spread.rollFriction, 12);
  });
});
