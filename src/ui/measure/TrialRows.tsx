import { useRef } from 'preact/hooks';
import type { TrialOffer } from '../../state/measure/measure-model';
import { traitsOf } from '../../state/measure/trial-traits';
import type { LaterModels } from '../app-models';
import { RaisedWarning } from './RaisedWarning';
import { shotName } from './trial-words';
import { FACES } from './trials/faces';
import '../kit/KitLists.css';

/** Every trial: what it teaches, how often it was done, how long it takes. */
export function TrialRows({ app }: { app: LaterModels<'measure' | 'desk' | 'router'> }) {
  const offers = app.measure.offers.value;
  // What teaches most is known only after a while: rows stay where they were first seen.
  const order = useRef(offers.map(({ trial }) => trial)).current;
  const rows = [...offers].sort((a, b) => order.indexOf(a.trial) - order.indexOf(b.trial));
  return (
    <section class="measure-part" aria-labelledby="all-trials">
      <h2 id="all-trials">All trials</h2>
      <ul class="shelf-list">
        {rows.map((offer) => (
          <li key={offer.trial}>
            <TrialRow app={app} offer={offer} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function TrialRow({
  app,
  offer,
}: {
  app: LaterModels<'measure' | 'desk' | 'router'>;
  offer: TrialOffer;
}) {
  const { measure, router, desk } = app;
  const { shot, trial, done } = offer;
  const { teaches, takes } = FACES[trial];
  return (
    <button
      type="button"
      class="shelf-row trial-row"
      disabled={measure.crowded.value !== null}
      onClick={() => router.open(`measure/${measure.begin(shot)}`)}
    >
      <b>{shotName(shot, desk.preferences.value.lengthUnit)}</b>{' '}
      <span class="shelf-effect">Tells {teaches}.</span>{' '}
      <span class="shelf-origin">
        {doneWords(done)}, {takes}
        {traitsOf(trial).isRaised && <RaisedWarning />}
      </span>
      <span class="shelf-arrow" aria-hidden="true">
        ›
      </span>
    </button>
  );
}

function doneWords(done: number): string {
  if (done === 0) return 'not done yet';
  return done === 1 ? 'done once' : `done ${done} times`;
}
