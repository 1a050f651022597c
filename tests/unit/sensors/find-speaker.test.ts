import { describe, expect, it } from 'vitest';
import { findSpeaker } from '../../../src/sensors/find-speaker';

/** A browser's voice that notes what it is told. */
function fakeVoice() {
  const log: string[] = [];
  const spoken: { lang: string; onend?: () => void; onerror?: () => void }[] = [];
  class Utterance {
    lang = '';
    constructor(readonly text: string) {}
  }
  const page = {
    speechSynthesis: {
      speak(said: unknown) {
        const utterance = said as Utterance;
        spoken.push(utterance);
        log.push(`speak ${utterance.text}`);
      },
      cancel: () => void log.push('cancel'),
    },
    SpeechSynthesisUtterance: Utterance as never,
  };
  return { page, log, spoken };
}

describe('reading aloud', () => {
  it('is nobody’s where the browser has no voice', () => {
    expect(findSpeaker({})).toBeNull();
  });

  it('says a sentence in place of the one before, in English, and tells when it ends', () => {
    const { page, log, spoken } = fakeVoice();
    const speaker = findSpeaker(page);
    let ended = 0;
    speaker?.say('Bank the 3.', () => ended++);
    expect(log).toEqual(['cancel', 'speak Bank the 3.']);
    expect(spoken[0]?.lang).toBe('en-GB');
    spoken[0]?.onend?.();
    expect(ended).toBe(1);
    spoken[0]?.onerror?.();
    expect(ended).toBe(2);
    speaker?.hush();
    expect(log.at(-1)).toBe('cancel');
  });
});
