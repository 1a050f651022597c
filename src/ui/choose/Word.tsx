import type { Label } from '../../diagram/canvas';

/** A word of the drawing, where there is room for it. */
export function Word({ label, children }: { label: Label | null; children: string }) {
  if (label === null) return null;
  return (
    <text x={label.x} y={label.y} text-anchor={label.anchor}>
      {children}
    </text>
  );
}
