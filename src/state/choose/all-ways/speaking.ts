import { signal } from '@preact/signals';
import type { Speaker } from '../../../sensors/find-speaker';
import type { AllWays } from './all-ways';

/** Reads a way aloud, one sentence at a time. */
export function createSpeaking(
  speaker: Speaker | null,
): Pick<AllWays, 'canSpeak' | 'isSpeaking' | 'speak' | 'hush'> {
  const isSpeaking = signal(false);
  let count = 0;
  return {
    canSpeak: speaker !== null,
    isSpeaking,
    speak(sentence) {
      const mine = ++count;
      isSpeaking.value = speaker !== null;
      speaker?.say(sentence, () => {
        // One that was cut short for another ends too.
        if (mine === count) isSpeaking.value = false;
      });
    },
    hush() {
      count++;
      if (isSpeaking.peek()) speaker?.hush();
      isSpeaking.value = false;
    },
  };
}
