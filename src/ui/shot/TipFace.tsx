import { contactAt, snapContacts } from '../../diagram/tip-face';
import type { Models } from '../app-models';
import { faceMarks } from './face-marks';
import { faceWords } from './picture-words';
import { TIP_NUDGES } from './tip-nudges';
import { useDrag } from './use-drag';
import './TipFace.css';

/** Clear share of the drawing's width on each side of the ball. */
const MARGIN_SHARE = 0.02;
const HALF_VIEW = 0.5 / (0.5 - MARGIN_SHARE);

/**
 * The cue ball's face with the tip on it; a touch or a drag is a shortcut beside the buttons. Arrow
 * keys move it both ways, with Shift by long steps.
 */
export function TipFace({ app }: { app: Models<'shot' | 'kit' | 'desk'> }) {
  const { shot, kit } = app;
  const marks = faceMarks(shot);
  const { limit } = marks;
  const { side, height } = shot.shot.value;
  const { ballRadiusM, tipRadiusM } = kit.kit.value;
  const tipRadius = kit.current.cues.value.tipDiameterM / 2 / ballRadiusM;
  const dome = 1 + tipRadiusM / ballRadiusM;
  const handlers = useDrag({
    model: shot,
    isAtOnce: true,
    grab: (_, widthPx) => (at) => {
      const { side, height } = contactAt(at, widthPx, MARGIN_SHARE, marks);
      shot.setTip(side, height);
    },
  });
  return (
    <div
      class="tip-face"
      role="slider"
      aria-label="The tip on the cue ball’s face"
      aria-valuemin={-limit}
      aria-valuemax={limit}
      aria-valuenow={side}
      aria-valuetext={faceWords(
        { side, height },
        limit,
        app.desk.preferences.value.tipUnit,
        shot.tipScale.value,
      )}
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
        {snapContacts(marks).map((contact) => (
          <circle
            key={`${contact.side} ${contact.height}`}
            class="tip-face-snap"
            cx={contact.side}
            cy={-contact.height}
            r={0.022}
          />
        ))}
        {/* On the half of the face where the tip is not. */}
        <text
          class="tip-face-note"
          y={height < 0 ? -limit - 0.07 : limit + 0.17}
          text-anchor="middle"
        >
          miscue limit
        </text>
        <circle class="tip-face-tip" cx={side * dome} cy={-height * dome} r={tipRadius} />
        <circle class="tip-face-contact" cx={side} cy={-height} r={0.07} />
        <FaceKey />
      </svg>
    </div>
  );
}

/** Which of the two marks is which, in the corners that the ball leaves free. */
function FaceKey() {
  return (
    <g class="tip-face-key">
      <circle class="tip-face-contact" cx={-0.96} cy={0.95} r={0.07} />
      <text class="tip-face-note" x={-0.86} y={1}>
        touch
      </text>
      <circle class="tip-face-tip" cx={0.63} cy={0.94} r={0.08} />
      <text class="tip-face-note" x={0.75} y={1}>
        tip
      </text>
    </g>
  );
}
