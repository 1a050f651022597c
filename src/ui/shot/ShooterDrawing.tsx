import type { Label } from '../../diagram/canvas';
import type { HeldLines, ShooterView } from '../../diagram/shooter-view';
import type { Mark } from '../../diagram/view-labels';
import { Ball, Line } from '../drawing-parts';
import { AimBands } from './AimBands';
import { BallRuler } from './BallRuler';
import { CueInFront } from './CueInFront';
import { DragHandle } from './DragHandle';

/** The balls, the marks and the cue of the drawing from behind the cue. */
export function ShooterDrawing({ view, isBandStale }: { view: ShooterView; isBandStale: boolean }) {
  const { aim, stick, ruler, near, ghostBall, ghostGrip, held } = view;
  const topY = Math.max(0, (aim?.label.y ?? 0) - 10);
  return (
    <>
      {near?.lines && <Line segment={near.lines.aim} class="aim-way" />}
      {near?.lines && <Line segment={near.lines.cue} class="cue-way" />}
      <Ball ball={view.objectBall} class="object-ball" />
      <Ball ball={ghostBall} class="ghost-ball" />
      {held && <Held held={held} topY={topY} toY={ruler.y} />}
      <AimBands view={view} topY={topY} isOld={isBandStale} />
      {view.objectLabel && <Name label={view.objectLabel} text="object ball" />}
      {view.ghostLabel && <Name label={view.ghostLabel} text="ghost ball" />}
      <BallRuler ruler={ruler} />
      {stick && (
        <UprightMark
          mark={stick}
          topY={topY}
          toY={ruler.y}
          class={stick.isClose ? 'stick-mark stick-close' : 'stick-mark'}
          name={stick.isShort ? 'cue' : 'cue lies here'}
        />
      )}
      {aim && <UprightMark mark={aim} topY={topY} toY={ruler.y} class="aim-mark" name="aim line" />}
      {near && <CueInFront near={near} />}
      {view.scaleNote && (
        <Name
          label={view.scaleNote}
          text={`view ${view.ballsAcross.toFixed(1)} balls wide`}
          class="scale-note"
        />
      )}
      <DragHandle at={ghostGrip} />
    </>
  );
}

function Held({ held, topY, toY }: { held: HeldLines; topY: number; toY: number }) {
  const { aimX, stickX, near } = held;
  return (
    <g class="held-lines">
      <line class="held-aim" x1={aimX} x2={aimX} y1={topY} y2={toY} />
      <line class="held-cue" x1={stickX} x2={stickX} y1={topY} y2={toY} />
      {near?.lines && <Line segment={near.lines.aim} class="held-aim" />}
      {near?.lines && <Line segment={near.lines.cue} class="held-cue" />}
      <text x={aimX} y={toY} dy="-0.35em" text-anchor="middle">
        held
      </text>
    </g>
  );
}

function Name({ label, text, class: className }: { label: Label; text: string; class?: string }) {
  const [first, second] = className ? [text] : text.split(' ');
  return (
    <text class={className ?? 'ball-name'} x={label.x} y={label.y} text-anchor={label.anchor}>
      {first}
      {second && (
        <tspan x={label.x} dy="1.05em">
          {second}
        </tspan>
      )}
    </text>
  );
}

interface UprightProps {
  readonly mark: Mark;
  readonly topY: number;
  readonly toY: number;
  readonly class: string;
  readonly name: string;
}

function UprightMark({ mark, topY, toY, class: className, name }: UprightProps) {
  return (
    <g class={className}>
      <line x1={mark.x} x2={mark.x} y1={topY} y2={toY} />
      <Name label={mark.label} text={name} class="mark-name" />
    </g>
  );
}
