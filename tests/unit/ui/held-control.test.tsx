import { computed } from '@preact/signals';
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { type Component, options, type VNode } from 'preact';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { createRoomModel } from '../../../src/state/room-model';
import { InputControl } from '../../../src/ui/shot/InputControl';
import type { InputName } from '../../../src/ui/shot/tile-words';
import { openMeasure } from '../state/measure/open-measure';
import { openShot } from '../state/open-shot';
import { openPlayer } from '../state/player/open-player';

/** The part of what Preact builds that is looked at: the component, where it stands, and in what. */
interface Built extends VNode {
  readonly __c?: Component | null;
  readonly __e?: Node | null;
  readonly __?: Built | null;
}

/** Preact's own hook, called before a component is drawn. */
const hooks = options as { __r?: ((vnode: Built) => void) | undefined };
const former = hooks.__r;
let drawn: Map<Component, Built>;
let changed: Node[];
let values: Map<HTMLInputElement, string>;
let observer: MutationObserver;

beforeEach(() => {
  drawn = new Map();
  hooks.__r = (vnode) => {
    former?.(vnode);
    if (vnode.__c) drawn.set(vnode.__c, vnode);
  };
  changed = [];
  values = new Map();
  const note = (records: readonly MutationRecord[]) => {
    changed.push(...records.map(({ target }) => target));
  };
  observer = new MutationObserver(note);
  const all = { subtree: true, childList: true, attributes: true, characterData: true };
  observer.observe(document.body, all);
});
afterEach(() => {
  hooks.__r = former;
  observer.disconnect();
  cleanup();
});

/** What stands in a field is no part of the markup. */
function fieldsChanged(): readonly Node[] {
  const fields = [...document.querySelectorAll('input')];
  const now = new Map(fields.map((field) => [field, field.value]));
  const before = values;
  values = now;
  return fields.filter((field) => before.get(field) !== field.value);
}

/**
 * Components that were drawn anew by themselves since the last look, although nothing of them
 * changed. What stands in another that was drawn is drawn with it.
 */
function drawnInVain(): string[] {
  const all = drawn;
  drawn = new Map();
  const places = [...changed, ...fieldsChanged()];
  changed = [];
  const isChanged = ({ __e: root }: Built) => places.some((node) => root?.contains(node));
  const isWithinDrawn = ({ __: parent }: Built): boolean =>
    parent ? (parent.__c ? all.has(parent.__c) : false) || isWithinDrawn(parent) : false;
  return [...all.values()]
    .filter((vnode) => !isChanged(vnode) && !isWithinDrawn(vnode))
    .map(({ type }) => (typeof type === 'function' ? type.name : type));
}

const twoFrames = () =>
  new Promise<void>((resolve) => {
    requestAnimationFrame(() => requestAnimationFrame(() => resolve()));
  });

/** One control of Shot, on the engine itself. */
async function openControl(name: InputName) {
  const { measure, kit, desk } = await openMeasure();
  const { player } = await openPlayer();
  const shot = openShot({}, {}, { desk, kit: kit.kit, solve: solveAim }).model;
  const room = createRoomModel({
    lastAnswer: shot.lastAnswer,
    desk,
    player,
    known: measure.knowledge,
    spreadBefore: computed(() => measure.before.value.spread),
    assess: () => () => {},
    later: () => () => {},
  });
  render(<InputControl app={{ shot, room, kit, desk }} name={name} />);
  await twoFrames();
  return shot;
}

it.each([
  ['distance', 0.82],
  ['cut', 21],
  ['speed', 2.2],
  ['raised', 7],
] as const)(
  'draws nothing of %s anew, while its slider is held, but what changes',
  async (name, from) => {
    const shot = await openControl(name);
    const slider = screen.getByRole<HTMLInputElement>('slider');
    const before = shot.shot.value;
    fireEvent.pointerDown(slider);
    drawnInVain();
    const inVain: string[][] = [];
    for (const by of [0, 0.2, 0.4, 0.6]) {
      fireEvent.input(slider, { target: { value: from + by } });
      await twoFrames();
      expect(drawn.size).toBeGreaterThan(0);
      inVain.push(drawnInVain());
    }
    fireEvent.pointerUp(slider);
    expect(shot.shot.value).not.toEqual(before);
    expect(inVain).toEqual([[], [], [], []]);
  },
);

it('draws nothing of a control anew while another number is changed', async () => {
  const shot = await openControl('distance');
  drawnInVain();
  shot.setFigure('elevation', 9);
  await twoFrames();
  expect(shot.shot.value.elevationRad).toBeCloseTo((9 * Math.PI) / 180, 9);
  expect(drawn.size).toBe(0);
});
