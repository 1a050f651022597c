import type { ComponentChildren } from 'preact';
import type { Sketch } from '../../diagram/kit-sketch';
import type { Models } from '../app-models';
import { isOpen } from './is-open';
import { KitPicture } from './KitPicture';
import './KitLists.css';

interface Props {
  readonly app: Models<'router'>;
  /** What it opens. */
  readonly panel: string;
  readonly sketch: Sketch;
  /** What it is, in words. */
  readonly children: ComponentChildren;
}

/** A row of a list that leads on: a small drawing, and what it is. */
export function PictureRow({ app: { router }, panel, sketch, children }: Props) {
  return (
    <li>
      <button
        type="button"
        class="shelf-row has-picture"
        data-opens={panel}
        aria-current={isOpen(router, panel)}
        onClick={() => router.open(panel)}
      >
        <KitPicture sketch={sketch} />
        <span class="shelf-words">{children}</span>
        <span class="shelf-arrow" aria-hidden="true">
          ›
        </span>
      </button>
    </li>
  );
}
