import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { StoreNoticeKind } from '../store/store-port';
import { dayWords } from '../units/ago-words';
import { lawWords } from '../words/law-words';
import { clashWords, KEPT_SINCE_WORDS, noticeWords } from '../words/store-words';
import type { PlatformNews } from './app-models';
import { NO_COPY_WORDS } from './kit/storage-words';

type Act = 'reload' | 'retry' | 'openBackup';

/** What can be done about each kind of trouble. */
const ACTS: Readonly<Record<StoreNoticeKind, readonly Act[]>> = {
  blocked: ['reload'],
  outdated: ['reload'],
  replaced: ['reload'],
  closed: [],
  deleted: [],
  'not-kept': [],
  'not-opened': ['reload'],
  full: ['retry', 'openBackup'],
  'write-failed': ['retry', 'reload'],
  mended: ['openBackup'],
};

const ACT_WORDS: Readonly<Record<Act, string>> = {
  reload: 'Reload',
  retry: 'Try again',
  openBackup: 'Backup',
};

/** What the platform has to tell, a line each: a new version, and trouble with the storage. */
export function NewsLines({ news }: { news: PlatformNews }) {
  const acts: Readonly<Record<Act, () => void>> = {
    reload: news.reload,
    retry: () => void news.storage.retry(),
    openBackup: news.openBackup,
  };
  return (
    <>
      {news.storage.notices.value.map((notice) => (
        <Line key={notice.kind}>
          <span>
            <span aria-hidden="true">▲</span> {noticeWords(notice)}
          </span>
          {ACTS[notice.kind].map((act) => (
            <NewsButton key={act} words={ACT_WORDS[act]} onClick={acts[act]} />
          ))}
        </Line>
      ))}
      <KeptSinceLine storage={news.storage} />
      <LawLine law={news.law} />
      <ClashLines tabs={news.tabs} />
      <CopyLine news={news} />
      <AlteredLine file={news.alteredFile.value} />
      <UpdateLine apply={news.applyUpdate.value} />
    </>
  );
}

function AlteredLine({ file }: { file: string | null }) {
  if (file === null) return null;
  return (
    <Line>
      <span>
        <span aria-hidden="true">▲</span> Not ready offline: the network, or the host, alters {file}
        . If it wants you to log in, do; then it is tried again by itself.
      </span>
    </Line>
  );
}

function UpdateLine({ apply }: { apply: (() => void) | null }) {
  const isUpdating = useSignal(false);
  if (apply === null) return null;
  return (
    <Line>
      {isUpdating.value ? 'Updating…' : 'A newer version is ready. Nothing you kept changes.'}
      <NewsButton
        words="Update now"
        disabled={isUpdating.value}
        onClick={() => {
          isUpdating.value = true;
          apply();
        }}
      />
    </Line>
  );
}

/** In the place of a line that told of something not kept: its button may be under a finger. */
function KeptSinceLine({ storage }: { storage: PlatformNews['storage'] }) {
  if (!storage.isKeptSince.value) return null;
  return (
    <Line>
      {KEPT_SINCE_WORDS}
      <NewsButton words="OK" onClick={storage.dismiss} />
    </Line>
  );
}

/** Told once, until it was seen: what was on screen before is not what it is now. */
function LawLine({ law }: { law: PlatformNews['law'] }) {
  const since = law.since.value;
  if (since === null) return null;
  return (
    <Line>
      {lawWords(since.law, since.hasReadings)}
      <NewsButton words="OK" onClick={law.seen} />
    </Line>
  );
}

/** What two tabs did at once, until it was seen or answered. */
function ClashLines({ tabs }: { tabs: PlatformNews['tabs'] }) {
  return tabs.clashes.value.map((clash) => (
    <Line key={`${clash.store} ${clash.id}`}>
      {clashWords(clash)}
      {clash.kind === 'gone' ? (
        <>
          <NewsButton words="Bring it back" onClick={() => tabs.answer(clash, true)} />
          <NewsButton words="Let it go" onClick={() => tabs.answer(clash, false)} />
        </>
      ) : (
        <NewsButton words="OK" onClick={() => tabs.dismiss(clash)} />
      )}
    </Line>
  ));
}

/** What is lost, or shut away for now, and could be had from the copy on this device. */
function CopyLine({ news }: { news: PlatformNews }) {
  const { nowMs, openBackup } = news;
  const copy = news.copy.value;
  if (!copy) return null;
  const offer = copy.offer.value;
  if (!offer) return <NoCopyLine hasNoRoom={copy.hasNoRoom.value} openBackup={openBackup} />;
  const day = dayWords(offer.savedAtMs, nowMs());
  if (offer.kind === 'shut') {
    return (
      <Line>
        A copy of your kit, readings and players of {day} is here.
        <NewsButton words="Use it" onClick={() => void copy.take()} />
      </Line>
    );
  }
  const look = () => {
    openBackup();
    void copy.take();
  };
  return (
    <Line>
      This browser lost what was kept. A copy of your kit, readings and players of {day} is here.
      <NewsButton words="Bring it back…" onClick={look} />
      <NewsButton words="No" onClick={copy.giveUp} />
    </Line>
  );
}

/** Told until the person has gone to where everything can be saved. */
function NoCopyLine({ hasNoRoom, openBackup }: { hasNoRoom: boolean; openBackup: () => void }) {
  const isSeen = useSignal(false);
  if (!hasNoRoom || isSeen.value) return null;
  const look = () => {
    isSeen.value = true;
    openBackup();
  };
  return (
    <Line>
      {NO_COPY_WORDS}
      <NewsButton words="Backup" onClick={look} />
    </Line>
  );
}

function Line({ children }: { children: ComponentChildren }) {
  return <span class="news-line">{children}</span>;
}

interface ButtonProps {
  readonly words: string;
  readonly disabled?: boolean;
  onClick(): void;
}

function NewsButton({ words, disabled = false, onClick }: ButtonProps) {
  return (
    <button type="button" class="button" disabled={disabled} onClick={() => onClick()}>
      {words}
    </button>
  );
}
