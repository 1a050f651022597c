import { type ShownSafety, struckAs } from '../../../state/choose/all-ways/shown-way';
import type { Models } from '../../app-models';
import { tellingOf } from '../../chance-telling';
import { tipOf } from '../../shot/tip-told';
import { FAN_LETTERS } from '../fan-words';
import { RaisedWay } from '../RaisedWay';
import { capitalised } from '../table-words';
import { riskWords, strokeWords, wayName } from '../way-words';
import { STOPS_LEAD, safetySpreadLine, stopLines } from './safety-stops';
import { WhyWorth, WorthFigure } from './WhyWorth';

interface Props {
  readonly app: Models<'shot' | 'choose' | 'player' | 'desk'>;
  readonly way: ShownSafety;
}

/** How a safety is struck, what it leaves, and where both balls stop. */
export function OpenedSafety({ app, way }: Props) {
  const { told } = way;
  const { choose } = app;
  const played = struckAs(told);
  const telling = tellingOf(app);
  const [scratch] = riskWords(told.worth.scratch, telling, 'scratch', 'a scratch');
  return (
    <>
      <p class="way-played">
        <WorthFigure app={app} told={told} /> <span class="way-called">{wayName(played)}</span>
      </p>
      <p class="way-stroke">{strokeWords(played, app.shot.speedScale.value, tipOf(app))}</p>
      {scratch && <p class="way-reason">{capitalised(scratch)}.</p>}
      <WhyWorth app={app} told={told} />
      {choose.all.isMoved.value && <p class="way-reason">The position has changed since.</p>}
      <RaisedWay way={played} />
      <p class="way-reason">{STOPS_LEAD}:</p>
      <ul class="fan-lines">
        {stopLines(way, choose.open.value.balls, choose.shape.value).map((line, at) => (
          <li key={line}>
            {at === 0 && <b>{FAN_LETTERS.true} </b>}
            {line}
          </li>
        ))}
      </ul>
      <p class="way-reason">{safetySpreadLine(way)}</p>
    </>
  );
}
