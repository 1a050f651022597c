import { useSignal } from '@preact/signals';
import type { DrillPosition, LaidDrill } from '../../state/log/kept-drills';
import type { Models } from '../app-models';
import { laidLines } from '../choose/all-ways/laid-words';
import { capitalised, spotLines } from '../choose/table-words';
import { PanelHeader } from '../kit/PanelHeader';
import { DrillTable } from './DrillTable';
import { tallyWords } from './practice-words';
import { ResultMark } from './ResultMark';
import { TrySheet } from './TrySheet';
import { useLaid } from './use-played';

interface Props {
  readonly app: Models<'player' | 'log' | 'shot' | 'desk' | 'router'>;
  readonly drill: DrillPosition;
}

interface LaidProps extends Props {
  readonly laid: LaidDrill;
}

/** A way that was kept: where all lies, how it is struck, and what became of each try. */
export function KeptDrillPanel({ app, drill }: Props) {
  const { kept } = app.log.practice;
  const laid = useLaid(app, drill);
  const { asked } = laid;
  return (
    <>
      <PanelHeader router={app.router} title={drill.name} />
      {asked === null ? (
        <CountSheet app={app} drill={drill} laid={laid} />
      ) : (
        <TrySheet
          app={app}
          table={<DrillTable app={app} drill={drill} laid={laid} />}
          shot={asked.shot}
          isWaiting={false}
          problem={null}
          words={() => <Words app={app} drill={drill} laid={laid} />}
          log={(became) => kept.log(drill, asked, became)}
        />
      )}
    </>
  );
}

/** Of a way that Shot cannot ask nothing is learnt: whether it went is counted. */
function CountSheet({ app, drill, laid }: LaidProps) {
  const { kept } = app.log.practice;
  const { id } = app.player.inPlay.value;
  // Those of another day are not taken back by a stray tap.
  const here = useSignal(0);
  const count = (went: boolean) => {
    if (kept.count(drill, went).ok) here.value += 1;
  };
  const last = drill.drill.tries.filter(({ playerId }) => playerId === id).at(-1);
  return (
    <div class="test-shot">
      <DrillTable app={app} drill={drill} laid={laid} />
      <div class="test-side">
        <div class="test-words">
          <Words app={app} drill={drill} laid={laid} />
        </div>
        <output class="undo-delete">
          {last && here.value > 0 && (
            <>
              <span>Counted: {last.went ? 'went' : 'missed'}.</span>
              <button
                type="button"
                class="button"
                onClick={() => {
                  kept.takeBack(drill.id);
                  here.value -= 1;
                }}
              >
                <span aria-hidden="true">↶</span> Undo
              </button>
            </>
          )}
        </output>
      </div>
      {drill.drill.kind !== 'direct' && (
        <fieldset class="outcome result-buttons is-pair">
          <legend class="visually-hidden">What became of it</legend>
          <button type="button" class="button" onClick={() => count(true)}>
            <ResultMark result="went" /> <span>Went</span>
          </button>
          <button type="button" class="button" onClick={() => count(false)}>
            <ResultMark result="left" /> <span>Missed</span>
          </button>
        </fieldset>
      )}
    </div>
  );
}

function Words({ app, drill, laid: { position, stroke, problem } }: LaidProps) {
  return (
    <>
      {[...laidLines(app, position, stroke), ...spotLines(position)].map((line, at) => (
        <p key={line} class={line.startsWith('▲') ? 'way-warning' : ''}>
          {at === 0 ? <b>{line}</b> : line}
        </p>
      ))}
      {problem && <p>{problem}</p>}
      <p class="place-note">{capitalised(tallyWords(app.log.practice.kept.tally(drill)))}.</p>
    </>
  );
}
