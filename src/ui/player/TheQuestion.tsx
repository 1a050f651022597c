import { useComputed } from '@preact/signals';
import { layOutQuestion } from '../../diagram/question-view';
import { layOutTable } from '../../diagram/table-map';
import { pathThrough } from '../../diagram/table-rails';
import { shapeOf } from '../../state/table-in-play';
import { roughDistance } from '../../units/rough-distance';
import type { Models } from '../app-models';
import { PlainTable, TwoBalls } from '../PlainTable';
import { strayWords } from './learnt-words';
import { forWords } from './player-words';
import './TheQuestion.css';

type App = Models<'player' | 'kit' | 'desk'>;

/** Two feet, as nearly as anybody lays a ball. */
const BEHIND_M = 0.6;

const OF_TEN = Array.from({ length: 11 }, (_, made) => made);

/** The one question: a straight shot, how many of ten, and what that makes of a player. */
export function TheQuestion({ app }: { app: App }) {
  const { player, kit, desk } = app;
  const { distanceUnit } = desk.preferences.value;
  const behind = roughDistance(BEHIND_M, distanceUnit, kit.current.tables.value.lengthM);
  const { madeOf10 } = player.inPlay.value;
  const who = forWords(player.inPlay.value);
  return (
    <section class="the-question" aria-label="The question">
      <p>
        Ball on the centre spot, cue ball {behind} behind it, straight into a corner: medium speed,
        centre of the ball.
      </p>
      <QuestionDrawing app={app} />
      <fieldset class="made-of-ten">
        <legend>
          <b>
            {who === 'you' ? 'How many of ten do you make?' : `How many of ten does ${who} make?`}
          </b>
        </legend>
        {OF_TEN.map((made) => (
          <button
            key={made}
            type="button"
            class="button"
            aria-pressed={made === madeOf10}
            // A second tap takes it back.
            onClick={() => player.answer(made === madeOf10 ? null : made)}
          >
            {made}
          </button>
        ))}
      </fieldset>
      <p role="status" class="question-width">
        {madeOf10 === null
          ? 'A rough answer will do: shots that are logged mend it.'
          : widthWords(app)}
      </p>
    </section>
  );
}

/** What the answer, and whatever else is known, makes of the line. */
function widthWords(app: App): string {
  const { player } = app;
  const known = player.known.value;
  if (known === null || !player.isFresh.value) return player.problem.value ?? 'Working it out…';
  return `For ${forWords(player.inPlay.value)}: ${strayWords(app, known.lineRad)}.`;
}

/** In the drawing's own units. */
const CANVAS = { widthPx: 320, heightPx: 176, textPx: 0 };

/** The shot on the table in play, as seen from above. */
function QuestionDrawing({ app: { kit } }: { app: Models<'kit'> }) {
  const view = useComputed(() => {
    const shape = shapeOf(kit.current.tables.value);
    const map = layOutTable(shape, CANVAS);
    const shot = layOutQuestion(shape, map, kit.kit.value.ballRadiusM);
    return { shape, map, shot };
  });
  const { shape, map, shot } = view.value;
  return (
    <svg
      class="question-drawing"
      role="img"
      aria-label="From above: the cue ball, the ball on the centre spot and a corner pocket on one line"
      viewBox={`0 0 ${CANVAS.widthPx} ${CANVAS.heightPx}`}
    >
      <PlainTable shape={shape} map={map}>
        {shot && <TwoBalls {...shot} way={pathThrough([shot.cueBall, shot.mouth])} />}
      </PlainTable>
    </svg>
  );
}
