import type { PocketName } from '../table/pocket-shape';
import { BASE_STROKES } from './base-strokes';
import { askedFor, pocketsOf, type WaysQuestion } from './ways-question';

/**
 * A part of the search that can be done by itself: direct cuts of one ball into one pocket, or all that
 * one stroke does to the ball it touches first, straight or off a cushion.
 */
export type WaysStretch =
  | { readonly search: 'direct'; readonly ball: number; readonly pocket: PocketName }
  /** Of what the cue ball does when it meets this ball first. */
  | { readonly search: 'struck'; readonly ball: number; readonly stroke: number }
  | { readonly search: 'kick'; readonly stroke: number };

/**
 * The whole search in parts, what is likeliest to find ways first. All of them put together are the
 * search, by however many hands and in whatever order they were done.
 */
export function waysStretches(question: WaysQuestion): readonly WaysStretch[] {
  const { first, falls } = askedFor(question);
  const { kinds } = question;
  if (first.length === 0 || falls.length === 0) return [];
  const direct: WaysStretch[] = kinds.includes('direct')
    ? falls
        .filter((ball) => first.includes(ball))
        .flatMap((ball) =>
          pocketsOf(question).map(
            ({ name }) => ({ search: 'direct', ball, pocket: name }) as const,
          ),
        )
    : [];
  const isStruck = kinds.some(
    (kind) => kind === 'bank' || kind === 'combination' || kind === 'carom',
  );
  const playedBy = (stroke: number): readonly WaysStretch[] => [
    ...(isStruck ? first.map((ball) => ({ search: 'struck', ball, stroke }) as const) : []),
    ...(kinds.includes('kick') ? [{ search: 'kick', stroke } as const] : []),
  ];
  const later = BASE_STROKES.slice(1).flatMap((_, at) => playedBy(at + 1));
  return [...playedBy(0), ...direct, ...later];
}
