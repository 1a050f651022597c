import { type Signal, useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { Models } from '../app-models';
import { AfterShot } from '../log/AfterShot';
import { QuestionPanel } from '../player/QuestionPanel';
import { useKeptFocus } from '../use-kept-focus';
import { isAllShown } from './all-ways/is-all-shown';
import { BallTools } from './BallTools';
import type { BoardTouch } from './board-touch';
import { ChooseStrip } from './ChooseStrip';
import { takesKey } from './choose-keys';
import { type ChooseMode, modeOf } from './choose-mode';
import { ModeTabs } from './ModeTabs';
import { PlayTools } from './PlayTools';
import { PositionsPanel } from './PositionsPanel';
import { StatusLine } from './StatusLine';
import { TableBoard } from './TableBoard';
import { type Board, useBoard } from './use-board';
import { useBoardTouch } from './use-board-touch';
import { WayOut } from './WayOut';
import { WaysTools } from './WaysTools';
import { ZoneTools } from './ZoneTools';
import './ChoosePlace.css';

/** Which way should I play it? Balls laid on a table, and the ways to play them. */
export function ChoosePlace({
  app,
}: {
  app: Models<'shot' | 'choose' | 'player' | 'kit' | 'desk' | 'router' | 'cards'>;
}) {
  const { panel } = app.router.route.value;
  const mode = modeOf(panel);
  const place = useKeptFocus(panel);
  const isTurned = useSignal(false);
  const isSnapping = useSignal(true);
  const { choose } = app;
  const isAll = isAllShown(app);
  // A ball left selected would be thrown across by the first stray tap after coming back.
  useEffect(() => (mode === 'balls' ? () => choose.select(null) : undefined), [mode, choose]);
  // While balls are laid, whatever ways were found would be overtaken by the next one.
  const isLaying = mode === 'balls';
  const isAsking = mode !== 'positions';
  useEffect(() => (isAsking ? choose.attend(isLaying) : undefined), [isAsking, isLaying, choose]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && panel !== '') app.router.close();
    else if (isTyping(event) || mode === 'positions' || SHEETS.has(panel)) return;
    else if (takesKey(event, app.choose, mode, isTurned.peek())) event.preventDefault();
  };
  return (
    <main ref={place} class={SHEETS.get(panel) ?? placeClass(mode, isAll)} onKeyDown={onKeyDown}>
      <Page app={app} mode={mode} isTurned={isTurned} isSnapping={isSnapping} />
    </main>
  );
}

interface PageProps {
  readonly app: Models<'shot' | 'choose' | 'player' | 'kit' | 'desk' | 'router' | 'cards'>;
  readonly mode: ChooseMode;
  /** Told which way the table lies on the screen. */
  readonly isTurned: Signal<boolean>;
  readonly isSnapping: Signal<boolean>;
}

/** What takes the whole place, and its look: right after a way was played, and the one question. */
const SHEETS: ReadonlyMap<string, string> = new Map([
  ['ways/after', 'kit-place is-after is-open'],
  ['ways/question', 'kit-place'],
]);

function Page(props: PageProps) {
  const { app, mode } = props;
  const { panel } = app.router.route.value;
  if (panel === 'ways/after') return <AfterShot app={app} asked={toLogOf(app)} />;
  if (panel === 'ways/question') return <QuestionPanel app={app} />;
  return mode === 'positions' ? <PositionsPanel app={app} /> : <TablePage {...props} />;
}

/** The way looked at, of whichever list is shown. */
function lookedAt({ all, chosen }: PageProps['app']['choose']) {
  return all.isDirect.value ? chosen.value : all.chosen.value;
}

/** The same, as it is logged. */
function toLogOf({ choose }: PageProps['app']) {
  return choose.all.isDirect.value ? choose.toLog.value : choose.all.toLog.value;
}

function TablePage({ app, mode, isTurned, isSnapping }: PageProps) {
  const [holder, board] = useBoard(app);
  const touch = useBoardTouch({ choose: app.choose, board, holder, mode, isSnapping });
  useSignalEffect(() => {
    isTurned.value = board.map.value.isTurned;
  });
  return (
    <>
      <h1 class="visually-hidden">Choose</h1>
      <ChooseStrip app={app} />
      <TableBoard app={app} board={board} holder={holder} mode={mode} touch={touch} />
      <ModeTabs app={app} mode={mode} />
      <Sheet app={app} mode={mode} board={board} isSnapping={isSnapping} touch={touch} />
    </>
  );
}

interface SheetProps {
  readonly app: Models<'shot' | 'choose' | 'player' | 'kit' | 'desk' | 'router' | 'cards'>;
  readonly mode: ChooseMode;
  readonly board: Board;
  readonly isSnapping: Signal<boolean>;
  readonly touch: BoardTouch;
}

/** What is done to the table: it scrolls by itself, so that the table never moves for it. */
function Sheet({ app, mode, board, isSnapping, touch }: SheetProps) {
  const { choose } = app;
  // What is played was told before, and is drawn: the way takes its room.
  const isLooking = mode === 'ways' && lookedAt(choose) !== null && !choose.problem.value;
  const sheet = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (mode !== 'positions') sheet.current?.scrollTo?.(0, 0);
  }, [mode]);
  return (
    <div class="choose-sheet" ref={sheet}>
      {isLooking || <StatusLine app={app} mode={mode} />}
      {mode === 'balls' && <BallTools {...{ choose, board, isSnapping, touch }} />}
      {mode === 'play' && <PlayTools app={app} board={board} />}
      {mode === 'zone' && <ZoneTools choose={choose} board={board} />}
      {mode === 'ways' && <WaysTools app={app} board={board} />}
      {(mode === 'play' || mode === 'ways') && <WayOut app={app} mode={mode} />}
    </div>
  );
}

function placeClass(mode: ChooseMode, isAll: boolean): string {
  return mode === 'positions' ? 'kit-place' : `choose-place is-${mode}${isAll ? ' is-all' : ''}`;
}

function isTyping({ target }: KeyboardEvent): boolean {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
}
