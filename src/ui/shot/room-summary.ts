import { aimOffsetM } from '../../diagram/aim-offset';
import type { Models } from '../app-models';
import { certaintyWords, chanceWords } from './room-words';

/** How often the shot goes and how sure its aim is, a line each. */
export interface RoomSummary {
  readonly chance: string;
  readonly certainty: string;
}

/** Null before the first shot has been assessed, or found not to be. */
export function roomSummary(app: Models<'shot' | 'room' | 'desk'>): RoomSummary | null {
  if (app.room.problem.value !== null) {
    return { chance: 'room for error', certainty: '⚠ not worked out: see Why' };
  }
  const assessed = app.room.room.value;
  if (!assessed) return null;
  if (!assessed.windows) {
    const wants = assessed.wants ?? 'a fuller cut';
    return { chance: 'does not get to the pocket', certainty: `${wants}, or a nearer pocket` };
  }
  return {
    chance: `goes ${chanceWords(assessed.chance.share)}`,
    certainty: certaintyWords(
      assessed.certainty,
      aimSdM(app),
      app.desk.preferences.value.lengthUnit,
      app.room.isMeasured,
    ),
  };
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
