import type { Step } from '../../src/engine/goal/goal';

/** An event as the door `play` tells it. */
export interface ToldEvent {
  readonly kind: string;
  readonly timeS: number;
  readonly ball: number | 'cue';
  readonly other?: number | 'cue';
  readonly cushion?: string;
  readonly part?: string;
  readonly pocket?: string;
}

/**
 * What led to a ball's fall, read backwards from it: everything that touched it on its way, before that
 * everything that touched what sent it, and so on to the stroke. Jaws are left out. Null: it did not fall.
 */
export function whatLedTo(ball: number, events: readonly ToldEvent[]): readonly Step[] | null {
  const fell = events.findIndex((event) => event.kind === 'pocketed' && event.ball === ball);
  return fell < 0 ? null : before(ball, events.slice(0, fell));
}

function before(mover: number | 'cue', events: readonly ToldEvent[]): readonly Step[] {
  const sent = mover === 'cue' ? -1 : events.findIndex((event) => touches(event, mover));
  const own = events.slice(sent + 1).flatMap((event) => stepOf(event, mover));
  const by = sent < 0 ? undefined : events[sent];
  if (by === undefined || mover === 'cue') return own;
  const sender = by.ball === mover ? by.other : by.ball;
  return [
    ...before(sender ?? 'cue', events.slice(0, sent)),
    { ball: mover, by: sender ?? 'cue' },
    ...own,
  ];
}

function touches({ kind, ball, other }: ToldEvent, mover: number | 'cue'): boolean {
  return kind === 'hits-ball' && (ball === mover || other === mover);
}

/** What a ball in motion meets; where the cue ball comes upon it again, that is by the cue ball. */
function stepOf(event: ToldEvent, mover: number | 'cue'): Step[] {
  if (event.kind === 'hits-cushion' && event.ball === mover && event.part !== 'jaw') {
    const rail = event.cushion?.split('-').at(-1) as 'near' | 'far' | 'left' | 'right';
    return [{ cushion: rail, by: mover }];
  }
  if (!touches(event, mover)) return [];
  const met = event.ball === mover ? event.other : event.ball;
  if (met === 'cue' && mover !== 'cue') return [{ ball: mover, by: 'cue' }];
  return typeof met === 'number' ? [{ ball: met, by: mover }] : [];
}
