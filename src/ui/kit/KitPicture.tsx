import { SKETCH_SIZE, type Sketch } from '../../diagram/kit-sketch';
import './KitPicture.css';

/** A small drawing of a thing by what it does; its figure stands beside it in words. */
export function KitPicture({ sketch }: { sketch: Sketch }) {
  const { width, height } = SKETCH_SIZE;
  return (
    <svg class="kit-picture" aria-hidden="true" viewBox={`0 0 ${width} ${height}`}>
      {sketch.map(({ d, look }) => (
        <path key={d} class={`sketch-${look}`} d={d} />
      ))}
    </svg>
  );
}
