import type { Models } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { TheQuestion } from './TheQuestion';

/** The one question as a panel, and the way back to where it was asked for. */
export function QuestionPanel({ app }: { app: Models<'player' | 'kit' | 'desk' | 'router'> }) {
  const { player, router } = app;
  const { madeOf10, wasAsked } = player.inPlay.value;
  const isAnswered = madeOf10 !== null;
  return (
    <>
      <PanelHeader router={router} title="One question" />
      <TheQuestion app={app} />
      <button
        type="button"
        class={isAnswered ? 'button button-main' : 'button'}
        onClick={() => {
          if (!wasAsked) player.putAside();
          router.close();
        }}
      >
        {isAnswered ? 'Done' : 'Skip: as for most players, until shots tell more'}
      </button>
    </>
  );
}
