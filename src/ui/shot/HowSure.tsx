import type { Certainty } from '../../engine/room/certainty';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import { spreadFigure } from '../../units/plus-minus';
import { QUANTITY_WORDS } from '../../words/quantity-words';
import type { Models } from '../app-models';
import { aimSdM } from './room-summary';
import { WhyRow } from './WhyRow';

/** Shares below this, rad, would be told as nothing. */
const LEAST_TOLD_RAD = 0.005 * (Math.PI / 180);

/** What is not known of the kit, and what each of it leaves open of the aim. */
export function HowSure({
  app,
  certainty,
}: {
  app: Models<'shot' | 'room' | 'desk'>;
  certainty: Certainty;
}) {
  const { lengthUnit } = app.desk.preferences.value;
  const { aimSdRad, contributions, unsolved } = certainty;
  const told = contributions.filter((share) => share.aimSdRad >= LEAST_TOLD_RAD);
  return (
    <>
      <dl class="why-list is-paired">
        <WhyRow term="in all">
          <b>{plusMinus(aimSdRad)}</b>,{' '}
          {spreadFigure(lengthInUnit(aimSdM(app), lengthUnit), LENGTH_UNITS[lengthUnit])}{' '}
          {LENGTH_UNITS[lengthUnit].symbol} at the ball
        </WhyRow>
        {told.map(({ quantity, aimSdRad: shareRad }) => (
          <WhyRow key={quantity} term={QUANTITY_WORDS[quantity].name}>
            {plusMinus(shareRad)}
            {!app.room.isMeasured(quantity) && ', not measured'}
          </WhyRow>
        ))}
      </dl>
      <p class="why-note">
        One standard deviation: two times in three the right aim is nearer than that. The parts add
        in squares.
        {unsolved.length > 0 &&
          ` So little is known of the ${unsolved.map((name) => QUANTITY_WORDS[name].name).join(' and the ')} that there may be no aim.`}
      </p>
    </>
  );
}

function plusMinus(angleRad: number): string {
  return `${spreadFigure(degreesOf(angleRad), { ...DEGREES, decimals: 2, leastDecimals: 2 })}°`;
}
