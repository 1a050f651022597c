import type { Shot } from '../../../src/engine/direct/shot';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../src/engine/kit/kit-spread';
import { learn } from '../../../src/engine/player/learn';
import { shotLine } from '../../../src/engine/player/shot-line';
import { questionChances } from '../../../src/engine/player/the-question';
import { knownChance } from '../../../src/engine/player/what-is-known';
import { withText } from './readme-place';

const CORNER_MOUTH_M = 0.116;

/**
 * How many of ten players make of the question's shot, and of straight shots struck in the centre:
 * from and to, of ten. Common practice, no source.
 */
const PLAYERS = [
  { name: 'a beginner', made: 2, said: [[2, 2], null, [7, 7]] },
  {
    name: 'a club player',
    made: 7,
    said: [
      [7, 7],
      [4, 4],
      [9, 10],
    ],
  },
  {
    name: 'a professional',
    made: 10,
    said: [
      [9, 10],
      [8, 9],
      [9, 10],
    ],
  },
] as const;

/** Cue ball's centre to ghost ball, and ball to mouth, m. */
const ANCHORS = [
  { gapM: 0.55, mouthM: 1.4 },
  { gapM: 1.2, mouthM: 1.2 },
  { gapM: 0.3, mouthM: 0.6 },
] as const;

/** A shot that players say how often they make, and how often they come out at. */
export interface AnchoredPlayer {
  readonly name: string;
  readonly made: number;
  /** Of each anchor: what is said, from and to, as shares; null: nobody says. */
  readonly said: readonly (readonly [number, number] | null)[];
  readonly shares: readonly number[];
}

/** Three players who answer the question as such players would, and nothing else. */
export function anchoredPlayers(): readonly AnchoredPlayer[] {
  const question = questionChances(DEFAULT_KIT, UNMEASURED);
  if (question === null) throw new Error('the question has no answer');
  return PLAYERS.map(({ name, made, said }) => {
    const knowledge = learn({ made: { question, of10: made }, shots: [] });
    const shares = ANCHORS.map(
      (anchor) => knownChance(knowledge, lineOf(anchor), question.line).value,
    );
    const told = said.map((tens) => tens && ([tens[0] / 10, tens[1] / 10] as const));
    return { name, made, said: told, shares };
  });
}

function lineOf({ gapM, mouthM }: (typeof ANCHORS)[number]) {
  const elevationRad = (3 * Math.PI) / 180;
  const shot: Shot = {
    distanceM: gapM,
    cutRad: 0,
    side: 0,
    height: 0,
    elevationRad,
    speedMps: 1.8,
  };
  const target = { kind: 'mouth', distanceM: mouthM, mouthM: CORNER_MOUTH_M } as const;
  const line = shotLine({ shot, target, kit: DEFAULT_KIT, spread: UNMEASURED });
  if (line === null) throw new Error('an anchor has no aim');
  return line;
}

/** The README with what those players come out at in its place. @throws Error without marks */
export function withPlayersReport(readme: string, players: readonly AnchoredPlayer[]): string {
  const columns = ANCHORS.map(({ gapM, mouthM }) => `${gapM} m, then ${mouthM} m`);
  const rows = players.map(({ name, made, said, shares }) => {
    const cells = shares.map((share, at) => `${saidOf(said[at])} / ${percent(share)}`);
    return `| ${name}, ${made} of ten | ${cells.join(' | ')} |`;
  });
  const table = [
    `| straight shots into a corner, said / come out at, % | ${columns.join(' | ')} |`,
    `|---|${columns.map(() => '---|').join('')}`,
    ...rows,
  ];
  return withText(readme, 'truth:players', table.join('\n'));
}

function saidOf(said: readonly [number, number] | null | undefined): string {
  if (!said) return '–';
  const [from, to] = said;
  return from === to ? percent(from) : `${percent(from)} to ${percent(to)}`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)}`;
}
