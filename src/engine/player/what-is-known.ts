import type { KitSpread } from '../kit/kit-spread';
import { chanceOf } from '../room/chance';
import type { StrokeProfile } from '../room/stroke-profile';
import { ownScatter } from './known-player';
import { type StandIn, standIn } from './known-profile';
import { figureOf, type KnownFigure, learn, type Made, type PlayerKnowledge } from './learn';
import { playerOf } from './player-of';
import type { PlainLine, ShotLine } from './shot-line';
import { chanceRange } from './some-players';

/** What is known of a stroke: every figure in its middle, with the ends of its central nine tenths. */
export interface KnownStroke {
  /** Of the line on the question's shot, direction and sideways tip together, rad. */
  readonly lineRad: KnownFigure;
  readonly directionRad: KnownFigure;
  readonly tipM: KnownFigure;
  readonly speedShare: KnownFigure;
  readonly elevationRad: KnownFigure;
  readonly together: KnownFigure;
}

export function knownStroke(knowledge: PlayerKnowledge, question: PlainLine): KnownStroke {
  const of = (pick: (stroke: StrokeProfile) => number) =>
    figureOf(knowledge, (unknowns) => pick(playerOf(unknowns).stroke));
  return {
    lineRad: figureOf(knowledge, (unknowns) => ownScatter(playerOf(unknowns), question)),
    directionRad: of(({ directionRad }) => directionRad),
    tipM: of(({ tipM }) => tipM),
    speedShare: of(({ speedShare }) => speedShare),
    elevationRad: of(({ elevationRad }) => elevationRad),
    together: of(({ together }) => together),
  };
}

/** What is known of the steady errors: rad, right + and towards full +; a share, harder +. */
export interface KnownBias {
  readonly aimRad: KnownFigure;
  readonly fullRad: KnownFigure;
  readonly speedShare: KnownFigure;
}

export function knownBias(knowledge: PlayerKnowledge): KnownBias {
  return {
    aimRad: figureOf(knowledge, (unknowns) => playerOf(unknowns).aimBiasRad),
    fullRad: figureOf(knowledge, (unknowns) => playerOf(unknowns).fullBiasRad),
    speedShare: figureOf(knowledge, (unknowns) => playerOf(unknowns).speedBias),
  };
}

/** The mass ratio of the cue in play, as far as shots with side tell it. */
export function knownMassRatio(knowledge: PlayerKnowledge, { kit, spread }: ShotLine): KnownFigure {
  return figureOf(
    knowledge,
    (unknowns) => kit.massRatio * Math.exp(spread.massRatio * playerOf(unknowns).squirtSds),
  );
}

/**
 * How often a shot goes that is aimed by its solved aim: the mean over all that may be the player, by
 * the engine's own quadrature, as it is told of the same shot anywhere else.
 *
 * @param question the question's line
 */
export function knownChance(
  knowledge: PlayerKnowledge,
  line: ShotLine,
  question: PlainLine,
): KnownFigure {
  const { task, kit, stroke } = line;
  const { some, profile, spread } = standIn(knowledge, question, line.spread);
  const value = chanceOf(task, kit, stroke, profile, spread).share;
  return { value, ...chanceRange(some, line, value) };
}

/** Of whom no more is known than how many of ten are made. */
export function playerOfMade(made: Made, spread: KitSpread): StandIn {
  return standIn(learn({ made, shots: [] }), made.question.line, spread);
}
