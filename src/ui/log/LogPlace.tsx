import { useEffect } from 'preact/hooks';
import type { Models } from '../app-models';
import { QuestionPanel } from '../player/QuestionPanel';
import { useKeptFocus } from '../use-kept-focus';
import { LevelTestPanel } from './LevelTestPanel';
import { LogOverview } from './LogOverview';
import { PracticeEntry } from './PracticeEntry';
import { PracticePanel } from './PracticePanel';
import { ShotPanel } from './ShotPanel';
import { TestShotPanel } from './TestShotPanel';
import './LogPlace.css';

type LogModels = Models<'player' | 'log' | 'kit' | 'desk' | 'nowMs' | 'router' | 'shot' | 'choose'>;

const ENTRIES = ['shots', 'test', 'practice'];

/** What happened? Shots and how they went, and what they teach. */
export function LogPlace({ app }: { app: LogModels }) {
  const { panel } = app.router.route.value;
  const place = useKeptFocus(panel);
  // What was deleted is put back here or not at all.
  useEffect(() => app.player.forgetRemoved, [app.player]);
  const [head = '', id = ''] = panel.split('/');
  const isEntry = id !== '' && id !== 'question' && ENTRIES.includes(head);
  return (
    <main
      ref={place}
      class={isEntry ? 'kit-place is-after is-open' : 'kit-place'}
      onKeyDown={(event) => {
        if (event.key === 'Escape') app.router.close();
      }}
    >
      <Page app={app} head={head} id={id} />
    </main>
  );
}

function Page({ app, head, id }: { app: LogModels; head: string; id: string }) {
  if (head === 'shots' && id !== '') return <ShotPanel key={id} app={app} id={id} />;
  if (head === 'test' && id === '') return <LevelTestPanel app={app} />;
  if (head === 'test') return <TestShotPanel app={app} isAnew={id === 'new'} />;
  if (head === 'question' || id === 'question') return <QuestionPanel app={app} />;
  if (head === 'practice' && id === '') return <PracticePanel app={app} />;
  if (head === 'practice') return <PracticeEntry key={id} app={app} id={id} />;
  return <LogOverview app={app} />;
}
