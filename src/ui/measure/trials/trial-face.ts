import type { ScenePart } from '../../../diagram/trial-scene';
import type { TrialShot } from '../../../engine/fit/trials/trials';
import { diamondAt } from '../../../units/diamond-count';
import { directionWord } from '../../../units/direction-word';
import { formatQuantity } from '../../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../../units/length-unit';
import type { LengthUnit } from '../../../units/unit-names';

/** What the words hang on beside the shot. */
export interface WordsContext {
  readonly ballRadiusM: number;
  readonly lengthUnit: LengthUnit;
  /** How high the butt is to be raised, ready to show; empty where it is not. */
  readonly buttHeight: string;
}

/** What is said while two taps take a time. */
export interface TimedWords {
  readonly title: string;
  readonly text: (shot: TrialShot) => string;
  /** What the two taps are of. */
  readonly taps: readonly [string, string];
}

/** The balls of a set-up close up: what is told below them. */
export interface LensWords {
  readonly words: string;
  /** The gap between them by eye, where that is drawn. */
  readonly gap?: string;
}

type SizedContext = Pick<WordsContext, 'ballRadiusM' | 'lengthUnit'>;

/** What a person sees of a trial: its words and its drawing. */
export interface TrialFace {
  readonly label: string;
  /** What it is for: "teaches how fast the cloth is". */
  readonly teaches: string;
  /** How long it takes (our guess). */
  readonly takes: string;
  /** A shot of it in a few words, beside the label. */
  readonly details: (shot: TrialShot, unit: LengthUnit) => readonly string[];
  readonly placeTitle: string;
  readonly place: (shot: TrialShot, context: WordsContext) => string;
  /** On the button, once all is placed. */
  readonly placed: string;
  readonly aimAt: string;
  readonly watch: string;
  /** Where a time is taken. */
  readonly timed?: TimedWords;
  /** What the drawing of the set-up shows, for whoever cannot see it. */
  readonly shown: (shot: TrialShot) => string;
  readonly scene: ScenePart;
  /** Where the balls lie so near each other that they are shown close up. */
  readonly lens?: (shot: TrialShot, context: SizedContext) => LensWords;
}

export const AT_BREAK_END = 'Stand at the break end.';
export const PLACED = 'It is placed';

/** The details of a shot with side. */
export const sided: TrialFace['details'] = ({ stroke }) => [
  `${directionWord(stroke.side)} side${stroke.height < 0 ? ' and low' : ''}`,
  stroke.speedWord ?? '',
];

/** The diamond that the ball which is to reach the far cushion is level with. */
export function placedAt(
  { setup }: TrialShot,
  { ballRadiusM }: Pick<WordsContext, 'ballRadiusM'>,
): number {
  return diamondAt(setup.bedLengthM - ballRadiusM - setup.distanceM, setup.bedLengthM);
}

/** A gap between two balls, by the tape: "5 cm". */
export function gapWords(gapM: number, unit: LengthUnit): string {
  const tape = unit === 'in' ? 'in' : 'cm';
  return formatQuantity(lengthInUnit(gapM, tape), {
    ...LENGTH_UNITS[tape],
    leastDecimals: 0,
    decimals: 1,
  });
}

/** The same by eye, in ball widths: "1½ balls". */
export function ballsApart(gapM: number, ballRadiusM: number): string {
  const halves = Math.max(1, Math.round(gapM / ballRadiusM));
  if (halves === 1) return 'half a ball';
  if (halves === 2) return '1 ball';
  return `${Math.floor(halves / 2)}${halves % 2 === 1 ? '½' : ''} balls`;
}
