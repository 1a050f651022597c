import type { AimAnswer } from '../../engine/direct/shot';
import type { Preferences } from '../../store/records';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { type DirectionWord, directionWord } from '../../units/direction-word';
import { formatNumber } from '../../units/format-number';
import { lateralFigure } from '../../units/lateral-figure';
import { describeOnObjectBall } from '../../units/on-object-ball';
import type { LengthUnit } from '../../units/unit-names';

/**
 * A sideways figure ready to show: "⅜", "ball", left, "of centre"; or "⅜", "ball outside", left,
 * "edge". Where there is no figure, `place` is named instead: the centre, or the edge on `side`.
 */
export interface Reading {
  /** Whether the rounded figure falls short of the true one, or goes beyond. */
  readonly nearness: '' | 'just over' | 'just under';
  readonly figure: string;
  readonly noun: string;
  readonly side: DirectionWord;
  readonly rest: string;
  readonly place?: 'centre' | 'edge';
}

/** What centre and edge are of. */
const OF_OBJECT_BALL = 'of the object ball';

const EIGHTHS = { ...DEGREES, decimals: 1, eighths: true };
/** Off by more than this share of an eighth, the rounding is told. */
const TOLD_ROUNDING = 0.2;
const EDGE_BALLS = 0.5;

/** Where a line crosses the face of the object ball. */
export function faceReading(onObjectBallM: number, ballRadiusM: number): Reading {
  const { ballWidths, side, place } = describeOnObjectBall(onObjectBallM, ballRadiusM);
  const size = Math.abs(ballWidths);
  const eighths = Math.round(size * 8);
  const off = size * 8 - eighths;
  const nearness = nearnessOf(off);
  if (place === 'centre' || place === 'edge') {
    const noun = place === 'edge' ? besideEdge(off) : '';
    return { nearness: '', figure: '', noun, side, rest: OF_OBJECT_BALL, place };
  }
  const isOutside = place === 'outside';
  const balls = eighths / 8 - (isOutside ? EDGE_BALLS : 0);
  const unit = balls > 1 ? 'balls' : 'ball';
  return {
    nearness,
    figure: formatNumber(balls, EIGHTHS),
    noun: isOutside ? `${unit} outside` : unit,
    side,
    rest: isOutside ? 'edge' : 'of centre',
  };
}

function besideEdge(offEighths: number): string {
  if (Math.abs(offEighths) <= TOLD_ROUNDING) return '';
  return offEighths > 0 ? 'just outside' : 'just inside';
}

function nearnessOf(off: number): Reading['nearness'] {
  if (Math.abs(off) <= TOLD_ROUNDING) return '';
  return off > 0 ? 'just over' : 'just under';
}

/** A sideways length, right +, from a ball's centre. */
export function lengthReading(offsetM: number, unit: LengthUnit, rest: string): Reading {
  const { figure, symbol, direction } = lateralFigure(offsetM, unit);
  return { nearness: '', figure, noun: symbol, side: direction, rest };
}

/** An angle, right +. */
export function angleReading(angleRad: number): Reading {
  const figure = formatNumber(Math.abs(degreesOf(angleRad)), { ...DEGREES, leastDecimals: 1 });
  const side = Number(figure) === 0 ? 'none' : directionWord(angleRad);
  return { nearness: '', figure: `${figure}°`, noun: '', side, rest: '' };
}

/** A reading of the same stroke, and what it is of. */
export interface LabelledReading {
  readonly label: string;
  readonly reading: Reading;
}

/** What the answer leads with, and everything else told of the same stroke. */
export interface AnswerReadings {
  readonly lead: Reading;
  /** The same line told the other ways, the nearest to the lead first. */
  readonly aims: readonly LabelledReading[];
  readonly angle: LabelledReading;
  readonly stick: LabelledReading;
}

const OF_GHOST = 'of the ghost ball';

/** All readings of an answer, by the person's preferences. */
export function answerReadings(
  answer: AimAnswer,
  ballRadiusM: number,
  { lead, lengthUnit }: Preferences,
): AnswerReadings {
  const face = faceReading(answer.aimOnObjectBallM, ballRadiusM);
  const exact = lengthReading(answer.aimOnObjectBallM, lengthUnit, '');
  const angle = { label: 'cue turns', reading: angleReading(answer.aimRad) };
  const leadsWithFace = lead === 'object-ball';
  const stickM = leadsWithFace ? answer.stickOnObjectBallM : answer.stickOffsetM;
  const stick = { label: 'stick', reading: lengthReading(stickM, lengthUnit, '') };
  if (!leadsWithFace) {
    const ghost = lengthReading(answer.aimOffsetM, lengthUnit, OF_GHOST);
    return {
      lead: ghost,
      aims: [{ label: 'object ball', reading: { ...face, nearness: '' } }],
      angle,
      stick,
    };
  }
  const ghost = lengthReading(answer.aimOffsetM, lengthUnit, '');
  const aims = [
    { label: 'centre', reading: exact },
    { label: 'ghost', reading: ghost },
  ];
  return { lead: face, aims, angle, stick };
}

/** A reading as one phrase, for a screen reader or a line of text. */
export function inWords({ nearness, figure, noun, side, rest, place }: Reading): string {
  if (place === 'edge') return `${noun || 'at'} the ${side} edge ${rest}`;
  if (place === 'centre') return `through the centre ${rest}`;
  const where = side === 'none' ? '' : side;
  const of = side === 'none' && rest.startsWith('of ') ? rest.replace('of ', 'off ') : rest;
  return [nearness, figure, noun, where, of].filter((part) => part !== '').join(' ');
}

/** The whole answer as sentences. */
export function answerInWords({ lead, aims }: AnswerReadings): string {
  const others = aims.map(({ label, reading }) => `From the ${label}: ${inWords(reading)}.`);
  return [`Aim: ${inWords(lead)}.`, ...others].join(' ');
}
