import { useEffect, useRef } from 'preact/hooks';
import type { RankedWay } from '../../engine/plan/ranked-way';
import type { Models } from '../app-models';
import { tellingOf } from '../chance-telling';
import { forWords } from '../player/player-words';
import { tipOf } from '../shot/tip-told';
import { rangeLine } from './chance-words';
import { FanLines } from './FanLines';
import { FAN_LEAD, SPREAD_LINE } from './fan-words';
import { KeepDrill } from './KeepDrill';
import { PictureOfWay } from './PictureOfWay';
import { tenthsWords } from './pocket-words';
import { RaisedWay } from './RaisedWay';
import { ShareWay } from './ShareWay';
import { pocketWords } from './table-words';
import { WayFigure } from './WayFigure';
import { keptShare, leadLabel, leadShare, strokeWords, wayLine, wayName } from './way-words';

interface Props {
  readonly app: Models<'shot' | 'choose' | 'player' | 'desk' | 'router' | 'cards'>;
  readonly way: RankedWay;
}

/** Beside the table: how often the way goes, how it is struck, and why it is no easier. */
export function WayHead({ app, way }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const name = wayName(way);
  useEffect(() => {
    if (name !== '') heading.current?.focus({ preventScroll: true });
  }, [name]);
  const { isChanceStale, toLog } = app.choose;
  const isStale = toLog.value === null;
  const isOld = isStale || isChanceStale.value;
  const telling = tellingOf(app);
  const line = wayLine(way, telling);
  return (
    <div class={isStale ? 'way-head is-stale' : 'way-head'}>
      <h2 id="chosen-way" tabIndex={-1} ref={heading}>
        <WayFigure label={leadLabel(way, telling)} isOld={isOld}>
          {tenthsWords(leadShare(way), telling)}
        </WayFigure>{' '}
        <span class="way-called">{name}</span>
      </h2>
      <p class="way-stroke">{strokeWords(way, app.shot.speedScale.value, tipOf(app))}</p>
      {line && <p class="way-reason">{line}.</p>}
      <RangeLine app={app} kept={keptShare(way)} />
      {isOld && (
        <p class="way-reason">
          {isStale
            ? 'The position has changed since.'
            : `More is known of ${forWords(app.player.inPlay.value)}: chance worked out anew…`}
        </p>
      )}
    </div>
  );
}

/** For whom the chance is told, and how far it may be off for what is not known of them. */
function RangeLine({ app, kept }: { app: Models<'choose' | 'player'>; kept: number }) {
  const range = app.choose.range.value;
  if (range === null || tellingOf(app) === 'ease') return null;
  const lead = { low: kept * range.low, high: kept * range.high };
  return <p class="way-reason">{rangeLine(lead, forWords(app.player.inPlay.value))}</p>;
}

/** Under the table: where the cue ball ends, and the way to the aim. */
export function WayFan({ app, way }: Props) {
  const { choose, router } = app;
  const plays = choose.fan.value;
  const isStale = choose.toLog.value === null;
  return (
    <section class="way-fan" aria-labelledby="chosen-way">
      <RaisedWay way={way} />
      <p class="way-reason">{plays.length === 0 ? 'Working out how it plays…' : `${FAN_LEAD}:`}</p>
      <FanLines choose={choose} plays={plays} ball={choose.open.value.goal.ball ?? 0} />
      {way.rest.places.length > 0 && <p class="way-reason">{SPREAD_LINE}</p>}
      <PictureOfWay app={app} isOff={isStale} />
      <div class="sheet-foot">
        <button type="button" class="button" onClick={() => choose.choose(null)}>
          <span aria-hidden="true">‹</span> All ways
        </button>
        <button
          type="button"
          class={isStale ? 'button' : 'button button-primary'}
          disabled={isStale}
          onClick={() => {
            if (choose.sendToShot()) router.goTo('shot');
          }}
        >
          Aim it
        </button>
        <button
          type="button"
          class="button"
          aria-label="Log how it went"
          data-opens="ways/after"
          disabled={isStale}
          onClick={() => router.open('ways/after')}
        >
          Log
        </button>
        <ShareWay router={router} isOff={isStale} />
        <KeepDrill app={app} name={keptName(app, way)} />
        {isStale && (
          <button type="button" class="button button-primary" onClick={() => choose.compare()}>
            Compare again
          </button>
        )}
      </div>
    </section>
  );
}

/** "3 far right: outside, soft, roll". */
function keptName({ choose }: Props['app'], way: RankedWay): string {
  const { ball, pocket } = choose.open.value.goal;
  return `${ball} ${pocket === null ? '' : pocketWords(pocket)}: ${wayName(way)}`;
}
