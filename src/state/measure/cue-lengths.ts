import { signal } from '@preact/signals';
import type { Attempt } from '../../store/attempt';
import { USUAL_CUE_LENGTH_M } from './butt-height';

/** How long each cue is taken to be, until its butt is read with another length. */
export interface CueLengths {
  /** As said last, else as in the newest attempt that measured with this cue, else as usual, m. */
  of(attempt: Attempt): number;
  say(cueId: string, lengthM: number): void;
}

/** @param all every attempt, the oldest first */
export function createCueLengths(all: () => readonly Attempt[]): CueLengths {
  const said = signal<ReadonlyMap<string, number>>(new Map());
  return {
    of({ butt, choice }) {
      const earlier = all()
        .filter((one) => one.butt !== null && one.choice.cues === choice.cues)
        .at(-1);
      return (
        butt?.cueLengthM ??
        said.value.get(choice.cues) ??
        earlier?.butt?.cueLengthM ??
        USUAL_CUE_LENGTH_M
      );
    },
    say(cueId, lengthM) {
      said.value = new Map([...said.peek(), [cueId, lengthM]]);
    },
  };
}
