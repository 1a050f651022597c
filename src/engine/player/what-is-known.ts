import { chanceOf } from '../room/chance';
import type { StrokeProfile } from '../room/stroke-profile';
import { knownProfile, spreadBeside } from './known-profile';
import { figureOf, type KnownFigure, learn, type Made, type PlayerKnowledge } from './learn';
import { playerOf, type Unknowns } from './player-of';
import { lineScatter, type PlainLine, type ShotLine } from './shot-line';
import { chanceRange, somePlayers } from './some-players';

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
    lineRad: of((stroke) => lineScatter(stroke, question)),
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

/** The player in the middle of what is known. */
function middleOf(knowledge: PlayerKnowledge): Unknowns {
  const [first] = knowledge.points;
  return (first?.unknowns ?? []).map(
    (_, index) => figureOf(knowledge, (unknowns) => unknowns[index] ?? 0).value,
  );
}

/**
 * How often a shot goes that is aimed by its solved aim: by the engine's own quadrature, for the one
 * player who stands for all those there may be.
 */
export function knownChance(knowledge: PlayerKnowledge, line: ShotLine): KnownFigure {
  const { task, kit, stroke, spread } = line;
  const profile = knownProfile(knowledge, line, spread);
  const beside = spreadBeside(knowledge, spread);
  const value = chanceOf(task, kit, stroke, profile, beside).share;
  return { value, ...chanceRange(somePlayers(knowledge), line, value) };
}

/** The stroke of somebody of whom no more is known than how many of ten are made. */
export function strokeOfMade(made: Made): StrokeProfile {
  return playerOf([middleOf(learn({ made, shots: [] }))[0] ?? 0]).stroke;
}
