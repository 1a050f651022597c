import { useEffect, useRef } from 'preact/hooks';
import type { RankedWay } from '../../engine/options/ranked-way';
import type { AppModels } from '../app-models';
import { FAN_LEAD, fanLine } from './fan-words';
import { percentWords } from './table-words';
import { RAISED_LINE, strokeWords, wayLine, wayName } from './way-words';

interface Props {
  readonly app: AppModels;
  readonly way: RankedWay;
}

/** Beside the table: how often the way goes, how it is struck, and why it is no easier. */
export function WayHead({ app, way }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const name = wayName(way.way);
  useEffect(() => {
    if (name !== '') heading.current?.focus({ preventScroll: true });
  }, [name]);
  const { isStale } = app.choose.comparison.value;
  return (
    <div class={isStale ? 'way-head is-stale' : 'way-head'}>
      <h2 id="chosen-way" tabIndex={-1} ref={heading}>
        <span class="way-label">goes</span> <b class="way-figure">{percentWords(way.chance)}</b>{' '}
        <span>{name}</span>
      </h2>
      <p class="way-stroke">{strokeWords(way, app.shot.speedScale.value)}</p>
      <p class="way-reason">{wayLine(way)}.</p>
      {isStale && <p class="way-reason">The position has changed since.</p>}
    </div>
  );
}

/** Under the table: where the cue ball ends, and the way to the aim. */
export function WayFan({ app: { choose, router }, way }: Props) {
  const plays = choose.fan.value;
  return (
    <section class="way-fan" aria-labelledby="chosen-way">
      {way.way.isRaised && <p class="way-warning">▲ {RAISED_LINE}</p>}
      <p class="way-reason">{plays.length === 0 ? 'Working out how it plays…' : `${FAN_LEAD}:`}</p>
      <ul class="fan-lines">
        {plays.map((play) => (
          <li key={play.hit}>{fanLine(play, choose.shape.value)}</li>
        ))}
      </ul>
      <div class="chosen-foot">
        <button type="button" class="button" onClick={() => choose.choose(null)}>
          <span aria-hidden="true">‹</span> All ways
        </button>
        <button
          type="button"
          class="button button-primary"
          onClick={() => {
            if (choose.sendToShot()) router.goTo('shot');
          }}
        >
          Aim it
        </button>
      </div>
    </section>
  );
}
