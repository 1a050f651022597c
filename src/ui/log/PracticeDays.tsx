import { layOutHardness } from '../../diagram/practice-bar';
import type { Theme } from '../../engine/player/drill-shot';
import { isMade, type LadderTry } from '../../state/log/ladders';
import type { Models } from '../app-models';
import { dayHeading } from './log-words';
import { roomWords, THEME_WORDS } from './practice-words';

const THEMES: readonly Theme[] = ['line', 'speed', 'side'];
/** As many as a chart has room for. */
const MOST_DAYS = 8;

interface Props {
  readonly app: Models<'log' | 'nowMs'>;
}

/** Day by day how hard the shots of each ladder were, and how many of them were made. */
export function PracticeDays({ app: { log, nowMs } }: Props) {
  const ladders = log.practice.ladders.value;
  const begun = THEMES.filter((theme) => ladders[theme].tries.length > 0);
  if (begun.length === 0) return null;
  return (
    <>
      <h3>Day by day</h3>
      <p class="place-note">
        How far the line, or the speed, could be off in the shots played. Longer bar: less room.
      </p>
      <ul class="practice-bars">
        {begun.flatMap((theme) =>
          byDay(ladders[theme].tries, nowMs()).map(([day, tries]) => (
            <DayRow key={`${theme} ${day}`} theme={theme} day={day} tries={tries} />
          )),
        )}
      </ul>
    </>
  );
}

type Day = readonly [heading: string, tries: LadderTry[]];

/** The newest first. */
function byDay(tries: readonly LadderTry[], nowMs: number): readonly Day[] {
  const days = new Map<string, LadderTry[]>();
  for (const one of tries) {
    const day = dayHeading(one.atMs, nowMs);
    days.set(day, [...(days.get(day) ?? []), one]);
  }
  return [...days].reverse().slice(0, MOST_DAYS);
}

interface RowProps {
  readonly theme: Theme;
  readonly day: string;
  readonly tries: readonly LadderTry[];
}

function DayRow({ theme, day, tries }: RowProps) {
  const rooms = tries.map(({ drill }) => drill.rung.room).sort((one, other) => one - other);
  const room = rooms[Math.floor(rooms.length / 2)] ?? 0;
  return (
    <li>
      <p>
        <b>
          {THEME_WORDS[theme][0]}, {day}
        </b>{' '}
        {tries.filter(isMade).length} of {tries.length} made{' '}
        <span class="shelf-origin">{roomWords(theme, room)}</span>
      </p>
      <svg class="limit-bar" aria-hidden="true">
        <rect class="limit-track" width="100%" height="10" />
        <rect class="limit-gain" width={`${100 * layOutHardness(theme, room)}%`} height="10" />
      </svg>
    </li>
  );
}
