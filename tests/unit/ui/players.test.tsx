import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { createDeskModel } from '../../../src/state/desk-model';
import { createKitInPlay } from '../../../src/state/kit-in-play';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { createMemoryStore } from '../../../src/store/memory-store';
import { createNoticeBoard } from '../../../src/store/notice-board';
import type { PlayedShot, Player } from '../../../src/store/player';
import { AskLine } from '../../../src/ui/player/AskLine';
import { AskOnce } from '../../../src/ui/player/AskOnce';
import { PlayerPanel } from '../../../src/ui/player/PlayerPanel';
import { PlayerRow } from '../../../src/ui/player/PlayerRow';
import { PlayersPanel } from '../../../src/ui/player/PlayersPanel';
import { QuestionPanel } from '../../../src/ui/player/QuestionPanel';
import { createRouter } from '../../../src/ui/route';
import { LAID_SHOT, NEWCOMER, PLAIN_SHOT, STUDENT } from '../../store/invented-players';
import { knownPlayer } from '../state/player/open-player';

afterEach(cleanup);

function models(players: readonly Player[], played: readonly PlayedShot[] = []) {
  history.replaceState(null, '', '#kit/players');
  const store = createMemoryStore(createNoticeBoard());
  const desk = createDeskModel({ store, desk: DEFAULT_DESK });
  const kit = createKitInPlay({ store, desk, shelves: DEMO_CATALOGUE });
  const player = knownPlayer(store, desk, players, played);
  return { player, kit, desk, router: createRouter(window) };
}

const press = (name: string | RegExp) => screen.getByRole('button', { name }).click();

describe('the question', () => {
  const button = () => screen.queryByRole('button', { name: /one question/ });

  it('is a line beside a chance that is told for nobody, and answered by one tap on its panel', async () => {
    const app = models([NEWCOMER]);
    const { rerender } = render(<AskOnce app={app} panel="question" />);
    press(/^Chances for Newcomer: one question/);
    expect(app.router.route.value.panel).toBe('question');
    rerender(<QuestionPanel app={app} />);
    await screen.findByText(/How many of ten does Newcomer make/);
    expect(screen.getAllByRole('button', { name: /^\d+$/ })).toHaveLength(11);
    press('7');
    await screen.findByText(
      /^For Newcomer: a table length on, .* \d mm \(as far as is known .*°\)\.$/,
    );
    expect(app.player.inPlay.value).toMatchObject({ madeOf10: 7, wasAsked: true });
    press('7');
    expect(app.player.inPlay.value.madeOf10).toBeNull();
    await screen.findByRole('button', { name: '7', pressed: false });
    press('7');
    (await screen.findByRole('button', { name: 'Done' })).click();
    rerender(<AskOnce app={app} panel="question" />);
    expect(button()).toBeNull();
  });

  it.each([
    ['m', '0.60 m'],
    ['cm', '60 cm'],
    ['ft', '2 ft'],
    ['in', '24 in'],
    ['diamonds', '1.9 diamonds'],
  ] as const)('lays the cue ball in the unit chosen, %s: %s behind', (distanceUnit, behind) => {
    const app = models([NEWCOMER]);
    app.desk.setPreference('distanceUnit', distanceUnit);
    render(<QuestionPanel app={app} />);
    screen.getByText(new RegExp(`cue ball ${behind} behind it`));
  });

  it('says what is assumed of whom it is skipped for', () => {
    render(<QuestionPanel app={models([NEWCOMER])} />);
    screen.getByRole('button', { name: 'Skip: as for most players, until shots tell more' });
  });

  it('can be come back to while nothing is known of whom it was skipped for', () => {
    render(<AskOnce app={models([{ ...NEWCOMER, wasAsked: true }])} panel="question" />);
    expect(button()).toBeTruthy();
  });

  it('stays after the first shots are logged, until it is answered or skipped', async () => {
    const app = models([NEWCOMER], [{ ...PLAIN_SHOT, playerId: NEWCOMER.id }]);
    await expect.poll(() => app.player.isKnown.value).toBe(true);
    const { rerender } = render(<AskOnce app={app} panel="question" />);
    expect(button()?.textContent).toMatch(/^Surer for Newcomer/);
    app.player.putAside();
    rerender(<AskOnce app={app} panel="question" />);
    await expect.poll(button).toBeNull();
  });

  it('is asked of whom an invented player stood for, and of them only once', async () => {
    const app = models([{ ...STUDENT, wasAsked: false }]);
    const { rerender } = render(<AskOnce app={app} panel="question" />);
    expect(button()?.textContent).toMatch(/^Chances for/);
    rerender(<QuestionPanel app={app} />);
    press('Done');
    rerender(<AskOnce app={app} panel="question" />);
    expect(button()).toBeNull();
  });

  it('is not asked of whom something is known', () => {
    const { container } = render(<AskOnce app={models([STUDENT])} panel="question" />);
    expect(container.textContent).toBe('');
  });
});

describe('the question on Shot', () => {
  const line = () => screen.queryByRole('region', { name: 'Whom it is told for' });

  it('is one line until it is answered, on a panel of its own', async () => {
    const app = models([NEWCOMER]);
    const { rerender } = render(<AskLine app={app} />);
    press(/^How often would Newcomer make it\? Answer one question/);
    expect(app.router.route.value.panel).toBe('question');
    rerender(<QuestionPanel app={app} />);
    press('7');
    expect(app.player.inPlay.value).toMatchObject({ madeOf10: 7, wasAsked: true });
    (await screen.findByRole('button', { name: 'Done' })).click();
    rerender(<AskLine app={app} />);
    expect(line()).toBeNull();
  });

  it.each([
    ['on the line', 'Skip the question'],
    ['on the panel', /^Skip/],
  ])('is skipped for good by one tap %s', async (where, name) => {
    const app = models([NEWCOMER]);
    const { rerender } = render(
      where === 'on the line' ? <AskLine app={app} /> : <QuestionPanel app={app} />,
    );
    press(name);
    expect(app.player.inPlay.value).toMatchObject({ madeOf10: null, wasAsked: true });
    rerender(<AskLine app={app} />);
    await expect.poll(line).toBeNull();
  });

  it('stays, in other words, once shots are logged', async () => {
    const app = models([NEWCOMER], [{ ...PLAIN_SHOT, playerId: NEWCOMER.id }]);
    await expect.poll(() => app.player.isKnown.value).toBe(true);
    render(<AskLine app={app} />);
    expect(line()?.textContent).toMatch(/^Told from few shots\. Answer one question/);
  });

  it.each([
    ['the answer is known', STUDENT],
    ['an invented player stood for', { ...STUDENT, wasAsked: false }],
  ])('takes no line of whom %s', (_, player) => {
    render(<AskLine app={models([player])} />);
    expect(line()).toBeNull();
  });
});

describe('the players', () => {
  it('are listed with where they stand, chosen, made, deleted and put back', async () => {
    const app = models([STUDENT, NEWCOMER]);
    render(<PlayersPanel app={app} cameFrom="" />);
    expect(screen.getByText('6 of 10, in play')).toBeTruthy();
    press(/^Newcomer/);
    await screen.findByText('nothing known yet, in play');
    press('More: Newcomer');
    fireEvent.click(await screen.findByRole('button', { name: 'Delete Newcomer' }));
    await screen.findByText('Newcomer is deleted.');
    press('More: Student “A”');
    fireEvent.click(await screen.findByRole('button', { name: 'Delete Student “A”' }));
    await screen.findByText(/This is the only player/);
    press(/Put it back/);
    await expect.poll(() => app.player.players.value).toHaveLength(2);
    press('New player');
    expect(app.player.inPlay.value.name).toBe('Player 3');
    expect(app.router.route.value.panel).toBe(`players/${app.player.inPlay.value.id}`);
  });

  it('say at once that whoever was added plays, with the way back', async () => {
    const app = models([STUDENT, NEWCOMER]);
    const { rerender } = render(<PlayersPanel app={app} cameFrom="" />);
    press('New player');
    const { id } = app.player.inPlay.value;
    rerender(<PlayerPanel app={app} id={id} />);
    expect(app.player.rename(id, 'Ann').ok).toBe(true);
    await screen.findByText('Ann plays now.');
    press('Back to Student “A”');
    await expect.poll(() => screen.queryByText('Ann plays now.')).toBeNull();
    expect(app.player.inPlay.value.id).toBe(STUDENT.id);
    expect(app.player.choose(id).ok).toBe(true);
    await expect.poll(() => screen.queryByRole('button', { name: 'Play as this one' })).toBeNull();
    expect(screen.queryByText('Ann plays now.')).toBeNull();
  });

  it('say in the list and on their page what of their shots is not learnt from', () => {
    const shots = [LAID_SHOT, { ...PLAIN_SHOT, asMeant: false }];
    const app = models([STUDENT, NEWCOMER], shots);
    const { rerender } = render(<PlayersPanel app={app} cameFrom="" />);
    screen.getByText('6 of 10, 2 shots, 1 learnt from: 1 not as meant, in play');
    rerender(<PlayerPanel app={app} id={STUDENT.id} />);
    expect(screen.getByText('2 shots, 1 learnt from: 1 not as meant.')).toBeTruthy();
  });

  it('are told apart: what is known is told of the one in play', async () => {
    const app = models([STUDENT, NEWCOMER]);
    const { rerender } = render(<PlayerRow app={app} />);
    expect(screen.getByRole('button').textContent).toMatch(/Student “A” From 6 made of 10: /);
    rerender(<PlayerPanel app={app} id={NEWCOMER.id} />);
    press('Play as this one');
    await screen.findByText(/Nothing is known yet/);
    rerender(<PlayerPanel app={app} id="gone" />);
    expect(screen.getByText('This one is no longer here.')).toBeTruthy();
  });

  it('can be renamed, and saved alone', async () => {
    const app = models([STUDENT]);
    render(<PlayerPanel app={app} id={STUDENT.id} />);
    const name = screen.getByRole('textbox', { name: 'Name' }) as HTMLInputElement;
    name.value = 'Ann';
    name.dispatchEvent(new Event('change', { bubbles: true }));
    await screen.findByText('Player: Ann');
    await expect.poll(() => app.player.file.isReady.value).toBe(true);
    press('Save this player');
    await screen.findByText(/^Saved as leeway-player-ann-/);
  });
});
