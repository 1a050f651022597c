import type { DirectionWord } from '../units/direction-word';

/** Left or right, always as an arrow and a word together. Nothing for neither. */
export function SideWord({ side, class: className }: { side: DirectionWord; class?: string }) {
  if (side === 'none') return null;
  return (
    <span class={className ?? 'side-word'}>
      <span aria-hidden="true">{side === 'left' ? '←' : '→'}</span> {side}
    </span>
  );
}
