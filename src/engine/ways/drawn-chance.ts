import { playLaid } from '../goal/laid-table';
import { KIT_QUANTITIES } from '../kit/kit-spread';
import { latticePoint } from '../numerics/lattice';
import { normalQuantile } from '../numerics/normal';
import { drawKit, tiesOf } from '../room/drawn-kit';
import { drawnStroke, turnedBy } from '../room/drawn-stroke';
import { whoPlays } from '../room/who-plays';
import type { Stroke } from '../stroke/stroke';
import type { TablePlay } from '../table/table-play';
import { goesAsTold, isLegalHit } from './as-told';
import type { FoundWay } from './found-way';
import { askedFor, type WaysAsked, type WaysQuestion } from './ways-question';

/** What became of strokes that were drawn as the player makes them, each with a kit as it may be. */
export interface DrawnWay {
  /** That the ball falls in its pocket, a legal ball hit first. */
  readonly chance: number;
  /** Standard error of that, as of independent draws: the lattice's is less. */
  readonly chanceError: number;
  /** Of the draws that go, how many go by just the way that is told; 1 where none goes. */
  readonly asTold: number;
  /** Of every draw; null where the tip slips. */
  readonly all: readonly (TablePlay | null)[];
  readonly going: readonly TablePlay[];
}

/** How many strokes the app draws of a way. */
export const DRAWS = 512;
/** The lattice's dimension for the cue's direction, after those of the rest of the stroke. */
const DIRECTION = 4;

/** What is meant: where the cue points over the table, and the stroke about that. */
export type Meant = Pick<FoundWay, 'headingRad' | 'stroke'>;

/**
 * A stroke played on the whole table again and again, stroke and kit drawn from an even lattice that is
 * always the same.
 *
 * @param fullerAim on which side the cue points for a fuller hit: 1 right, −1 left; 0: neither
 * @returns a play for each draw; null of one with which the tip slips
 */
export function drawnOnTable(
  question: WaysQuestion,
  meant: Meant,
  fullerAim: 1 | -1 | 0,
  draws: number,
): readonly (TablePlay | null)[] {
  const { profile: player, kit: known, spread, correlation } = question;
  const { laid } = askedFor(question);
  const who = whoPlays(overTable(meant), player, known, spread, fullerAim, draws);
  const sampled = KIT_QUANTITIES.filter((name) => spread[name] > 0 && who.isDrawn(name));
  const ties = tiesOf(sampled, correlation);
  return Array.from({ length: draws }, (_, draw) => {
    const normal = (dimension: number) => normalQuantile(latticePoint(draw, dimension, 0));
    const { stroke, profile, kit } = who.at(draw);
    const drawnKit = drawKit(kit, spread, sampled, ties, normal);
    const drawn = drawnStroke(kit, stroke, profile, normal);
    const turned = turnedBy(kit, drawn, profile, normal(DIRECTION));
    return playLaid(laid, turned, drawnKit, { endsOnly: true });
  });
}

/**
 * The chance of a way by playing it on the whole table: where a hair decides between jaw and hole no
 * smooth miss tells it.
 *
 * @param fullerAim on which side the cue points for a fuller hit: 1 right, −1 left; 0: neither
 */
export function drawnWay(
  question: WaysQuestion,
  way: Meant & Pick<FoundWay, 'goal'>,
  fullerAim: 1 | -1 | 0,
  draws = DRAWS,
): DrawnWay {
  const asked = askedFor(question);
  const all = drawnOnTable(question, way, fullerAim, draws);
  const going = all.filter((play) => play !== null).filter((play) => doesGo(asked, way, play));
  const told = going.filter((play) => goesAsTold(asked, way.goal, play)).length;
  const share = (going.length + 1) / (draws + 2);
  return {
    chance: going.length / draws,
    chanceError: Math.sqrt((share * (1 - share)) / draws),
    asTold: going.length === 0 ? 1 : told / going.length,
    all,
    going,
  };
}

/** The stroke of a way, its aim over the table. */
export function overTable({ headingRad, stroke }: Meant): Stroke {
  return { ...stroke, aimRad: headingRad + stroke.aimRad };
}

/** Whether the ball of a way falls where it should, whichever way, a legal ball being hit first. */
export function doesGo(
  { laid, first }: Pick<WaysAsked, 'laid' | 'first'>,
  { goal }: Pick<FoundWay, 'goal'>,
  play: TablePlay,
): boolean {
  const outcome = play.balls[laid.names.indexOf(goal.ball)]?.outcome;
  if (outcome?.kind !== 'pocketed' || outcome.pocket !== goal.pocket) return false;
  return isLegalHit({ laid, first }, play);
}
