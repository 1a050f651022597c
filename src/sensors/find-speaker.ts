/** Reads sentences aloud. */
export interface Speaker {
  /** Instead of whatever is being read; tells when it ends, or cannot be read. */
  say(sentence: string, ended: () => void): void;
  hush(): void;
}

/** What is needed of a page; `window` is one. */
export interface SpeakingPage {
  readonly speechSynthesis?: Pick<SpeechSynthesis, 'speak' | 'cancel'>;
  readonly SpeechSynthesisUtterance?: new (sentence: string) => SpeechSynthesisUtterance;
}

/** The app's own English, whatever language the phone speaks. */
const LANGUAGE = 'en-GB';

/** The browser's voice; null where it has none. */
export function findSpeaker(page: SpeakingPage): Speaker | null {
  const { speechSynthesis: voice, SpeechSynthesisUtterance: Utterance } = page;
  if (!voice || !Utterance) return null;
  return {
    say(sentence, ended) {
      voice.cancel();
      const said = new Utterance(sentence);
      said.lang = LANGUAGE;
      said.onend = ended;
      said.onerror = ended;
      voice.speak(said);
    },
    hush: () => voice.cancel(),
  };
}
