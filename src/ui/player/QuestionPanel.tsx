import type { Models } from '../app-models';
import { PanelHeader } from '../kit/PanelHeader';
import { TheQuestion } from './TheQuestion';

/** The one question as a panel of Shot, and the way back to the shot once it is answered. */
export function QuestionPanel({ app }: { app: Models<'player' | 'kit' | 'router'> }) {
  const { player, router } = app;
  const isAnswered = player.inPlay.value.madeOf10 !== null;
  return (
    <>
      <PanelHeader router={router} title="One question" />
      <TheQuestion app={app} />
      <button
        type="button"
        class={isAnswered ? 'button button-main' : 'button'}
        onClick={() => {
          if (!isAnswered) player.putAside();
          router.close();
        }}
      >
        {isAnswered ? 'Done' : 'Skip: most players will do'}
      </button>
    </>
  );
}
