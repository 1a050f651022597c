import { type Signal, useSignal, useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Models } from '../app-models';
import { AfterShot } from '../log/AfterShot';
import { useKeptFocus } from '../use-kept-focus';
import { BallPalette, BallSide } from './BallTools';
import { ChooseStrip } from './ChooseStrip';
import { takesKey } from './choose-keys';
import { type ChooseMode, modeOf } from './choose-mode';
import { ModeTabs } from './ModeTabs';
import { NudgePad } from './NudgePad';
import { PlayTools, PocketSide } from './PlayTools';
import { PositionsPanel } from './PositionsPanel';
import { StatusLine } from './StatusLine';
import { TableBoard } from './TableBoard';
import { type Board, useBoard } from './use-board';
import { WayOut } from './WayOut';
import { WaysSide, WaysTools } from './WaysTools';
import { ZoneTools } from './ZoneTools';
import './ChoosePlace.css';

/** Which way should I play it? Balls laid on a table, and the ways to play them. */
export function ChoosePlace({
  app,
}: {
  app: Models<'shot' | 'choose' | 'player' | 'kit' | 'desk' | 'router'>;
}) {
  const { panel } = app.router.route.value;
  const mode = modeOf(panel);
  const place = useKeptFocus(panel);
  const isTurned = useSignal(false);
  const isSnapping = useSignal(true);
  const { choose } = app;
  // A ball left selected would be thrown across by the first stray tap after coming back.
  useEffect(() => (mode === 'balls' ? () => choose.select(null) : undefined), [mode, choose]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && panel !== '') app.router.close();
    else if (isTyping(event) || mode === 'positions' || isAfter(panel)) return;
    else if (takesKey(event, app.choose, mode, isTurned.peek())) event.preventDefault();
  };
  return (
    <main
      ref={place}
      class={isAfter(panel) ? 'kit-place is-after is-open' : placeClass(app, mode)}
      onKeyDown={onKeyDown}
    >
      <Page app={app} mode={mode} isTurned={isTurned} isSnapping={isSnapping} />
    </main>
  );
}

interface PageProps {
  readonly app: Models<'shot' | 'choose' | 'player' | 'kit' | 'desk' | 'router'>;
  readonly mode: ChooseMode;
  /** Told which way the table lies on the screen. */
  readonly isTurned: Signal<boolean>;
  readonly isSnapping: Signal<boolean>;
}

/** Right after a way that was looked at was played. */
function isAfter(panel: string): boolean {
  return panel === 'ways/after';
}

function Page(props: PageProps) {
  const { app, mode } = props;
  if (isAfter(app.router.route.value.panel)) {
    return <AfterShot app={app} asked={app.choose.toLog.value} />;
  }
  return mode === 'positions' ? <PositionsPanel app={app} /> : <TablePage {...props} />;
}

function TablePage({ app, mode, isTurned, isSnapping }: PageProps) {
  const { choose } = app;
  const [holder, board] = useBoard(app);
  useSignalEffect(() => {
    isTurned.value = board.map.value.isTurned;
  });
  return (
    <>
      <h1 class="visually-hidden">Choose</h1>
      <ChooseStrip app={app} />
      <TableBoard
        choose={choose}
        preferences={app.desk.preferences}
        board={board}
        holder={holder}
        mode={mode}
        isSnapping={isSnapping}
      />
      <div class="choose-side">
        <Side app={app} mode={mode} board={board} isSnapping={isSnapping} />
      </div>
      <StatusLine app={app} mode={mode} />
      <ModeTabs app={app} mode={mode} />
      <div class="choose-tools">
        {mode === 'balls' && <BallPalette choose={choose} />}
        {mode === 'play' && <PlayTools choose={choose} />}
        {(mode === 'play' || mode === 'ways') && <WayOut app={app} mode={mode} />}
        {mode === 'zone' && <ZoneTools choose={choose} />}
        {mode === 'ways' && <WaysTools app={app} />}
      </div>
    </>
  );
}

function placeClass(app: Models<'choose'>, mode: ChooseMode): string {
  if (mode === 'positions') return 'kit-place';
  return `choose-place is-${mode}${mode === 'ways' ? waysClass(app) : ''}`;
}

/** How much of the screen the ways need: none yet, a list, or one that is looked at. */
function waysClass({ choose }: Models<'choose'>): string {
  if (choose.chosen.value) return ' is-looking';
  return choose.comparison.value.state === 'none' ? '' : ' is-listing';
}

interface SideProps {
  readonly app: Models<'shot' | 'choose' | 'player' | 'router'>;
  readonly mode: ChooseMode;
  readonly board: Board;
  readonly isSnapping: Signal<boolean>;
}

/** Beside the table: what is done to it. */
function Side({ app, mode, board, isSnapping }: SideProps) {
  const { choose } = app;
  switch (mode) {
    case 'play':
      return <PocketSide choose={choose} board={board} />;
    case 'zone':
      return <NudgePad choose={choose} board={board} mode="zone" what="zone" />;
    case 'ways':
      return <WaysSide app={app} />;
    default:
      return <BallSide choose={choose} board={board} isSnapping={isSnapping} />;
  }
}

function isTyping({ target }: KeyboardEvent): boolean {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
}
