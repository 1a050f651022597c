import type { Attempt } from '../../store/attempt';
import type { LaterModels } from '../app-models';
import { OfferButton } from './OfferButton';

/** What can be done at once about an attempt that looks wrong. */
export function SecondLook({
  app,
  attempt,
}: {
  app: LaterModels<'measure' | 'router'>;
  attempt: Attempt;
}) {
  const { measure } = app;
  const { id, shot, isStruckOut } = attempt;
  return (
    <div class="record-actions">
      <OfferButton app={app} shot={shot}>
        Play it again
      </OfferButton>
      <button type="button" class="button" onClick={() => measure.strikeOut(id, !isStruckOut)}>
        {isStruckOut ? 'Take back in' : 'Strike out'}
      </button>
    </div>
  );
}
