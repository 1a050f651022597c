import type { BallState } from '../ball/ball-state';
import { Chains, stateFrom } from '../goal/chains';
import type { PlayedKind, Step } from '../goal/goal';
import { kindOfVia } from '../goal/kind-of-via';
import { playLaid } from '../goal/laid-table';
import type { Stroke } from '../stroke/stroke';
import type { WaysAsked } from './ways-question';

/** A leg that might end in a pocket: who goes, by what, and how it sets off. */
export interface SampleLeg {
  readonly key: string;
  readonly kind: PlayedKind;
  readonly ball: number;
  readonly via: readonly Step[];
  readonly state: BallState;
}

/** What the cue ball does when the cue points somewhere, as far as ways begin with it. */
export interface Sample {
  readonly headingRad: number;
  readonly legs: ReadonlyMap<string, SampleLeg>;
}

/** Enough for two balls and two cushions each. */
const MOST_EVENTS = 40;

/** Which legs are looked for, and when there is no more to see. */
export interface LegFilter {
  readonly kinds: readonly PlayedKind[];
  /** The ball that must be touched first; null: any that may. */
  readonly first: number | null;
}

/** Plays a stroke, and tells the legs that begin in it. */
export function sampleAt(asked: WaysAsked, stroke: Stroke, filter: LegFilter): Sample {
  const { laid, question } = asked;
  const chains = new Chains(laid.names);
  const found: { ball: number; via: readonly Step[]; kind: PlayedKind; startS: number }[] = [];
  const isKick = filter.kinds.length === 1 && filter.kinds[0] === 'kick';
  const play = playLaid(laid, stroke, question.kit, {
    mostEvents: MOST_EVENTS,
    until: (event) => {
      for (const { ball, via, startS } of chains.take(event)) {
        const kind = wantedKind(asked, filter, via, laid.names[ball]);
        if (kind !== null) found.push({ ball, via, kind, startS });
      }
      return isOver(chains, laid.names, filter.first, isKick);
    },
  });
  const legs = new Map<string, SampleLeg>();
  for (const { ball, via, kind, startS } of found) {
    const run = play?.balls[ball];
    const name = laid.names[ball];
    const state = run === undefined ? null : stateFrom(run, startS);
    if (state === null || typeof name !== 'number') continue;
    const key = keyOf(via, name);
    legs.set(key, { key, kind, ball: name, via, state });
  }
  return { headingRad: stroke.aimRad, legs };
}

function wantedKind(
  { falls }: WaysAsked,
  { kinds }: LegFilter,
  via: readonly Step[],
  name: unknown,
): PlayedKind | null {
  if (typeof name !== 'number' || !falls.includes(name)) return null;
  const kind = kindOfVia(via, name);
  return kind !== null && kind !== 'direct' && kinds.includes(kind) ? kind : null;
}

/** The wrong ball first, or a kick whose ball is on its way. */
function isOver(
  { firstHit }: Chains,
  names: WaysAsked['laid']['names'],
  first: number | null,
  isKick: boolean,
): boolean {
  if (firstHit === null) return false;
  return isKick || (first !== null && names[firstHit] !== first);
}

/** What happens, and to which ball, in one word. */
export function keyOf(via: readonly Step[], ball: number): string {
  const steps = via.map((step) => `${step.by}>${'ball' in step ? step.ball : step.cushion}`);
  return `${ball}: ${steps.join(' ')}`;
}
