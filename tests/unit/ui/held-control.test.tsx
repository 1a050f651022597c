import { computed } from '@preact/signals';
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { createRoomModel } from '../../../src/state/room-model';
import { createRouter } from '../../../src/ui/route';
import { AnswerBlock } from '../../../src/ui/shot/AnswerBlock';
import { InputControl } from '../../../src/ui/shot/InputControl';
import { InputTiles } from '../../../src/ui/shot/InputTiles';
import { OverheadStrip } from '../../../src/ui/shot/OverheadStrip';
import { pictureHand } from '../../../src/ui/shot/picture-hand';
import { ShooterDiagram } from '../../../src/ui/shot/ShooterDiagram';
import { ShotActions } from '../../../src/ui/shot/ShotActions';
import type { InputName } from '../../../src/ui/shot/tile-words';
import { WarningList } from '../../../src/ui/shot/WarningList';
import { openMeasure } from '../state/measure/open-measure';
import { openShot } from '../state/open-shot';
import { openPlayer } from '../state/player/open-player';
import { alreadyHere } from './already-here';
import { type Drawn, twoFrames, watchDrawn } from './drawn-anew';

let watch: ReturnType<typeof watchDrawn>;
beforeEach(() => {
  watch = watchDrawn();
});
afterEach(() => {
  watch.end();
  cleanup();
});

/** All of Shot that follows a finger, with one of its controls, on the engine itself. */
async function openPlace(name: InputName) {
  const { measure, kit, desk } = await openMeasure();
  const { player } = await openPlayer();
  const solve = vi.fn(solveAim);
  const shot = openShot({}, {}, { desk, kit: kit.kit, solve }).model;
  const room = createRoomModel({
    lastAnswer: shot.lastAnswer,
    desk,
    player,
    known: measure.knowledge,
    spreadBefore: computed(() => measure.before.value.spread),
    assess: () => () => {},
    later: () => () => {},
  });
  const app = { shot, room, kit, desk, measure, player, router: createRouter(window) };
  const hand = alreadyHere(pictureHand);
  const { container } = render(
    <>
      <ShooterDiagram app={app} hand={hand} />
      <OverheadStrip app={app} hand={hand} />
      <AnswerBlock app={app} />
      <WarningList app={app} />
      <ShotActions app={app} />
      <InputTiles app={app} open={name} />
      <InputControl app={app} name={name} />
    </>,
  );
  await twoFrames();
  return { shot, solve, container };
}

/** Whose words a move may change, or what comes and goes in a drawing with what stands in it. */
const TELLING = new Set([
  ...['Lead', 'AnswerLead', 'PlaceLead', 'SideWord', 'NumberField', 'ValueSlider', 'TileSymbol'],
  ...['Choices', 'Shown', 'Fragment', 'LiveWord', 'LiveText', 'LivePath', 'Upright'],
  ...['BandName', 'BallRuler'],
]);

function expectOnlyTelling({ all, inVain }: Drawn): void {
  const others = all.filter((name) => !TELLING.has(name));
  expect({ inVain, others }).toEqual({ inVain: [], others: [] });
}

/** The first move tells that what is known of the last shot is out of date: each that is greyed is drawn. */
async function takeHold(move: () => void): Promise<void> {
  move();
  await twoFrames();
  watch.look();
}

it.each([
  ['distance', 0.82],
  ['cut', 21],
  ['speed', 2.2],
  ['raised', 7],
] as const)(
  'solves once and draws nothing anew but what changes, a move of the slider of %s',
  async (name, from) => {
    const { shot, solve } = await openPlace(name);
    const slider = screen.getByRole<HTMLInputElement>('slider', { name: /, slider$/ });
    const before = shot.shot.value;
    fireEvent.pointerDown(slider);
    const moveTo = (value: number) => fireEvent.input(slider, { target: { value } });
    await takeHold(() => moveTo(from - 0.2));
    for (const by of [0, 0.2, 0.4, 0.6]) {
      solve.mockClear();
      moveTo(from + by);
      await twoFrames();
      const drawn = watch.look();
      expect(drawn.all.length).toBeGreaterThan(0);
      expectOnlyTelling(drawn);
      expect(solve).toHaveBeenCalledTimes(1);
    }
    fireEvent.pointerUp(slider);
    expect(shot.shot.value).not.toEqual(before);
  },
);

it.each([
  ['the ghost ball', '.shooter-diagram .ghost-ball', '.picture-touch', 'cutRad'],
  ['the tip', '.near-tip', '.picture-touch', 'height'],
  ['the cue ball', '.overhead-drawing .cue-ball', '.overhead-drawing svg', 'distanceM'],
  ['the run', '.run-row .drag-handle', '.overhead-drawing svg', 'speedMps'],
] as const)(
  'solves once and draws nothing anew but what changes, a move of %s on the picture',
  async (_, held, touched, part) => {
    const { shot, solve, container } = await openPlace('distance');
    const at = placeOf(container.querySelector(held));
    const drawing = container.querySelector(touched);
    if (!drawing) throw new Error(`there is no ${touched}`);
    const send = (type: 'pointerDown' | 'pointerMove' | 'pointerUp', steps: number) =>
      fireEvent[type](drawing, {
        button: 0,
        clientX: at.x + steps * STEP_PX,
        clientY: at.y - steps * STEP_PX,
      });
    send('pointerDown', 0);
    await takeHold(() => send('pointerMove', 1));
    for (const steps of [2, 3, 2, 3]) {
      solve.mockClear();
      const before = shot.shot.value[part];
      send('pointerMove', steps);
      await twoFrames();
      expect(shot.shot.value[part]).not.toBe(before);
      expectOnlyTelling(watch.look());
      expect(solve).toHaveBeenCalledTimes(1);
    }
    send('pointerUp', 3);
  },
);

/** Farther than a tap, and from one mark of the tip to the next. */
const STEP_PX = 6;

/** Where a mark of a drawing is drawn, px. */
function placeOf(mark: Element | null) {
  const numbers = (mark?.getAttribute('transform') ?? '').match(/[\d.]+/g) ?? [];
  const x = Number(mark?.getAttribute('cx') ?? numbers[0]);
  const y = Number(mark?.getAttribute('cy') ?? numbers[1]);
  return { x, y };
}

it('draws nothing of a control anew while another number is changed', async () => {
  const { shot } = await openPlace('distance');
  shot.beginGesture(true);
  await takeHold(() => shot.setFigure('elevation', 8));
  shot.setFigure('elevation', 9);
  await twoFrames();
  expect(shot.shot.value.elevationRad).toBeCloseTo((9 * Math.PI) / 180, 9);
  const { all } = watch.look();
  expect(all.filter((drawn) => /^(Number|Value|Input|Distance|Picks|Choices)/.test(drawn))).toEqual(
    [],
  );
});
