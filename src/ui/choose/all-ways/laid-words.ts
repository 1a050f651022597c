import { type RailPoint, railPoint } from '../../../diagram/rail-point';
import type { Stroke } from '../../../engine/stroke/stroke';
import type { KeptDrill, SavedPosition } from '../../../store/saved-position';
import { speedWord } from '../../../units/speed-word';
import type { Models } from '../../app-models';
import { tipOf } from '../../shot/tip-told';
import { capitalised } from '../table-words';
import { raisedLines, strokeWords } from '../way-words';
import { fallWords, kindWords } from './kind-words';
import { railPointWords } from './rail-words';

type App = Models<'shot' | 'desk'>;

/** Where the cue is pointed: "Point the cue at the left rail’s nose, 2⅜ diamonds from the far left corner." */
export function pointLine(point: RailPoint): string {
  return `Point the cue at ${railPointWords(point)}.`;
}

/** How it is struck: "Firm: ¼ tip right, cue 3° up, 2.1 m/s." */
export function struckLine(app: App, stroke: Omit<Stroke, 'aimRad'>): string {
  const struck = strokeWords({ option: { stroke } }, app.shot.speedScale.value, tipOf(app));
  return `${capitalised(speedWord(stroke.speedMps))}: ${struck}.`;
}

/** What kind of way is kept: "bank off the left rail". */
export function kindOf({ goal, drill }: WithDrill): string {
  return kindWords({ ...drill, ball: goal.ball ?? 0 }, false);
}

interface WithDrill extends Pick<SavedPosition, 'goal'> {
  readonly drill: Pick<KeptDrill, 'kind' | 'via'>;
}

/** A way that is kept with its position, in sentences: what it does, and how it is laid; none where none is. */
export function laidLines(
  app: App,
  position: SavedPosition,
  stroke = position.drill?.stroke,
): readonly string[] {
  const { balls, goal, drill } = position;
  const { ball, pocket } = goal;
  if (!drill || !stroke) return [];
  const cueBall = balls.find(({ name }) => name === 'cue');
  return [
    ...(ball !== null && pocket !== null
      ? [`${fallWords({ ball, pocket })}, ${kindOf({ goal, drill })}.`]
      : []),
    ...(cueBall && drill.kind !== 'direct'
      ? [pointLine(railPoint(cueBall, stroke.aimRad, position))]
      : []),
    struckLine(app, stroke),
    ...raisedLines(stroke),
  ];
}
