import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { IncomingLink, Wanted } from '../../state/links/links-model';
import type { LaterModels } from '../app-models';
import { PartList } from './PartList';
import { sharedParts } from './shared-parts';

interface Props {
  readonly app: LaterModels<'shot' | 'kit' | 'measure' | 'desk' | 'links'>;
  readonly brought: Extract<IncomingLink, { kind: 'brings' }>;
  /** Called once it is gone from the screen. */
  onLeft(): void;
}

/** What a link brings, and what of it is to be kept: nothing is until that is said. */
export function BroughtParts({ app, brought, onLeft }: Props) {
  const { shared, mended } = brought;
  const { links } = app;
  const parts = sharedParts(app, shared);
  // What a shot was played with is another's: it is kept where that is asked for.
  const wanted = useSignal<Wanted>({
    shot: shared.shot !== null,
    position: shared.position !== null,
    kit: shared.shot === null && shared.position === null,
  });
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const isWanted = parts.some(({ part }) => wanted.value[part]);
  const end = (how: () => void) => {
    how();
    onLeft();
  };
  return (
    <section class="backup-part" aria-labelledby="brought">
      <h2 id="brought" tabIndex={-1} ref={heading}>
        This link brings
      </h2>
      <PartList
        parts={parts}
        wanted={wanted.value}
        onTap={(part) => {
          wanted.value = { ...wanted.peek(), [part]: !wanted.peek()[part] };
        }}
      />
      <p class="place-note">
        Nothing is kept yet. What is marked comes beside what is yours
        {shared.shot && '; a shot goes on Shot, and Undo brings yours back'}
        {parts.length > 1 && shared.kit.cues && '; a kit kept with it is put in play'}.
        {mended > 0 && ` Mended in it: ${mended}.`}
      </p>
      <div class="backup-actions">
        <button
          type="button"
          class="button button-main"
          disabled={!isWanted}
          onClick={() => end(() => links.keep(wanted.peek()))}
        >
          Keep it
        </button>
        <button type="button" class="button" onClick={() => end(links.leave)}>
          Leave it
        </button>
      </div>
    </section>
  );
}
