import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { LaterModels } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { headingIn } from '../use-kept-focus';
import { BroughtParts } from './BroughtParts';
import { keptWords, LINK_FAULT_WORDS } from './link-words';
import './Links.css';

type App = LaterModels<'shot' | 'kit' | 'measure' | 'desk' | 'router' | 'links'>;

/** What can be shared from here, and what it is. */
const SHARED = [
  ['shot', 'The shot on Shot'],
  ['position', 'The position on Choose'],
  ['kit', 'The kit in play'],
] as const;

/**
 * Links that came, and the way to send some.
 * @param came the text of the link that the address held: it is looked at, and taken out of there
 */
export function LinksPanel({ app, came }: { app: App; came: string }) {
  const { links, router } = app;
  useEffect(() => {
    if (came === '') return;
    links.look(came);
    // In the place of the present entry: loaded anew, or gone back to, it asks no more.
    router.open('link');
  }, [came, links, router]);
  const incoming = links.incoming.value;
  return (
    <>
      <PanelHeader router={router} title="Links" />
      <output class="place-problem">
        {incoming.kind === 'refused' && LINK_FAULT_WORDS[incoming.fault]}
        {links.problem.value}
      </output>
      {incoming.kind === 'brings' && (
        <BroughtParts key={incoming.text} app={app} brought={incoming} onLeft={toHeading} />
      )}
      <Kept app={app} />
      <Paste app={app} />
      <section class="backup-part" aria-labelledby="link-share">
        <h2 id="link-share">Share</h2>
        {SHARED.map(([what, label]) => (
          <button
            key={what}
            type="button"
            class="button"
            data-opens={`share/${what}`}
            onClick={() => router.visit('kit', `share/${what}`)}
          >
            {label}
          </button>
        ))}
        <p class="place-note">
          Any other position, cue, cloth, ball set or table: behind its ⋯. A way: beside Aim it.
        </p>
      </section>
    </>
  );
}

/** What was under the keyboard is gone. */
function toHeading(): void {
  headingIn(document.body)?.focus();
}

/** What was kept just now, and the way back. */
function Kept({ app: { links, router } }: { app: App }) {
  const kept = links.kept.value;
  const place = kept?.shot ? 'shot' : 'choose';
  const isLaid = place === 'choose' && kept?.isLaid;
  return (
    <output class="undo-delete">
      {kept && (
        <>
          <span class="backup-when">{keptWords(kept)}</span>
          <button
            type="button"
            class="button"
            onClick={() => {
              links.undo();
              toHeading();
            }}
          >
            <span aria-hidden="true">↶</span> Undo
          </button>
          {(kept.shot || kept.position) && (
            <button
              type="button"
              class="button"
              onClick={() => (isLaid ? router.visit('choose', 'ways') : router.goTo(place))}
            >
              {kept.shot ? 'Go to Shot' : 'Go to Choose'}
            </button>
          )}
        </>
      )}
    </output>
  );
}

function Paste({ app: { links } }: { app: App }) {
  const text = useSignal('');
  const field = useRef<HTMLTextAreaElement>(null);
  return (
    <section class="backup-part" aria-labelledby="link-paste">
      <h2 id="link-paste">Paste a link</h2>
      <p class="place-note">
        On a home screen Leeway may not be handed links, and may keep what it has apart from the
        browser: copy the link there, and paste it here.
      </p>
      <textarea
        ref={field}
        class="link-text"
        aria-labelledby="link-paste"
        rows={3}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        value={text.value}
        onInput={(event) => {
          text.value = event.currentTarget.value;
        }}
      />
      <button
        type="button"
        class="button"
        disabled={text.value.trim() === ''}
        onClick={() => {
          links.look(text.peek());
          if (links.incoming.peek().kind === 'brings') text.value = '';
          else field.current?.focus();
        }}
      >
        Look at it
      </button>
    </section>
  );
}
