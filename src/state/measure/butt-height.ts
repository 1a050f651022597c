import { signal } from '@preact/signals';
import { buttHeightAt, elevationAt } from '../../engine/fit/butt-elevation';
import type { Kit } from '../../engine/kit/kit';
import type { Attempt } from '../../store/attempt';

/** As ordinary cues are (common practice, no source). */
export const USUAL_CUE_LENGTH_M = 1.47;

/** Further from the elevation asked for than hands and tapes go astray, rad (our judgement). */
const FAR_RAD = (4 * Math.PI) / 180;

/** How high above the cloth the middle of the butt's end is to be raised for a shot, m. */
export function buttHeightToRaise(
  { shot }: Pick<Attempt, 'shot'>,
  sizes: Pick<Kit, 'ballRadiusM' | 'tipRadiusM'>,
  cueLengthM: number,
): number {
  const { side, height, elevationRad } = shot.stroke;
  return buttHeightAt(elevationRad, { side, height, cueLengthM }, sizes);
}

/** The elevation that a height tells, rad, where that is far from the one asked for; else null. */
export function elevationFarOff(
  { shot }: Pick<Attempt, 'shot'>,
  buttHeightM: number,
  sizes: Pick<Kit, 'ballRadiusM' | 'tipRadiusM'>,
  cueLengthM: number,
): number | null {
  const { side, height, elevationRad } = shot.stroke;
  const told = elevationAt(buttHeightM, { side, height, cueLengthM }, sizes);
  return told !== null && told >= 0 && Math.abs(told - elevationRad) > FAR_RAD ? told : null;
}

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
