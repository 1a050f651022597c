import {
  isSafety,
  type ShownSafety,
  type ShownWay,
  struckAs,
} from '../../../state/choose/all-ways/shown-way';
import type { Models } from '../../app-models';
import { tellingOf } from '../../chance-telling';
import { forWords } from '../../player/player-words';
import { tipOf } from '../../shot/tip-told';
import { fanLine } from '../fan-words';
import { tenthsWords } from '../pocket-words';
import { capitalised } from '../table-words';
import {
  isRaisedCue,
  leadLabel,
  leadShare,
  outcomeWords,
  RAISED_LINE,
  strokeWords,
  wayName,
} from '../way-words';
import { aimedAt } from './aim-line';
import { playWords } from './kind-words';
import { railPointWords } from './rail-words';
import { STOPS_LEAD, stopLines } from './safety-stops';
import { isByLuck, LUCK_LINE, worthSentence } from './worth-words';

/** All there is to know of a way, to be heard: what goes where, how often, how, and what becomes of it. */
export function waySentence(
  app: Models<'shot' | 'choose' | 'player' | 'desk'>,
  way: ShownWay,
): string {
  if (isSafety(way)) return safetySentence(app, way);
  const { told, fan } = way;
  const { choose } = app;
  const telling = tellingOf(app);
  const goes = `${leadLabel(told, telling)}: ${tenthsWords(leadShare(told), telling)}`;
  const whom = telling === 'figures' ? ` for ${forWords(app.player.inPlay.value)}` : '';
  const meant = fan.find(({ hit }) => hit === 'true');
  const rest = meant ? fanLine(meant, choose.shape.value).replace(/^true: /, '') : '';
  const point = told.shot === null ? aimedAt(choose, told) : null;
  return spoken([
    playWords(told),
    `${capitalised(goes)}${whom}`,
    ...outcomeWords(told, telling).map(capitalised),
    isByLuck(told) ? capitalised(LUCK_LINE) : '',
    worthSentence(told, telling),
    ...(point ? [`Point the cue at ${railPointWords(point)}`] : []),
    `${capitalised(wayName(told))}: ${strokeWords(told, app.shot.speedScale.value, tipOf(app))}`,
    ...(rest === '' ? [] : [`Then the cue ball, in diamonds: ${rest}`]),
    ...(isRaisedCue(told) ? [RAISED_LINE.replace(/\.$/, '')] : []),
  ]);
}

function safetySentence(
  app: Models<'shot' | 'choose' | 'player' | 'desk'>,
  way: ShownSafety,
): string {
  const { choose, shot } = app;
  const { told } = way;
  const played = struckAs(told);
  const point = aimedAt(choose, told);
  const stops = stopLines(way, choose.open.value.balls, choose.shape.value);
  return spoken([
    playWords(told),
    worthSentence(told, tellingOf(app)),
    ...(point ? [`Point the cue at ${railPointWords(point)}`] : []),
    `${capitalised(wayName(played))}: ${strokeWords(played, shot.speedScale.value, tipOf(app))}`,
    STOPS_LEAD,
    ...stops,
    ...(isRaisedCue(played) ? [RAISED_LINE.replace(/\.$/, '')] : []),
  ]);
}

function spoken(parts: readonly string[]): string {
  return parts
    .filter((part) => part !== '')
    .map((part) => `${part}.`)
    .join(' ');
}
