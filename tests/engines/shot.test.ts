import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AimAnswer, Shot } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { DEFAULT_POCKET, DEFAULT_SHOT } from '../../src/store/default-desk';
import { easeWords } from '../../src/ui/chance-telling';
import { radOf } from '../../src/units/angle-degrees';
import { tipsPerRadius } from '../../src/units/tip-unit';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { ENGINES } from '../harness/engines/engine-page';
import { eventually, fill, tapButton, textOf } from '../harness/engines/engine-thumb';
import { type EngineApp, openInEngine } from '../harness/engines/open-engine';
import { openTile, readFigures } from '../harness/engines/read-figures';
import { engineRoom } from '../harness/read-room';
import { between, type Random, seededRandom } from '../harness/seeded-random';
import { untilDeskKept } from '../harness/until-kept';

/** Figures as a person types them. */
type Typed = Readonly<Record<Input, string>>;
type Input = (typeof INPUTS)[number];

const INPUTS = ['distance', 'cut', 'speed', 'raised', 'side', 'height'] as const;
const SHOTS = campaignSize(3, 12);
/** How often the page is left in the middle of saving. */
const ROUNDS = campaignSize(2, 12);

/** Invented shots that the engine answers, from a fixed seed: each changes two inputs of the last. */
function shotsToType(): { changed: readonly Input[]; typed: Typed; answer: AimAnswer }[] {
  const random = seededRandom(20261125);
  let typed = randomInputs(random);
  const shots = [{ changed: INPUTS as readonly Input[], typed, answer: answered(typed) }];
  while (shots.length < SHOTS) {
    const changed = INPUTS.filter((_, index) => index % 3 === shots.length % 3);
    const drawn = randomInputs(random);
    typed = { ...typed, ...Object.fromEntries(changed.map((input) => [input, drawn[input]])) };
    shots.push({ changed, typed, answer: answered(typed) });
  }
  return shots;
}

/** Where each is typed. */
const FIELDS: Readonly<Record<Input, readonly [tile: string, field: string]>> = {
  distance: ['distance', 'Distance'],
  cut: ['cut', 'Cut'],
  speed: ['speed', 'Speed off the tip'],
  raised: ['raised', 'Cue raised'],
  side: ['tip', 'Side, left or right'],
  height: ['tip', 'Height, high or low'],
};

const randomInputs = (random: Random): Typed => ({
  distance: between(random, 0.3, 1.9).toFixed(2),
  cut: between(random, 1, 60).toFixed(0),
  speed: between(random, 1.2, 4).toFixed(1),
  raised: between(random, 0, 15).toFixed(0),
  // In tips, of which some three make a radius.
  side: between(random, -1.1, 1.1).toFixed(2),
  height: between(random, -0.7, 0.7).toFixed(2),
});

function answered(typed: Typed): AimAnswer {
  const answer = solveAim(shotOf(typed), DEFAULT_KIT);
  if (!answer.ok) throw new Error(answer.reason);
  return answer;
}

const shotOf = (typed: Typed): Shot => ({
  distanceM: Number(typed.distance),
  cutRad: radOf(Number(typed.cut)),
  side: Number(typed.side) / tipsPerRadius(DEFAULT_KIT),
  height: Number(typed.height) / tipsPerRadius(DEFAULT_KIT),
  elevationRad: radOf(Number(typed.raised)),
  speedMps: Number(typed.speed),
});

/** A length in m as the app shows it: whole millimetres and a side. */
function shown(lengthM: number): string {
  const mm = Math.round(Math.abs(lengthM) * 1000);
  return mm === 0 ? '0 mm' : `${mm} mm ${lengthM < 0 ? 'left' : 'right'}`;
}

const figuresOf = (answer: AimAnswer) => ({
  ghost: shown(answer.aimOffsetM),
  centre: shown(answer.aimOnObjectBallM),
  stick: shown(answer.stickOnObjectBallM),
});

describe.each(ENGINES)('a shot in %s', (engine) => {
  let app: EngineApp;
  beforeAll(async () => {
    app = await openInEngine(engine);
  });
  afterAll(async () => {
    await app?.close();
  });

  async function type(input: Input, figure: string): Promise<void> {
    const [tile, field] = FIELDS[input];
    await openTile(app.page, tile);
    await fill(app.page, field, figure);
  }

  it('opens with the worked example, how sure it is and how often it goes', async () => {
    const { page } = app;
    const answer = solveAim(DEFAULT_SHOT, DEFAULT_KIT);
    if (!answer.ok) throw new Error(answer.reason);
    expect(await readFigures(page)).toMatchObject(figuresOf(answer));
    const { certainty, chance, chanceOnKnownKit } = engineRoom(DEFAULT_SHOT, DEFAULT_POCKET);
    const toBallM =
      DEFAULT_SHOT.distanceM + 2 * DEFAULT_KIT.ballRadiusM * Math.cos(DEFAULT_SHOT.cutRad);
    const sdM = toBallM * (Math.tan(answer.aimRad + certainty.aimSdRad) - Math.tan(answer.aimRad));
    const easier = `${easeWords(chanceOnKnownKit.share)} once it is`;
    const sure = `sure to ±${Math.round(sdM * 1000)} mm: cue not measured (${easier})`;
    await eventually(() => textOf(page, '.why-certainty')).toBe(sure);
    const often = `${easeWords(chance.share)} for most`;
    await eventually(() => textOf(page, '.why-chance')).toBe(often);
  });

  it(
    `answers ${SHOTS} typed shots as the engine does in Node`,
    async () => {
      const { page } = app;
      const read = [];
      const shots = shotsToType();
      for (const { typed, changed } of shots) {
        for (const input of changed) await type(input, typed[input]);
        read.push({ typed, ...(await readFigures(page)) });
      }
      const expected = shots.map(({ typed, answer }) => ({ typed, ...figuresOf(answer) }));
      expect(read).toMatchObject(expected);
    },
    CAMPAIGN_TIMEOUT_MS,
  );

  it('is changed by thumb alone, and is still there after a reload', async () => {
    const { page } = app;
    await openTile(page, 'speed');
    await tapButton(page, 'firm');
    await openTile(page, 'cut');
    const before = await readFigures(page);
    await tapButton(page, 'Thinner');
    await tapButton(page, /^goes .*left/);
    await tapButton(page, 'Close');
    const after = await readFigures(page);
    expect(after).not.toEqual(before);
    const thinnerDeg = Number(shotsToType().at(-1)?.typed.cut) + 1;
    await untilDeskKept(page, { shot: { cutRad: expect.closeTo(-radOf(thinnerDeg), 9) } });
    await page.reload();
    await eventually(() => readFigures(page)).toEqual(after);
  });

  it(
    `keeps what was changed when the page is left in the middle of saving, time and again`,
    async () => {
      const { page } = app;
      for (let round = 0; round < ROUNDS; round++) {
        await openTile(page, 'cut');
        await tapButton(page, 'Thinner');
        const after = await readFigures(page);
        await page.reload();
        await eventually(() => readFigures(page)).toEqual(after);
        await page.reload();
        await app.goTo('#kit/backup');
        await eventually(() => textOf(page, '[aria-labelledby="backup-in"] button')).toMatch(
          /^Bring/,
        );
        await app.goTo('#shot');
      }
    },
    CAMPAIGN_TIMEOUT_MS,
  );

  it('leaves nothing wrong behind', async () => {
    expect(await app.page.problems()).toEqual([]);
  });
});
