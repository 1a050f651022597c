import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { Label } from '../../diagram/canvas';
import type { HeldLines, ShooterView } from '../../diagram/shooter-view';
import type { Mark } from '../../diagram/view-labels';
import { type Live, LiveBall, LiveLine, LiveText, Shown, useAttributes } from '../live-parts';
import { AimBands } from './AimBands';
import { BallRuler } from './BallRuler';
import { CueInFront } from './CueInFront';
import { DragHandle } from './DragHandle';

interface DrawingProps {
  readonly view: ReadonlySignal<ShooterView>;
  readonly isBandStale: ReadonlySignal<boolean>;
}

/** The balls, the marks and the cue of the drawing from behind the cue. */
export function ShooterDrawing({ view, isBandStale }: DrawingProps) {
  const topY = () => Math.max(0, (view.value.aim?.label.y ?? 0) - 10);
  const toY = () => view.value.ruler.y;
  return (
    <>
      <Shown what={() => view.value.near?.lines ?? null}>
        {(lines) => (
          <>
            <LiveLine at={() => lines().aim} class="aim-way" />
            <LiveLine at={() => lines().cue} class="cue-way" />
          </>
        )}
      </Shown>
      <LiveBall at={() => view.value.objectBall} class="object-ball" />
      <LiveBall at={() => view.value.ghostBall} class="ghost-ball" />
      <Shown what={() => view.value.held}>
        {(held) => <Held held={held} topY={topY} toY={toY} />}
      </Shown>
      <AimBands view={view} topY={topY} isOld={isBandStale} />
      <Name label={() => view.value.objectLabel} text="object ball" />
      <Name label={() => view.value.ghostLabel} text="ghost ball" />
      <BallRuler view={view} />
      <UprightMark
        mark={() => view.value.stick}
        topY={topY}
        toY={toY}
        class={() => (view.value.stick?.isClose ? 'stick-mark stick-close' : 'stick-mark')}
        name={() => (view.value.stick?.isShort ? 'cue' : 'cue lies here')}
      />
      <UprightMark
        mark={() => view.value.aim}
        topY={topY}
        toY={toY}
        class={() => 'aim-mark'}
        name={() => 'aim line'}
      />
      <Shown what={() => view.value.near}>{(near) => <CueInFront near={near} />}</Shown>
      <ScaleNote view={view} />
      <DragHandle at={() => view.value.ghostGrip} />
    </>
  );
}

interface Reach {
  readonly topY: Live<number>;
  readonly toY: Live<number>;
}

/** An upright line, from the top of the marks to the ruler. */
function UprightLine({
  x,
  topY,
  toY,
  class: className,
}: Reach & { x: Live<number>; class?: string }) {
  const ends = useAttributes(() => ({ x1: x(), x2: x(), y1: topY(), y2: toY() }));
  return <line class={className} {...ends} />;
}

function Held({ held, topY, toY }: Reach & { held: Live<HeldLines> }) {
  const name = useAttributes(() => ({ x: held().aimX, y: toY() }));
  return (
    <g class="held-lines">
      <UprightLine class="held-aim" x={() => held().aimX} topY={topY} toY={toY} />
      <UprightLine class="held-cue" x={() => held().stickX} topY={topY} toY={toY} />
      <Shown what={() => held().near?.lines ?? null}>
        {(lines) => (
          <>
            <LiveLine at={() => lines().aim} class="held-aim" />
            <LiveLine at={() => lines().cue} class="held-cue" />
          </>
        )}
      </Shown>
      <text {...name} dy="-0.35em" text-anchor="middle">
        held
      </text>
    </g>
  );
}

/** The name of a ball, in two lines, where it has room. */
function Name({ label, text }: { label: Live<Label | null>; text: string }) {
  const [first, second] = text.split(' ');
  return (
    <Shown what={label}>
      {(at) => (
        <LiveText at={at} class="ball-name" second={second}>
          {first}
        </LiveText>
      )}
    </Shown>
  );
}

interface MarkProps extends Reach {
  readonly mark: Live<Mark | null>;
  readonly class: Live<string>;
  readonly name: Live<string>;
}

/** A line through all balls, and what it is called. */
function UprightMark({ mark, topY, toY, class: className, name }: MarkProps) {
  const [look, words] = [useComputed(className), useComputed(name)];
  return (
    <Shown what={mark}>
      {(at) => (
        <g class={look}>
          <UprightLine x={() => at().x} topY={topY} toY={toY} />
          <LiveText at={() => at().label} class="mark-name">
            {words}
          </LiveText>
        </g>
      )}
    </Shown>
  );
}

/** How much the view spans, where that is more than it mostly is. */
function ScaleNote({ view }: Pick<DrawingProps, 'view'>) {
  const words = useComputed(() => `view ${view.value.ballsAcross.toFixed(1)} balls wide`);
  return (
    <Shown what={() => view.value.scaleNote}>
      {(at) => (
        <LiveText at={at} class="scale-note">
          {words}
        </LiveText>
      )}
    </Shown>
  );
}
