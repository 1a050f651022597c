import { useComputed } from '@preact/signals';
import type { PlayedShot } from '../../store/player';
import type { Models } from '../app-models';
import { Paged } from '../controls/Paged';
import { DeletedNews } from '../kit/DeletedNews';
import {
  besideWords,
  dayHeading,
  RESULT_WORDS,
  resultsOf,
  resultWords,
  shotLine,
  timeWords,
  toldResult,
  wentWords,
} from './log-words';
import { ResultMark } from './ResultMark';
import '../kit/KitLists.css';

type App = Models<'player' | 'kit' | 'desk' | 'nowMs' | 'router'>;

/** A shot whose misses are thin or full. */
const CUT = { cutRad: 0.5 };

/** All that whoever plays has played, by day, the newest first. */
export function LogList({ app }: { app: App }) {
  const { player, nowMs } = app;
  const shots = useComputed(() => [...player.played.value].reverse()).value;
  const days = useComputed(() => byDay(player.played.value, nowMs())).value;
  const removed = player.lastRemoved.value;
  return (
    <section class="log-list" aria-labelledby="logged">
      <h2 id="logged">Shots</h2>
      <DeletedNews
        words={removed ? `${resultWords(removed)}: deleted.` : ''}
        onPutBack={() => player.restoreShot()}
      />
      {shots.length === 0 && (
        <>
          <p class="place-note">
            None yet. After a shot, tap <b>Log</b> on Shot, or on a way in Choose, then how it went:
          </p>
          <ul class="log-key">
            {resultsOf(CUT).map((result) => (
              <li key={result}>
                <ResultMark result={result} /> {RESULT_WORDS[result]}
              </li>
            ))}
          </ul>
        </>
      )}
      <Paged label="Shots" items={shots}>
        {(shown) =>
          [...byDay(shown, nowMs())].map(([day, rows]) => (
            <section key={day} class="log-day" aria-label={day}>
              <h3>
                {day} <span class="shelf-origin">{wentWords(days.get(day) ?? rows)}</span>
              </h3>
              <ul class="shelf-list">
                {rows.map((shot) => (
                  <LogRow key={shot.id} app={app} shot={shot} />
                ))}
              </ul>
            </section>
          ))
        }
      </Paged>
    </section>
  );
}

/** In the order given. */
function byDay(shots: readonly PlayedShot[], nowMs: number): Map<string, PlayedShot[]> {
  const days = new Map<string, PlayedShot[]>();
  for (const shot of shots) {
    const day = dayHeading(shot.atMs, nowMs);
    const rows = days.get(day);
    if (rows) rows.push(shot);
    else days.set(day, [shot]);
  }
  return days;
}

function LogRow({ app, shot }: { app: App; shot: PlayedShot }) {
  const { kit, desk, router } = app;
  const panel = `shots/${shot.id}`;
  const beside = besideWords(shot);
  return (
    <li>
      <button
        type="button"
        class="shelf-row log-row"
        data-opens={panel}
        onClick={() => router.open(panel)}
      >
        <ResultMark result={toldResult(shot)} />
        <b>{resultWords(shot)}</b> <span class="shelf-origin log-time">{timeWords(shot.atMs)}</span>{' '}
        <span class="shelf-effect">
          {shotLine(shot, desk.preferences.value, kit.current.tables.value.lengthM)}
          {beside !== '' && (
            <>
              . <b>{beside}</b>
            </>
          )}
        </span>
      </button>
    </li>
  );
}
