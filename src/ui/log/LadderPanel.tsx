import { useEffect } from 'preact/hooks';
import type { Theme } from '../../engine/player/drill-shot';
import { isMade, SET_OF } from '../../state/log/ladders';
import type { LaidRung } from '../../state/log/practice-model';
import type { Models } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { STOP_BUTTONS, setWords, THEME_WORDS } from './practice-words';
import { oftenWords, rungPlaces, rungTask } from './rung-words';
import { TestTable } from './TestTable';
import { ToldLines } from './ToldLines';
import { TrySheet } from './TrySheet';
import { useLast } from './use-last';

type App = Models<'player' | 'log' | 'shot' | 'desk' | 'router'>;

interface Props {
  readonly app: App;
  readonly theme: Theme;
}

/** One shot of a ladder: where the balls lie, and what became of each try. */
export function LadderPanel({ app, theme }: Props) {
  const { practice } = app.log;
  useEffect(() => practice.play(theme), [practice, theme]);
  const next = practice.next.value;
  const shown = useLast(next);
  const { set, lastSet, lastStep } = practice.ladders.value[theme];
  const made = set.length === 0 ? '' : `, ${set.filter(isMade).length} made`;
  const title = `${THEME_WORDS[theme][0]}: try ${set.length + 1} of ${SET_OF}${made}`;
  const at = shown?.asked.position;
  return (
    <>
      <PanelHeader router={app.router} title={title}>
        <button
          type="button"
          class="button"
          disabled={next === null}
          onClick={() => app.router.visit('kit', `drill/${theme}`)}
        >
          Card
        </button>
      </PanelHeader>
      {!shown || !at ? (
        <p role="status">{practice.problem.value ?? 'Working out the first shot…'}</p>
      ) : (
        <TrySheet
          app={app}
          table={
            <TestTable
              app={app}
              shot={{ position: at.balls, goal: at.goal, kit: shown.asked.kit }}
              rest={shown.rung.rest}
            />
          }
          shot={shown.asked.shot}
          isWaiting={next === null}
          problem={practice.problem.value}
          {...(shown.rung.rest && { stops: STOP_BUTTONS })}
          words={(logged) => (
            <>
              {logged && set.length === 0 && lastSet.length > 0 && (
                <p>{setWords(lastSet.filter(isMade).length, lastSet.length, lastStep)}</p>
              )}
              {next ? <RungWords app={app} rung={next} /> : <p>Working out the next shot…</p>}
            </>
          )}
          log={practice.answer}
        />
      )}
    </>
  );
}

function RungWords({ app, rung }: { app: App; rung: LaidRung }) {
  return (
    <>
      <ToldLines lines={[...rungPlaces(app, rung), ...rungTask(app, rung)]} />
      <p class="place-note">{oftenWords(app, rung)}.</p>
    </>
  );
}
