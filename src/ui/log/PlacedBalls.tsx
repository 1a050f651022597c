import type { LevelShot } from '../../engine/player/level-test';
import type { TableShape } from '../../engine/table/table-shape';
import { crossingWords } from './test-words';

interface Props extends Pick<LevelShot, 'position' | 'goal'> {
  readonly shape: TableShape;
}

/** Where cue ball and ball are to be put, each where two diamonds cross. */
export function PlacedBalls({ shape: { lengthM, widthM }, position, goal }: Props) {
  const [cue, ball] = ['cue' as const, goal.ball].map((name) => {
    const spot = position.find((one) => one.name === name);
    return spot ? crossingWords(spot, { lengthM, widthM }) : '';
  });
  return (
    <>
      <p>
        <b>Cue ball</b> {cue}.
      </p>
      <p>
        <b>Ball</b> {ball}.
      </p>
    </>
  );
}
