import type { LaidRung } from '../../state/log/practice-model';
import { speedWord } from '../../units/speed-word';
import type { Models } from '../app-models';
import { tellingOf } from '../chance-telling';
import { tenthsWords } from '../choose/pocket-words';
import { capitalised, pocketWords } from '../choose/table-words';
import { tipOf } from '../shot/tip-told';
import { tipInWords } from '../shot/tip-words';
import { reachWords } from './practice-words';
import type { ToldLine } from './ToldLines';
import { crossingWords, placedLines } from './test-words';

type App = Models<'player' | 'log' | 'shot' | 'desk'>;

/** Where the balls of a shot of a ladder are to be put; none where it lies on no table. */
export function rungPlaces({ log }: App, { asked: { position } }: LaidRung): readonly ToldLine[] {
  if (position === null) return [];
  return placedLines({ position: position.balls, goal: position.goal }, log.practice.shape.value);
}

/** What is to be done there. */
export function rungTask(app: App, { asked, rung: { rest } }: LaidRung): readonly ToldLine[] {
  const { position, shot, kit } = asked;
  if (position === null) return [];
  const { pocket } = position.goal;
  const shape = app.log.practice.shape.value;
  const { unit, scale } = tipOf(app);
  const how = `${speedWord(shot.speedMps)}, ${tipInWords(shot, unit, scale)}`;
  const stop = (spot: NonNullable<typeof rest>): ToldLine => [
    'Cue ball to stop',
    `within ${reachWords(spot.radiusM / (2 * kit.ballRadiusM))} of ${crossingWords(spot, shape)}`,
  ];
  return [[capitalised(pocketWords(pocket)), `pocket, ${how}`], ...(rest ? [stop(rest)] : [])];
}

/** "About 7 in 10 for you". */
export function oftenWords(app: App, { rung }: LaidRung): string {
  const telling = tellingOf(app);
  const often = tenthsWords(rung.chance, telling);
  return telling === 'figures' ? `About ${often} for you` : `For most: ${often}`;
}
