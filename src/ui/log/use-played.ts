import { useComputed, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { PicturedWay } from '../../diagram/way-picture';
import type { TablePlay } from '../../engine/table/table-play';
import type { DrillPosition, LaidDrill } from '../../state/log/kept-drills';
import type { Models } from '../app-models';
import { cueBallFirst } from '../choose/fan-words';

/** A kept way as it lies on the table in play. */
export function useLaid({ log }: Models<'log'>, drill: DrillPosition): LaidDrill {
  const { kept } = log.practice;
  return useComputed(() => kept.lay(kept.find(drill.id) ?? drill)).value;
}

/** A kept way as it is laid, played out as soon as that is done. */
export function usePlayed({ log }: Models<'log'>, laid: LaidDrill): PicturedWay {
  const { kept } = log.practice;
  const play = useSignal<TablePlay | null>(null);
  useEffect(() => {
    let isWanted = true;
    void kept.play(laid).then((played) => {
      if (isWanted) play.value = played;
    });
    return () => {
      isWanted = false;
    };
  }, [kept, laid, play]);
  const { lengthM, widthM, goal } = laid.position;
  const balls = cueBallFirst(laid.position.balls);
  const falls = balls.findIndex(({ name }) => name === goal.ball);
  return { lengthM, widthM, balls, falls, play: play.value };
}
