import { describe, expect, it } from 'vitest';
import { DEFAULT_CHOICE, DEFAULT_SHOT } from '../../../../src/store/default-desk';
import { writeLink } from '../../../../src/store/links/link-text';
import { MOST_OF_A_KIND } from '../../../../src/store/most-of-a-kind';
import { LINK_OF_VERSION_1, SAID_IN_VERSION_1 } from '../../../fixtures/link-of-version-1';
import { hostileLink } from '../../../harness/hostile-links';
import { seededRandom } from '../../../harness/seeded-random';
import { bytesOfLink } from '../../../store/links/sealed-link';
import { answerAll, CUT, OTHER } from '../choose/open-choose';
import { ADDRESS, openLinks } from './open-links';

const ALL = { shot: true, position: true, kit: true };
const DIRTY = { ...DEFAULT_CHOICE, cues: 'demo-cue-low', balls: 'demo-balls-dirty' };
const HIGH_SIDE = { ...DEFAULT_SHOT, side: 0.35, speedMps: 2.2 };

describe('a shot handed from one phone to another', () => {
  it('gives the same answer there, with the kit it was asked with', async () => {
    const coach = await openLinks({ desk: { shot: HIGH_SIDE, choice: DIRTY } });
    const student = await openLinks();
    const answer = coach.shot.lastAnswer.value?.answer;
    expect(student.shot.lastAnswer.value?.answer.aimRad).not.toBeCloseTo(answer?.aimRad ?? 0, 3);
    student.links.look(coach.shared('shot', true));
    student.links.keep(ALL);
    const there = student.shot.lastAnswer.value?.answer;
    expect(there?.aimRad).toBeCloseTo(answer?.aimRad ?? Number.NaN, 7);
    expect(there?.objectBall.speedMps).toBeCloseTo(answer?.objectBall.speedMps ?? Number.NaN, 6);
    // Both have these examples: nothing comes a second time.
    expect(student.links.kept.value).toMatchObject({ added: [], isInPlay: true });
    expect(student.desk.choice.value).toEqual(DIRTY);
  });

  it('is aimed with the kit here where that of there is not wanted', async () => {
    const coach = await openLinks({ desk: { shot: HIGH_SIDE, choice: DIRTY } });
    const student = await openLinks();
    student.links.look(coach.shared('shot', true));
    student.links.keep({ ...ALL, kit: false });
    expect(student.desk.choice.value).toEqual(DEFAULT_CHOICE);
    expect(student.shot.shot.value).toMatchObject({ side: 0.35, speedMps: 2.2 });
    student.shot.undo();
    expect(student.shot.shot.value).toEqual(DEFAULT_SHOT);
  });
});

describe('a way handed from one phone to another', () => {
  /** A coach looks at a bank; its link is what a student is handed. */
  async function handed() {
    const coach = await openLinks();
    coach.choose.all.show('all');
    coach.choose.all.look();
    await answerAll(coach.hired);
    const bank = coach.choose.all.search.value.ways.find(({ told }) => told.goal.kind === 'bank');
    coach.choose.all.choose(bank ?? null);
    const kept = coach.choose.wayToKeep.value;
    if (!kept) throw new Error('there is a bank');
    return { coach, kept, link: coach.shared('way') };
  }
  /** Looks at the ways, until all is worked out. */
  async function look({ choose, rest, hired }: Awaited<ReturnType<typeof openLinks>>) {
    choose.all.attend();
    rest();
    await answerAll(hired);
  }

  it('is laid there as it was here: the same heading, stroke and steps, whatever it does there', async () => {
    const { coach, kept, link } = await handed();
    expect(coach.links.outgoing('way', true)?.fitsCode).toBe(true);
    const student = await openLinks({ positions: [OTHER] });
    student.links.look(link);
    student.links.keep({ shot: false, position: true, kit: false });
    expect(student.links.kept.value).toMatchObject({ isLaid: true, position: true });
    expect(student.choose.drills.value).toEqual([]);
    expect(student.choose.all.isLaying.value).toBe(true);
    await look(student);
    expect(student.choose.all.isLaying.value).toBe(false);
    const shown = student.choose.all.chosen.value;
    expect(shown).toMatchObject({ does: false, told: { goal: { kind: 'bank', ball: 3 } } });
    expect(shown?.fan.some(({ hit }) => hit === 'true')).toBe(true);
    const { drill, goal, balls } = student.choose.wayToKeep.value ?? {};
    expect({ goal, balls, via: drill?.via }).toEqual({
      goal: kept.goal,
      balls: kept.balls,
      via: kept.drill.via,
    });
    for (const [name, was] of Object.entries(kept.drill.stroke)) {
      expect(drill?.stroke[name as keyof typeof kept.drill.stroke]).toBeCloseTo(was, 7);
    }
  });

  it('gives way to the list, which is looked for then, and is gone with its position', async () => {
    const student = await openLinks({ positions: [OTHER] });
    student.links.look((await handed()).link);
    student.links.keep({ shot: false, position: true, kit: false });
    await look(student);
    const { all } = student.choose;
    all.choose(null);
    student.rest();
    expect(all.search.value.state).toBe('running');
    await answerAll(student.hired);
    expect(all.search.value.state).toBe('done');
    student.links.undo();
    expect(student.choose.saved.value.map(({ id }) => id)).toEqual([OTHER.id]);
    expect(all.isLaying.value).toBe(false);
  });

  it('is not laid where balls were moved before anybody looked', async () => {
    const student = await openLinks({ positions: [OTHER] });
    student.links.look((await handed()).link);
    student.links.keep({ shot: false, position: true, kit: false });
    student.choose.nudge(8, 0.05, 0);
    expect(student.choose.all.isLaying.value).toBe(false);
    student.choose.undo();
    expect(student.choose.all.isLaying.value).toBe(true);
  });

  it('is told not to be possible where its steps are no such way', async () => {
    const { kept } = await handed();
    const drill = { ...kept.drill, via: [{ ball: 8, by: 'cue' } as const] };
    const student = await openLinks({ positions: [OTHER] });
    student.links.look(writeLink({ position: { ...CUT, drill } }));
    student.links.keep({ shot: false, position: true, kit: false });
    await look(student);
    const { all } = student.choose;
    expect(all.search.value).toMatchObject({ state: 'failed' });
    expect(all.search.value.problem).toMatch(/cannot be laid here/);
    expect(all.chosen.value).toBeNull();
    all.look();
    await answerAll(student.hired);
    expect(all.search.value.state).toBe('done');
  });

  it('goes, once kept to be played again, from the list of those', async () => {
    const { coach, kept, link } = await handed();
    const made = coach.choose.keepDrill('My bank');
    const id = made.ok ? made.id : '';
    const read = coach.links.outgoing(`position/${id}`, false)?.shared.position;
    expect(read).toMatchObject({ name: 'My bank', drill: kept.drill });
    expect(link).not.toBe(coach.shared(`position/${id}`));
  });
});

describe('what a link brings', () => {
  it('is kept beside what is here, under a name of its own, and given back whole', async () => {
    const phone = await openLinks({ positions: [{ ...CUT, name: 'Past the eight' }, OTHER] });
    const before = phone.all();
    phone.links.look(LINK_OF_VERSION_1);
    expect(phone.all()).toEqual(before);
    phone.links.keep(ALL);
    expect(phone.links.incoming.value.kind).toBe('none');
    const { shelves, positions, choice } = phone.all();
    expect(positions.map(({ name }) => name)).toEqual([
      'Past the eight (shared)',
      'Past the eight',
      'Another',
    ]);
    expect(phone.choose.open.value).toMatchObject({
      name: 'Past the eight (shared)',
      legal: [3, 5],
    });
    for (const [at, shelf] of shelves.entries()) {
      expect(shelf).toEqual(expect.arrayContaining([...(before.shelves[at] ?? [])]));
      expect(shelf).toHaveLength((before.shelves[at]?.length ?? 0) + 1);
    }
    expect(phone.kit.find('cues', choice.cues)).toMatchObject({ name: 'Lent cue', massRatio: 31 });
    expect(phone.shot.laid.value).toEqual({ ball: 3, pocket: 'far-right' });
    phone.links.undo();
    expect({ ...phone.all(), open: before.open }).toEqual(before);
    expect(phone.links.kept.value).toBeNull();
  });

  it('stays where it has been changed since', async () => {
    const phone = await openLinks();
    phone.links.look(LINK_OF_VERSION_1);
    phone.links.keep(ALL);
    const id = phone.desk.choice.value.cues;
    phone.kit.rename('cues', id, 'Mine now');
    phone.shot.setFigure('speed', 3);
    phone.links.undo();
    expect(phone.kit.find('cues', id)).toMatchObject({ name: 'Mine now' });
    expect(phone.shot.shot.value.speedMps).toBe(3);
    expect(phone.choose.saved.value).toHaveLength(2);
  });

  it('goes on its shelf, and not into play, where a kit came alone', async () => {
    const phone = await openLinks();
    const { cues } = SAID_IN_VERSION_1.kit;
    phone.links.look(writeLink({ kit: cues ? { cues } : {} }));
    phone.links.keep({ shot: false, position: false, kit: true });
    expect(phone.desk.choice.value).toEqual(DEFAULT_CHOICE);
    expect(phone.links.kept.value?.added).toEqual([{ shelf: 'cues', id: 'came-1' }]);
    expect(phone.kit.find('cues', 'came-1')).toMatchObject({ name: 'Lent cue', origin: 'by-hand' });
  });

  it('is refused in one line where there is no room, and nothing of it is kept', async () => {
    const phone = await openLinks({ savedHere: Array(MOST_OF_A_KIND).fill(CUT) });
    const before = phone.all();
    phone.links.look(LINK_OF_VERSION_1);
    phone.links.keep(ALL);
    expect(phone.links.problem.value).toMatch(/^[A-Z].+\.$/);
    expect(phone.all()).toEqual(before);
    expect(phone.links.incoming.value.kind).toBe('brings');
  });

  it('is nothing, whatever 300 hostile links say, until it is asked for', async () => {
    const phone = await openLinks();
    const before = phone.all();
    const random = seededRandom(20_261_203);
    for (let left = 300; left > 0; left -= 1) {
      phone.links.look(hostileLink(LINK_OF_VERSION_1, random));
      phone.links.undo();
    }
    expect(phone.all()).toEqual(before);
  });
});

describe('what is shared', () => {
  it.each([
    ['shot', true],
    ['position', true],
    ['kit', false],
    ['cues/demo-cue-stiff', false],
    ['position/other', false],
  ])('of %s lies behind the # alone, and fits a code', async (what, withKit) => {
    const phone = await openLinks();
    const outgoing = phone.links.outgoing(what, withKit);
    expect(outgoing?.url).toMatch(/^https:\/\/example\.org\/leeway\/#kit\/link\/[\w-]+$/);
    expect(outgoing?.fitsCode).toBe(true);
  });

  it('names nobody who plays here', async () => {
    const phone = await openLinks({ desk: { playerId: 'player-known-to-the-coach' } });
    for (const what of ['shot', 'position', 'kit']) {
      const link = phone.shared(what, true).replace(`${ADDRESS}#kit/link/`, '');
      expect(String.fromCharCode(...bytesOfLink(link))).not.toContain('player');
    }
  });

  it.each(['way', 'cues/gone', 'position/gone', 'cues', 'players/x', ''])(
    'is nothing where there is no "%s"',
    async (what) => {
      const phone = await openLinks();
      expect(phone.links.outgoing(what, false)).toBeNull();
    },
  );

  it('is too much for a code where sixteen balls have a long name and a kit with long names', async () => {
    const long = '八'.repeat(60);
    const balls = Array.from({ length: 16 }, (_, at) => ({
      name: at === 0 ? ('cue' as const) : at,
      xM: -0.5 + at * 0.0651234567,
      yM: -1 + at * 0.1234567891,
    }));
    const phone = await openLinks({ positions: [{ ...CUT, name: long, balls }] });
    const outgoing = phone.links.outgoing('position', true);
    expect(outgoing?.fitsCode).toBe(false);
    await phone.links.save(outgoing?.url ?? '');
    expect(await phone.saved[0]?.text()).toBe(outgoing?.url);
    expect(phone.saved[0]?.name).toBe('leeway-link.txt');
  });
});
