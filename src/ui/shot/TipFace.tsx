import { useEffect, useRef } from 'preact/hooks';
import { contactAt, snapContacts } from '../../diagram/tip-face';
import type { Models } from '../app-models';
import { faceWords } from './picture-words';
import { TIP_NUDGES } from './tip-nudges';
import './TipFace.css';

/** Clear share of the drawing's width on each side of the ball. */
const MARGIN_SHARE = 0.02;
const HALF_VIEW = 0.5 / (0.5 - MARGIN_SHARE);

/**
 * The cue ball's face with the tip on it; a touch or a drag is a shortcut beside the buttons. Arrow
 * keys move it both ways, with Shift by long steps.
 */
export function TipFace({ app }: { app: Models<'shot' | 'kit'> }) {
  const { shot, kit } = app;
  const limit = shot.tipLimit;
  const { side, height } = shot.shot.value;
  const { ballRadiusM, tipRadiusM } = kit.kit.value;
  const tipRadius = kit.current.cues.value.tipDiameterM / 2 / ballRadiusM;
  const dome = 1 + tipRadiusM / ballRadiusM;
  const handlers = useFaceDrag(app);
  return (
    <div
      class="tip-face"
      role="slider"
      aria-label="The tip on the cue ball’s face"
      aria-valuemin={-limit}
      aria-valuemax={limit}
      aria-valuenow={side}
      aria-valuetext={faceWords({ side, height }, limit)}
      tabIndex={0}
      onKeyDown={(event) => {
        const nudge = TIP_NUDGES.find(({ key }) => key === event.key);
        if (!nudge) return;
        event.preventDefault();
        shot.nudge(nudge.field, nudge.towards, event.shiftKey);
      }}
    >
      <svg
        aria-hidden="true"
        viewBox={`${-HALF_VIEW} ${-HALF_VIEW} ${2 * HALF_VIEW} ${2 * HALF_VIEW}`}
        {...handlers}
      >
        <circle class="tip-face-ball" r={1} />
        <path class="tip-face-cross" d="M-1 0H1M0 -1V1" />
        <circle class="tip-face-limit" r={limit} />
        {snapContacts(limit).map((contact) => (
          <circle
            key={`${contact.side} ${contact.height}`}
            class="tip-face-snap"
            cx={contact.side}
            cy={-contact.height}
            r={0.022}
          />
        ))}
        <text class="tip-face-note" y={limit + 0.17} text-anchor="middle">
          miscue limit
        </text>
        <circle class="tip-face-tip" cx={side * dome} cy={-height * dome} r={tipRadius} />
        <circle class="tip-face-contact" cx={side} cy={-height} r={0.07} />
      </svg>
    </div>
  );
}

/** Follows the finger, at most once a frame; a drag taken away goes back to where it began. */
function useFaceDrag({ shot }: Models<'shot'>) {
  const pending = useRef<{ event: PointerEvent; frame: number } | null>(null);
  const dragging = useRef(false);

  function place(event: PointerEvent): void {
    const face = (event.target as Element).closest('svg');
    if (!face) return;
    const box = face.getBoundingClientRect();
    const point = { x: event.clientX - box.left, y: event.clientY - box.top };
    const { side, height } = contactAt(point, box.width, MARGIN_SHARE, shot.tipLimit);
    shot.setTip(side, height);
  }
  function flush(): void {
    if (!pending.current) return;
    cancelAnimationFrame(pending.current.frame);
    place(pending.current.event);
    pending.current = null;
  }
  function finish(cancelled: boolean): void {
    if (!dragging.current) return;
    flush();
    dragging.current = false;
    shot.endGesture(cancelled);
  }
  useEffect(() => () => shot.endGesture(), [shot]);

  return {
    onPointerDown(event: PointerEvent) {
      if (event.button !== 0) return;
      (event.currentTarget as Element).setPointerCapture?.(event.pointerId);
      dragging.current = true;
      shot.beginGesture();
      place(event);
    },
    onPointerMove(event: PointerEvent) {
      if (!dragging.current) return;
      if (pending.current) cancelAnimationFrame(pending.current.frame);
      pending.current = { event, frame: requestAnimationFrame(flush) };
    },
    onPointerUp: () => finish(false),
    onPointerCancel: () => finish(true),
  };
}
