import type { ComponentChildren } from 'preact';
import type { TablePicture } from '../../diagram/table-picture';

interface Props {
  readonly view: Omit<TablePicture, 'path'>;
  /** What is drawn on the bed, under the balls. */
  readonly children: ComponentChildren;
}

/** A small table with its balls; what holds it gives the view box. */
export function SmallTable({ view, children }: Props) {
  return (
    <>
      <rect class="table-rail picture-rail" {...view.frame} rx={2} />
      <rect class="board-bed" {...view.bed} />
      {view.holes.map((hole) => (
        <circle key={`${hole.cx} ${hole.cy}`} class="picture-hole" {...hole} />
      ))}
      {children}
      {view.balls.map(({ isCue, ...dot }) => (
        <circle
          key={`${dot.cx} ${dot.cy}`}
          class={isCue ? 'picture-ball is-cue' : 'picture-ball'}
          {...dot}
        />
      ))}
    </>
  );
}
