import type { Segment } from '../../diagram/overhead-view';
import { ballOnRail, landingAt } from '../../diagram/trial-rail';
import type { SceneStep } from '../../diagram/trial-scene';
import { layOutTrialView, type TrialView } from '../../diagram/trial-view';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { TrialStep } from '../../state/measure/trial-steps';
import type { LaterModels } from '../app-models';
import { Ball, Line } from '../drawing-parts';
import { TableRails } from '../TableRails';
import { canvasAttributes, useCanvas } from '../use-canvas';
import { lessonOf } from './lesson-of';
import { readingFigure, readingInWords } from './reading-words';
import { drawingWords } from './step-words';
import { sceneOf } from './trials/faces';
import './TrialDrawing.css';

/** Letters, for the diamonds have numbers. */
const COIN_NAMES = 'AB';

interface Props {
  readonly app: LaterModels<'kit' | 'measure' | 'desk'>;
  readonly shot: TrialShot;
  readonly step: TrialStep['name'];
  /** Where a landing can be set by touching the rail. */
  readonly rail?: RailTouch | null;
}

/** A landing on the far rail, right + of its middle diamond, m. */
export interface RailTouch {
  /** As it stands on the keypad; null where nothing does. */
  readonly landingM: number | null;
  /** As all readings so far lead to expect; null where they do not. */
  readonly expectedM: number | null;
  onLanding(landingM: number): void;
}

/** Steps before anything is read are drawn as the set-up. */
function sceneStep(step: TrialStep['name']): SceneStep {
  return step === 'place' || step === 'play' || step === 'butt' || step === 'timeS'
    ? 'set-up'
    : step;
}

/** The table from above, the break end below: where things lie, where to aim, what to read. */
export function TrialDrawing({ app, shot, step, rail = null }: Props) {
  const [holder, canvas] = useCanvas();
  const expectedM = lessonOf(app.measure.report.value, shot)?.expected.landingM ?? null;
  const expected =
    expectedM === null
      ? null
      : readingInWords(readingFigure('landingM', expectedM, app.desk.preferences.value));
  const { ballRadiusM } = app.kit.kit.value;
  const scene = sceneOf(shot, ballRadiusM, sceneStep(step), expectedM);
  const view = layOutTrialView(scene, canvas.value);
  const { lengthM } = scene;
  const touch = (event: PointerEvent) => {
    const x = event.clientX - (holder.current?.getBoundingClientRect().left ?? 0);
    rail?.onLanding(landingAt(view, lengthM, x));
  };
  return (
    <div class={rail ? 'trial-drawing is-touched' : 'trial-drawing'} ref={holder}>
      <svg
        onPointerDown={rail ? touch : undefined}
        onPointerMove={rail ? (event) => event.buttons > 0 && touch(event) : undefined}
        role="img"
        aria-label={drawingWords(shot, sceneStep(step), expected)}
        {...canvasAttributes(canvas.value)}
      >
        <TableDrawing view={view} />
        {rail && <Landings view={view} rail={rail} size={{ lengthM, ballRadiusM }} />}
      </svg>
    </div>
  );
}

interface LandingsProps {
  readonly view: TrialView;
  readonly rail: RailTouch;
  readonly size: { readonly lengthM: number; readonly ballRadiusM: number };
}

/** Where the ball is expected to touch, dashed, and where it was said to. */
function Landings({ view, rail: { landingM, expectedM }, size }: LandingsProps) {
  return (
    <>
      {expectedM !== null && (
        <Ball ball={ballOnRail(view, size, expectedM)} class="trial-ball is-ghost" />
      )}
      {landingM !== null && (
        <Ball ball={ballOnRail(view, size, landingM)} class="trial-ball is-cue" />
      )}
    </>
  );
}

function TableDrawing({ view }: { view: TrialView }) {
  const { bed, frame, aim, rule } = view;
  return (
    <>
      <TableRails frame={frame} diamonds={view.diamonds} />
      <rect class="trial-bed" {...bed} />
      {view.noses.map((nose) => (
        <Line
          key={`${nose.from.x} ${nose.from.y} ${nose.to.x}`}
          segment={nose}
          class="trial-nose"
        />
      ))}
      {view.counts.map(({ text, label }) => (
        <text key={text} class="trial-count" x={label.x} y={label.y} text-anchor={label.anchor}>
          {text}
        </text>
      ))}
      <Line segment={view.mark} class="trial-mark" />
      <Line segment={view.path} class="trial-path" />
      <Line segment={aim} class="trial-aim" />
      {aim && rule.length === 0 && <AimHead aim={aim} />}
      {view.coins.map(({ cx, cy, r }, index) => (
        <g key={cy} class="trial-coin">
          <circle cx={cx} cy={cy} r={r} />
          <text x={frame.x + frame.width + r} y={cy} dy={index === 0 ? '0.9em' : '-0.1em'}>
            {COIN_NAMES[index]}
          </text>
        </g>
      ))}
      {view.balls.map(({ kind, circle }) => (
        <Ball
          key={`${kind} ${circle.cx} ${circle.cy}`}
          ball={circle}
          class={`trial-ball is-${kind}`}
        />
      ))}
      <Line segment={view.reading} class="trial-reading" />
      {view.reading && <Ends segment={view.reading} />}
      {rule.length > 0 && <Rule view={view} />}
      <EndNames view={view} />
    </>
  );
}

function EndNames({ view: { nearLabel, farLabel } }: { view: TrialView }) {
  return (
    <>
      {nearLabel && (
        <text class="trial-end" x={nearLabel.x} y={nearLabel.y} text-anchor="middle">
          break end
        </text>
      )}
      {farLabel && (
        <text class="trial-end" x={farLabel.x} y={farLabel.y} text-anchor="middle">
          far rail
        </text>
      )}
    </>
  );
}

/** Graduations over the far nose, in diamonds from the middle one. */
function Rule({ view: { rule, bed } }: { view: TrialView }) {
  return (
    <g class="trial-rule">
      {rule.map(({ x, diamonds, isWhole }) => (
        <line key={diamonds} x1={x} x2={x} y1={bed.y} y2={bed.y + (isWhole ? 14 : 8)} />
      ))}
      {rule
        .filter(({ isWhole }) => isWhole)
        .map(({ x, diamonds }) => (
          <text key={diamonds} x={x} y={bed.y + 16} dy="0.8em" text-anchor="middle">
            {diamonds === 0
              ? '0'
              : `${diamonds < 0 ? '← ' : ''}${Math.abs(diamonds)}${diamonds > 0 ? ' →' : ''}`}
          </text>
        ))}
    </g>
  );
}

/** An aim shorter than this has no room for a head, px. */
const LEAST_HEADED_PX = 20;

/** A head at the aim's far end. */
function AimHead({ aim: { from, to } }: { aim: Segment }) {
  if (Math.hypot(to.x - from.x, to.y - from.y) < LEAST_HEADED_PX) return null;
  const degrees = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  return (
    <path
      class="trial-aim-head"
      d="M1 0l-10 -5v10z"
      transform={`translate(${to.x} ${to.y}) rotate(${degrees})`}
    />
  );
}

/** Strokes across both ends of a stretch that is to be measured. */
function Ends({ segment: { from, to } }: { segment: Segment }) {
  return <path class="trial-reading" d={`M${from.x - 7} ${from.y}h14M${to.x - 7} ${to.y}h14`} />;
}
