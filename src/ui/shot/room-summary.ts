import { aimOffsetM } from '../../diagram/aim-offset';
import type { RoomModel } from '../../state/room-model';
import type { Models } from '../app-models';
import { easeWords, tellingOf } from '../chance-telling';
import { forWords } from '../player/player-words';
import { certaintyWords, chanceForWords, rangeOfTen } from './room-words';

/** How often the shot goes and how sure its aim is, a line each. */
export interface RoomSummary {
  readonly chance: string;
  /** How far that may be off, as it goes on; empty where that is not told. */
  readonly range: string;
  /** The same as the end of a sentence that begins with "It". */
  readonly spoken: string;
  readonly certainty: string;
}

/** Null before the first shot has been assessed, or found not to be. */
export function roomSummary(app: Models<'shot' | 'room' | 'player' | 'desk'>): RoomSummary | null {
  if (app.room.problem.value !== null) {
    const chance = 'room for error';
    return {
      chance,
      range: '',
      spoken: `has no ${chance}`,
      certainty: '⚠ not worked out: see Why',
    };
  }
  const assessed = app.room.room.value;
  if (!assessed) return null;
  if (!assessed.windows) {
    const wants = assessed.wants ?? 'a fuller cut';
    const chance = 'does not get to the pocket';
    return { chance, range: '', spoken: chance, certainty: `${wants}, or a nearer pocket` };
  }
  const certainty = certaintyWords(
    assessed.certainty,
    aimSdM(app),
    app.desk.preferences.value.lengthUnit,
    app.room.isMeasured,
  );
  return { ...goesWords(app, assessed), certainty: certainty + onceKnownWords(app, assessed) };
}

/** What measuring would make of a shot that is hard for want of it alone. */
function onceKnownWords(app: Models<'player'>, { chance, chanceOnKnownKit }: Assessed): string {
  const known = easeWords(chanceOnKnownKit.share);
  if (tellingOf(app) === 'figures' || known === easeWords(chance.share)) return '';
  return ` (${known} once it is)`;
}

type Assessed = NonNullable<RoomModel['room']['value']>;

/** What a button takes beside a chance. */
const LONGEST_NAME = 8;

/** "6 in 10 for you", ", 5 to 7"; of whom nothing is known: "fair for most". */
function goesWords(
  app: Models<'player'>,
  { chance: { share }, range: reach }: Assessed,
): Pick<RoomSummary, 'chance' | 'range' | 'spoken'> {
  if (tellingOf(app) === 'ease') {
    const ease = `${easeWords(share)} for most`;
    return { chance: ease, range: '', spoken: `is ${ease}` };
  }
  const chance = chanceForWords(share, forWords(app.player.inPlay.value, LONGEST_NAME));
  const ends = rangeOfTen(reach);
  // Of how many is said anew where the chance itself is not told of ten.
  const range = ends ? `, ${ends.join(' to ')}${/ in 10 /.test(chance) ? '' : ' in 10'}` : '';
  return { chance, range, spoken: `goes ${chance}${range}` };
}

/** One standard deviation of the aim, on the leading ball, m. */
export function aimSdM({ room, shot, desk }: Models<'shot' | 'room' | 'desk'>): number {
  const last = shot.lastAnswer.value;
  const sdRad = room.room.value?.certainty.aimSdRad;
  if (!last || sdRad === undefined) return 0;
  const offsetAt = (aimRad: number) =>
    aimOffsetM(last.shot, last.kit.ballRadiusM, desk.preferences.value.lead, aimRad);
  return offsetAt(last.answer.aimRad + sdRad) - offsetAt(last.answer.aimRad);
}
