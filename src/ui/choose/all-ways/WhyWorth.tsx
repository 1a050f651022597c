import type { Play } from '../../../engine/worth/worthy-ways';
import type { Models } from '../../app-models';
import { tellingOf } from '../../chance-telling';
import { WayFigure } from '../WayFigure';
import { partWords, whyLines } from './worth-words';

interface Props {
  readonly app: Models<'player'>;
  readonly told: Play;
}

/** What a way is worth, where figures are told. */
export function WorthFigure({ app, told: { worth } }: Props) {
  const telling = tellingOf(app);
  if (telling === 'ease') return null;
  return <WayFigure label="worth">{partWords(worth.worth, telling)}</WayFigure>;
}

/** Why it is worth that. */
export function WhyWorth({ app, told }: Props) {
  return (
    <>
      {whyLines(told, tellingOf(app)).map((line) => (
        <p key={line} class="way-why">
          {line}
        </p>
      ))}
    </>
  );
}
