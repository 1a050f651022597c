import { railPoint } from '../../diagram/rail-point';
import type { DrillPosition, LaidDrill } from '../../state/log/kept-drills';
import type { SavedPosition } from '../../store/saved-position';
import { speedWord } from '../../units/speed-word';
import type { Models } from '../app-models';
import { fallWords, kindWords } from '../choose/all-ways/kind-words';
import { railPointWords } from '../choose/all-ways/rail-words';
import { ballLabel, capitalised, spotWords } from '../choose/table-words';
import { strokeWords } from '../choose/way-words';
import { tipOf } from '../shot/tip-told';

/** "bank off the left rail". */
export function kindOf({ goal, drill: { kind, via } }: DrillPosition): string {
  return kindWords({ kind, ball: goal.ball ?? 0, via }, false);
}

/** What a kept way is, how it is struck, and where the balls are to lie; a sentence each. */
export function drillLines(
  app: Models<'log' | 'shot' | 'desk'>,
  drill: DrillPosition,
  { position, stroke }: LaidDrill,
): readonly string[] {
  const { ball, pocket } = drill.goal;
  const { balls } = position;
  const cueBall = balls.find(({ name }) => name === 'cue');
  const { shape } = app.log.practice;
  const struck = strokeWords({ option: { stroke } }, app.shot.speedScale.value, tipOf(app));
  return [
    ...(ball !== null && pocket !== null
      ? [`${fallWords({ ball, pocket })}, ${kindOf(drill)}.`]
      : []),
    ...(cueBall && drill.drill.kind !== 'direct'
      ? [`Point the cue at ${railPointWords(railPoint(cueBall, stroke.aimRad, shape.value))}.`]
      : []),
    `${capitalised(speedWord(stroke.speedMps))}: ${struck}.`,
    ...spotLines(position),
  ];
}

/** Where each ball is to lie: "Cue ball: 2.0 diamonds along, 1.5 from the left." */
export function spotLines({ balls, ...bed }: Laid): readonly string[] {
  return balls.map((ball) => `${capitalised(ballLabel(ball.name))}: ${spotWords(ball, bed)}.`);
}

type Laid = Pick<SavedPosition, 'balls' | 'lengthM' | 'widthM'>;
