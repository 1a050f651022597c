import type { PlayedKind, WayKind } from '../goal/goal';
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
  | {
      readonly search: 'struck';
      readonly ball: number;
      readonly stroke: number;
      readonly kinds: readonly PlayedKind[];
    }
  | { readonly search: 'kick'; readonly stroke: number };

/** Kinds that begin with a ball struck, and not straight into a pocket. */
const STRUCK: readonly PlayedKind[] = ['bank', 'combination', 'carom'];

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
  const playedBy = (stroke: number) => strokeStretches(question, kinds, stroke);
  const later = BASE_STROKES.slice(1).flatMap((_, at) => playedBy(at + 1));
  return [...playedBy(0), ...direct, ...later];
}

/** The parts that look with one stroke for ways of some kinds. */
export function strokeStretches(
  question: WaysQuestion,
  kinds: readonly WayKind[],
  stroke: number,
): readonly WaysStretch[] {
  const { first } = askedFor(question);
  const struck = STRUCK.filter((kind) => kinds.includes(kind));
  return [
    ...(struck.length > 0
      ? first.map((ball) => ({ search: 'struck', ball, stroke, kinds: struck }) as const)
      : []),
    ...(kinds.includes('kick') ? [{ search: 'kick', stroke } as const] : []),
  ];
}
