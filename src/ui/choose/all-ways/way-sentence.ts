import type { ShownWay } from '../../../state/choose/all-ways/look-for-ways';
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
import { fallWords, kindWords } from './kind-words';
import { railPointWords } from './rail-words';

/** All there is to know of a way, to be heard: what goes where, how often, how, and what becomes of it. */
export function waySentence(
  app: Models<'shot' | 'choose' | 'player' | 'desk'>,
  { told, fan }: ShownWay,
): string {
  const { choose } = app;
  const telling = tellingOf(app);
  const goes = `${leadLabel(told, telling)}: ${tenthsWords(leadShare(told), telling)}`;
  const whom = telling === 'figures' ? ` for ${forWords(app.player.inPlay.value)}` : '';
  const meant = fan.find(({ hit }) => hit === 'true');
  const rest = meant ? fanLine(meant, choose.shape.value).replace(/^true: /, '') : '';
  const point = told.shot === null ? aimedAt(choose, told) : null;
  return [
    `${fallWords(told.goal)}, ${kindWords(told.goal, told.doubleKiss)}`,
    `${capitalised(goes)}${whom}`,
    ...outcomeWords(told, telling).map(capitalised),
    ...(point ? [`Point the cue at ${railPointWords(point)}`] : []),
    `${capitalised(wayName(told))}: ${strokeWords(told, app.shot.speedScale.value, tipOf(app))}`,
    ...(rest === '' ? [] : [`Then the cue ball, in diamonds: ${rest}`]),
    ...(isRaisedCue(told) ? [RAISED_LINE.replace(/\.$/, '')] : []),
  ]
    .map((part) => `${part}.`)
    .join(' ');
}
