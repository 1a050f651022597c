import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { HandedOut, Outgoing } from '../../state/links/links-model';
import type { LaterModels } from '../app-models';
import { savedWords } from '../kit/backup-words';
import { PanelHeader } from '../kit/PanelHeader';
import { CodePicture } from './CodePicture';
import { LINK_OUTCOME_WORDS } from './link-words';
import { PartList } from './PartList';
import { sharedParts } from './shared-parts';
import './Links.css';

type App = LaterModels<'shot' | 'kit' | 'measure' | 'desk' | 'router' | 'links' | 'awake'>;

/** What can go with the kit that it is played with. */
const WITH_KIT = /^(shot|way|position)/;

/** Something to hand to another phone: as a code, and as a link. */
export function SharePanel({ app, what }: { app: App; what: string }) {
  const withKit = useSignal(false);
  const outgoing = app.links.outgoing(what, withKit.value);
  return (
    <>
      <PanelHeader router={app.router} title="Share" />
      {outgoing ? (
        <>
          <PartList parts={sharedParts(app, outgoing.shared)} />
          {WITH_KIT.test(what) && (
            <button
              type="button"
              class="button"
              aria-pressed={withKit.value}
              onClick={() => {
                withKit.value = !withKit.peek();
              }}
            >
              With the kit in play
            </button>
          )}
          <p class="place-note">No player and no log goes with it.</p>
          <AsCode app={app} outgoing={outgoing} />
          <AsLink app={app} url={outgoing.url} />
        </>
      ) : (
        <p>This one is no longer here.</p>
      )}
    </>
  );
}

/** For who stands beside: no network is needed between the two. */
function AsCode({ app, outgoing: { url, fitsCode } }: { app: App; outgoing: Outgoing }) {
  const saved = useSignal('');
  if (fitsCode) {
    return (
      <>
        <CodePicture app={app} url={url} />
        <p class="place-note">
          Point the other phone’s own camera at it. Without Leeway on that phone, opening it the
          first time needs a network; after that nothing does.
        </p>
      </>
    );
  }
  return (
    <>
      <p>Too much for a code. A file takes it: the link stands in it.</p>
      <button
        type="button"
        class="button"
        onClick={async () => {
          saved.value = savedWords(await app.links.save(url));
        }}
      >
        Save as a file
      </button>
      <output class="place-problem">{saved.value}</output>
    </>
  );
}

function AsLink({ app: { links }, url }: { app: App; url: string }) {
  const outcome = useSignal<HandedOut>('shared');
  const text = useRef<HTMLTextAreaElement>(null);
  const share = async () => {
    outcome.value = await links.share(url);
    if (outcome.peek() === 'refused') text.current?.select();
  };
  return (
    <section class="backup-part" aria-labelledby="as-link">
      <h2 id="as-link">As a link</h2>
      <textarea
        class="link-text"
        aria-labelledby="as-link"
        readOnly
        rows={3}
        ref={text}
        value={url}
      />
      <button type="button" class="button" onClick={share}>
        {links.hasSheet ? 'Share the link…' : 'Copy the link'}
      </button>
      <output class="place-problem">{LINK_OUTCOME_WORDS[outcome.value]}</output>
    </section>
  );
}
