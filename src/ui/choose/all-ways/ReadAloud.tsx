import { useEffect } from 'preact/hooks';
import type { ChooseModel } from '../../../state/choose/choose-model';

/** Reads a sentence aloud, where the browser can; leaving ends it. */
export function ReadAloud({
  choose: { all },
  sentence,
}: {
  choose: ChooseModel;
  sentence: string;
}) {
  useEffect(() => () => all.hush(), [all]);
  if (!all.canSpeak) return null;
  const isSpeaking = all.isSpeaking.value;
  return (
    <button
      type="button"
      class="button"
      onClick={() => (isSpeaking ? all.hush() : all.speak(sentence))}
    >
      {isSpeaking ? 'Stop reading' : 'Read aloud'}
    </button>
  );
}
