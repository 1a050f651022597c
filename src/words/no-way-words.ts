import type { WayKind } from '../engine/goal/goal';
import type { NoWay } from '../engine/ways/why-none';

const KIND_WORDS: Readonly<Record<WayKind, string>> = {
  direct: 'direct cut',
  bank: 'bank',
  kick: 'kick',
  combination: 'combination',
  carom: 'carom',
};

const WHY_WORDS: Readonly<Record<Exclude<NoWay['why'], 'nothing-legal'>, string>> = {
  'no-line': 'no stroke that was looked at sends a ball that way',
  'too-thin': 'the cut would be over 87°',
  'pocket-closed': 'the ball does not go past the points of the pocket',
  'in-the-way': 'a ball is in the way',
  'other-ball': 'another ball comes between',
  kiss: 'the balls kiss a second time',
  'other-way': 'the ball rattles, or comes off a cushion on its way',
  untouched: 'the cue ball does not reach its ball',
  short: 'the ball stops short',
  miscue: 'the tip would slip',
  foul: 'the wrong ball would be hit first',
};

const NOTHING_LEGAL = 'No ball that may be hit first, or may fall, is on the table.';

/** Why no way of a kind goes, in one sentence. */
export function noWayWords({ kind, why }: NoWay): string {
  if (why === 'nothing-legal') return NOTHING_LEGAL;
  return `No ${KIND_WORDS[kind]} goes: mostly, ${WHY_WORDS[why]}.`;
}

/** Where no safety is found either. */
export const NO_SAFETY_WORDS = 'No legal hit was found.';
