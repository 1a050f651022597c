import { useComputed, useSignal } from '@preact/signals';
import { railPoint } from '../../diagram/rail-point';
import type { Result } from '../../engine/player/shot-line';
import type { DrillPosition, LaidDrill } from '../../state/log/kept-drills';
import { speedWord } from '../../units/speed-word';
import type { Models } from '../app-models';
import { fallWords } from '../choose/all-ways/kind-words';
import { railPointWords } from '../choose/all-ways/rail-words';
import { capitalised } from '../choose/table-words';
import { RAISED_LINE, strokeWords } from '../choose/way-words';
import { PanelHeader } from '../kit/PanelHeader';
import { tipOf } from '../shot/tip-told';
import { loggedShot } from './AfterShot';
import { DrillTable } from './DrillTable';
import { kindOf } from './KeptDrills';
import { LoggedNews } from './LoggedNews';
import { tallyLine } from './practice-words';
import { ResultButtons } from './ResultButtons';
import { ResultMark } from './ResultMark';
import './LevelTest.css';

interface Props {
  readonly app: Models<'player' | 'log' | 'shot' | 'desk' | 'router'>;
  readonly drill: DrillPosition;
}

/** A way that was kept: where all lies, how it is struck, and what became of each try. */
export function KeptDrillPanel({ app, drill }: Props) {
  const { player, log, router } = app;
  const { kept } = log.practice;
  const laid = useComputed(() => kept.lay(kept.find(drill.id) ?? drill)).value;
  const isScratched = useSignal(false);
  const loggedId = useSignal<string | null>(null);
  const problem = useSignal('');
  const logged = loggedShot(player, loggedId.value);
  const answer = (result: Result) => {
    if (laid.asked === null) return;
    const became = { result, scratched: isScratched.value, cueBall: null, asMeant: true };
    const made = kept.log(drill, laid.asked, became);
    loggedId.value = made.ok ? made.id : null;
    problem.value = made.ok ? '' : made.problem;
    if (made.ok) isScratched.value = false;
  };
  return (
    <>
      <PanelHeader router={router} title={drill.name} />
      <div class="test-shot">
        <DrillTable app={app} drill={drill} laid={laid} />
        <div class="test-side">
          <Words app={app} drill={drill} laid={laid} />
          {drill.drill.kind === 'direct' ? (
            <LoggedNews app={app} logged={logged} problem={problem.value} />
          ) : (
            <Counted app={app} drill={drill} />
          )}
        </div>
        {drill.drill.kind === 'direct' ? (
          <ResultButtons
            shot={laid.asked?.shot ?? { ...drill.drill.stroke, distanceM: 1, cutRad: 1 }}
            result={null}
            isScratched={isScratched.value}
            isWaiting={laid.asked === null}
            onResult={answer}
            onScratched={(scratched) => (isScratched.value = scratched)}
          />
        ) : (
          <WentOrMissed onSaid={(went) => kept.count(drill, went)} />
        )}
      </div>
    </>
  );
}

/** The last try of a way that is only counted, and a tap to take it back. */
function Counted({ app, drill }: Pick<Props, 'app' | 'drill'>) {
  const { id } = app.player.inPlay.value;
  const last = drill.drill.tries.filter(({ playerId }) => playerId === id).at(-1);
  return (
    <output class="undo-delete">
      {last && (
        <>
          <span>Counted: {last.went ? 'went' : 'missed'}.</span>
          <button
            type="button"
            class="button"
            onClick={() => app.log.practice.kept.takeBack(drill.id)}
          >
            <span aria-hidden="true">↶</span> Undo
          </button>
        </>
      )}
    </output>
  );
}

/** Nothing is learnt of such a way but whether it went. */
function WentOrMissed({ onSaid }: { onSaid(went: boolean): void }) {
  return (
    <div class="outcome">
      <fieldset class="result-buttons">
        <legend class="visually-hidden">What became of it</legend>
        <button type="button" class="button" onClick={() => onSaid(true)}>
          <ResultMark result="went" /> <span>Went</span>
        </button>
        <button type="button" class="button" onClick={() => onSaid(false)}>
          <ResultMark result="left" /> <span>Missed</span>
        </button>
      </fieldset>
    </div>
  );
}

interface WordsProps extends Props {
  readonly laid: LaidDrill;
}

function Words({ app, drill, laid: { position, stroke, problem } }: WordsProps) {
  const { ball, pocket } = drill.goal;
  const cueBall = position.balls.find(({ name }) => name === 'cue');
  const isDirect = drill.drill.kind === 'direct';
  const shape = app.log.practice.shape.value;
  const struck = strokeWords({ option: { stroke } }, app.shot.speedScale.value, tipOf(app));
  return (
    <div class="test-words">
      {ball !== null && pocket !== null && (
        <p>
          <b>{fallWords({ ball, pocket })}</b>, {kindOf(drill)}.
        </p>
      )}
      {cueBall && !isDirect && (
        <p>Point the cue at {railPointWords(railPoint(cueBall, stroke.aimRad, shape))}.</p>
      )}
      <p>
        {capitalised(speedWord(stroke.speedMps))}: {struck}.
      </p>
      {stroke.elevationRad > RAISED_RAD && <p class="way-warning">▲ {RAISED_LINE}</p>}
      {problem && <p class="place-problem">{problem}</p>}
      <p class="place-note">
        {tallyLine('tries', app.log.practice.kept.tally(drill)).replace('Tries, ', 'So far ')}.
      </p>
    </div>
  );
}

/** From so much on a cue is called raised. */
const RAISED_RAD = 0.175;
