import type { ComponentChildren } from 'preact';

interface Props {
  readonly label: string;
  readonly isOld?: boolean;
  readonly children: ComponentChildren;
}

/** A label and its number, never parted. */
export function WayFigure({ label, isOld = false, children }: Props) {
  return (
    <span class="way-pair">
      <span class="way-label">{label}</span>{' '}
      <b class={isOld ? 'way-figure is-old' : 'way-figure'}>{children}</b>
    </span>
  );
}
