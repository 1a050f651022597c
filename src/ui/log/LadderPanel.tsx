import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Theme } from '../../engine/player/drill-shot';
import type { Stopped } from '../../engine/player/known-player';
import type { Result } from '../../engine/player/shot-line';
import { isMade, SET_OF } from '../../state/log/ladders';
import type { LaidRung } from '../../state/log/practice-model';
import { speedWord } from '../../units/speed-word';
import type { Models } from '../app-models';
import { tellingOf } from '../chance-telling';
import { tenthsWords } from '../choose/pocket-words';
import { capitalised, pocketWords } from '../choose/table-words';
import { PanelHeader } from '../kit/PanelHeader';
import { tipOf } from '../shot/tip-told';
import { tipInWords } from '../shot/tip-words';
import { loggedShot } from './AfterShot';
import { LoggedNews } from './LoggedNews';
import { PlacedBalls } from './PlacedBalls';
import { reachWords, STOP_BUTTONS, setWords, THEME_WORDS } from './practice-words';
import { ResultButtons } from './ResultButtons';
import { TestTable } from './TestTable';
import { crossingWords } from './test-words';
import './LevelTest.css';

type App = Models<'player' | 'log' | 'shot' | 'desk' | 'router'>;

interface Props {
  readonly app: App;
  readonly theme: Theme;
}

/** One shot of a ladder: where the balls lie, and what became of each try. */
export function LadderPanel({ app, theme }: Props) {
  const { player, log, router } = app;
  const { practice } = log;
  useEffect(() => practice.play(theme), [practice, theme]);
  const isScratched = useSignal(false);
  const loggedId = useSignal<string | null>(null);
  const problem = useSignal('');
  const next = practice.next.value;
  // While the next is worked out the last one stays, greyed: buttons keep their place.
  const last = useRef<LaidRung | null>(null);
  if (next !== null) last.current = next;
  const shown = next ?? last.current;
  const ladder = practice.ladders.value[theme];
  const answer = (result: Result, stopped: Stopped | null) => {
    const became = { result, scratched: isScratched.value, cueBall: null, asMeant: true };
    const logged = practice.answer(became, stopped);
    loggedId.value = logged.ok ? logged.id : null;
    problem.value = logged.ok ? '' : logged.problem;
    if (logged.ok) isScratched.value = false;
  };
  const logged = loggedShot(player, loggedId.value);
  const isOver = logged !== null && ladder.set.length === 0 && ladder.lastSet.length > 0;
  const title = `${THEME_WORDS[theme][0]}: try ${ladder.set.length + 1} of ${SET_OF}`;
  return (
    <>
      <PanelHeader router={router} title={title} />
      {shown === null ? (
        <p role="status">{practice.problem.value ?? 'Working out the first shot…'}</p>
      ) : (
        <div class={next === null ? 'test-shot is-stale' : 'test-shot'}>
          <Drawn app={app} rung={shown} />
          <div class="test-side">
            <div class="test-words" role="status">
              {isOver && (
                <p class="place-note">{setWords(ladder, ladder.lastSet.filter(isMade).length)}</p>
              )}
              {next === null ? (
                <p>Working out the next shot…</p>
              ) : (
                <RungWords app={app} rung={next} />
              )}
            </div>
            <LoggedNews
              app={app}
              logged={logged}
              problem={problem.value || (practice.problem.value ?? '')}
            />
          </div>
          <ResultButtons
            shot={shown.asked.shot}
            result={null}
            isScratched={isScratched.value}
            isWaiting={next === null}
            {...(shown.rung.rest && { stops: STOP_BUTTONS })}
            onResult={answer}
            onScratched={(scratched) => (isScratched.value = scratched)}
          />
        </div>
      )}
    </>
  );
}

interface RungProps {
  readonly app: App;
  readonly rung: LaidRung;
}

function Drawn({ app, rung: { asked, rung } }: RungProps) {
  const { position, kit } = asked;
  if (position === null) return null;
  const { balls, goal } = position;
  return <TestTable app={app} shot={{ position: balls, goal, kit }} rest={rung.rest} />;
}

function RungWords({ app, rung: { asked, rung } }: RungProps) {
  const { position, shot, kit } = asked;
  if (position === null) return null;
  const { balls, goal } = position;
  const shape = app.log.practice.shape.value;
  const { unit, scale } = tipOf(app);
  const telling = tellingOf(app);
  const { rest, chance } = rung;
  const often = tenthsWords(chance, telling);
  return (
    <>
      <PlacedBalls shape={shape} position={balls} goal={goal} />
      <p>
        <b>{capitalised(pocketWords(goal.pocket))}</b> pocket, {speedWord(shot.speedMps)},{' '}
        {tipInWords(shot, unit, scale)}.
      </p>
      {rest && (
        <p>
          Cue ball to stop within {reachWords(rest.radiusM / (2 * kit.ballRadiusM))} of{' '}
          {crossingWords(rest, shape)}.
        </p>
      )}
      <p class="place-note">
        {telling === 'figures' ? `About ${often} for you.` : `For most: ${often}.`}
      </p>
    </>
  );
}
