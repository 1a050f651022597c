import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { RefObject } from 'preact';
import type { Canvas, Circle } from '../../diagram/canvas';
import { type BallSize, ballSize } from '../../diagram/table-balls';
import { layOutTable, type TableMap } from '../../diagram/table-map';
import { layOutRails, type RailsView } from '../../diagram/table-rails';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { Models } from '../app-models';
import { useCanvas } from '../use-canvas';

/** The table as it lies on the screen, followed as its size changes. */
export interface Board {
  readonly canvas: ReadonlySignal<Canvas>;
  readonly map: ReadonlySignal<TableMap>;
  readonly rails: ReadonlySignal<RailsView>;
  readonly size: ReadonlySignal<BallSize>;
}

export function useBoard({
  choose,
  kit,
}: Models<'choose' | 'kit'>): [RefObject<HTMLDivElement | null>, Board] {
  const [holder, canvas] = useCanvas();
  const map = useComputed(() => layOutTable(choose.shape.value, canvas.value));
  const rails = useComputed(() => layOutRails(choose.shape.value, map.value));
  const size = useComputed(() => ballSize(kit.kit.value.ballRadiusM, map.value));
  return [holder, { canvas, map, rails, size }];
}

/** The balls as they are drawn. */
export function ballsOn({ open }: Pick<ChooseModel, 'open'>, { map, size }: Board): Circle[] {
  return open.value.balls.map((ball) => {
    const { x, y } = map.value.toPoint(ball);
    return { cx: x, cy: y, r: size.value.radiusPx };
  });
}
