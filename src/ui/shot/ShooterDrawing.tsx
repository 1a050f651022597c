import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Label } from '../../diagram/canvas';
import type { HeldLines, ShooterView } from '../../diagram/shooter-view';
import type { Mark } from '../../diagram/view-labels';
import { type Drawing, type Part, useAttributes, useDrawing } from '../live-drawing';
import { LiveBall, LiveLine, LiveText, LiveWord, Shown } from '../live-parts';
import { AimBands } from './AimBands';
import { BallRuler } from './BallRuler';
import { CueInFront } from './CueInFront';
import { DragHandle } from './DragHandle';
import { topOf } from './upright-top';

interface DrawingProps {
  readonly view: ReadonlySignal<ShooterView>;
  readonly isBandStale: ReadonlySignal<boolean>;
}

/** A drawing that the parts below stand in. */
interface Within {
  readonly of: Drawing<ShooterView>;
}

/** The balls, the marks and the cue of the drawing from behind the cue. */
export function ShooterDrawing({ view, isBandStale }: DrawingProps) {
  const of = useDrawing(view);
  return (
    <>
      <Shown of={of} what={({ near }) => near?.lines ?? null}>
        {(lines) => (
          <>
            <LiveLine of={of} at={(now) => lines(now).aim} class="aim-way" />
            <LiveLine of={of} at={(now) => lines(now).cue} class="cue-way" />
          </>
        )}
      </Shown>
      <LiveBall of={of} at={({ objectBall }) => objectBall} class="object-ball" />
      <LiveBall of={of} at={({ ghostBall }) => ghostBall} class="ghost-ball" />
      <Shown of={of} what={({ held }) => held}>
        {(held) => <Held of={of} held={held} />}
      </Shown>
      <AimBands of={of} isOld={isBandStale} />
      <Name of={of} label={({ objectLabel }) => objectLabel} text="object ball" />
      <Name of={of} label={({ ghostLabel }) => ghostLabel} text="ghost ball" />
      <BallRuler of={of} />
      <Shown of={of} what={({ stick }) => stick}>
        {(stick) => <Stick of={of} mark={stick} />}
      </Shown>
      <Shown of={of} what={({ aim }) => aim}>
        {(aim) => (
          <g class="aim-mark">
            <UprightLine of={of} x={(now) => aim(now).x} />
            <MarkName of={of} mark={aim}>
              aim line
            </MarkName>
          </g>
        )}
      </Shown>
      <Shown of={of} what={({ near }) => near}>
        {(near) => <CueInFront of={of} near={near} />}
      </Shown>
      <Shown of={of} what={({ scaleNote }) => scaleNote}>
        {(at) => (
          <LiveText of={of} at={at} class="scale-note">
            <LiveWord
              of={of}
              word={({ ballsAcross }) => `view ${ballsAcross.toFixed(1)} balls wide`}
            />
          </LiveText>
        )}
      </Shown>
      <DragHandle of={of} at={({ ghostGrip }) => ghostGrip} />
    </>
  );
}

interface UprightProps extends Within {
  readonly x: Part<ShooterView, number>;
  readonly class?: string;
}

/** An upright line, from the top of the marks to the ruler. */
function UprightLine({ of, x, class: className }: UprightProps) {
  const ends = useAttributes(of, (now) => {
    return { x1: x(now), x2: x(now), y1: topOf(now), y2: now.ruler.y };
  });
  return <line class={className} {...ends} />;
}

function Held({ of, held }: Within & { held: Part<ShooterView, HeldLines> }) {
  const name = useAttributes(of, (now) => ({ x: held(now).aimX, y: now.ruler.y }));
  return (
    <g class="held-lines">
      <UprightLine of={of} class="held-aim" x={(now) => held(now).aimX} />
      <UprightLine of={of} class="held-cue" x={(now) => held(now).stickX} />
      <Shown of={of} what={(now) => held(now).near?.lines ?? null}>
        {(lines) => (
          <>
            <LiveLine of={of} at={(now) => lines(now).aim} class="held-aim" />
            <LiveLine of={of} at={(now) => lines(now).cue} class="held-cue" />
          </>
        )}
      </Shown>
      <text {...name} dy="-0.35em" text-anchor="middle">
        held
      </text>
    </g>
  );
}

interface NameProps extends Within {
  readonly label: Part<ShooterView, Label | null>;
  readonly text: string;
}

/** The name of a ball, in two lines, where it has room. */
function Name({ of, label, text }: NameProps) {
  const [first, second] = text.split(' ');
  return (
    <Shown of={of} what={label}>
      {(at) => (
        <LiveText of={of} at={at} class="ball-name" second={second}>
          {first}
        </LiveText>
      )}
    </Shown>
  );
}

/** Where the stick's axis passes. */
function Stick({ of, mark }: Within & { mark: Part<ShooterView, Mark> }) {
  const look = useAttributes(of, (now) => ({
    class: mark(now).isClose ? 'stick-mark stick-close' : 'stick-mark',
  }));
  return (
    <g {...look}>
      <UprightLine of={of} x={(now) => mark(now).x} />
      <MarkName of={of} mark={mark}>
        <LiveWord of={of} word={(now) => (mark(now).isShort ? 'cue' : 'cue lies here')} />
      </MarkName>
    </g>
  );
}

function MarkName({
  of,
  mark,
  children,
}: Within & { mark: Part<ShooterView, Mark>; children: ComponentChildren }) {
  return (
    <LiveText of={of} at={(now) => mark(now).label} class="mark-name">
      {children}
    </LiveText>
  );
}
