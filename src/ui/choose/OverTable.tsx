import { useComputed } from '@preact/signals';
import { layOutShot, type ShotLines } from '../../diagram/table-lines';
import { type PlacedWords, placeWords, ZONE } from '../../diagram/table-words';
import { isSafety, shotOf } from '../../state/choose/all-ways/shown-way';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { Models } from '../app-models';
import { AllWayOverlay } from './all-ways/AllWayOverlay';
import { isAllShown } from './all-ways/is-all-shown';
import { AIM_PANEL } from './all-ways/OpenedWay';
import { BED_CLIP, FanOverlay } from './FanOverlay';
import { PocketMarks } from './PocketMarks';
import { type PocketsTold, pocketsTold } from './pockets-told';
import { ShotOverlay } from './ShotOverlay';
import { type Board, ballsOn } from './use-board';
import { Word } from './Word';

interface Props {
  readonly app: Models<'choose' | 'player' | 'router'>;
  readonly board: Board;
}

/**
 * What is drawn over the bed: zone, chances, shot and fan; their words are placed all at once. Of all
 * that the shot's lines alone are drawn anew while a ball is dragged.
 */
export function OverTable({ app, board }: Props) {
  const { choose, router } = app;
  const lines = useComputed(() => linesOf(choose, board));
  const told = useComputed(() => pocketsTold(app));
  const words = useComputed(() => wordsOf(choose, board, lines.value, told.value)).value;
  if (isAllShown(app)) {
    const way = choose.all.chosen.value;
    const isAiming = way !== null && router.route.value.panel === AIM_PANEL && shotOf(way) === null;
    return (
      <>
        <BedClip board={board} />
        {/* A safety goes by what it leaves, wherever the zone is. */}
        {(way === null || !isSafety(way)) && <ZoneMark choose={choose} board={board} />}
        {way && <AllWayOverlay choose={choose} board={board} way={way} isAiming={isAiming} />}
      </>
    );
  }
  return (
    <>
      <BedClip board={board} />
      <ZoneMark choose={choose} board={board} />
      <FanOverlay choose={choose} board={board} keepOff={words.taken}>
        <ShotOverlay choose={choose} board={board} lines={lines} words={words.crosses} />
      </FanOverlay>
      <Word label={words.zone}>{ZONE}</Word>
      <PocketMarks board={board} told={told.value} words={words.pockets} />
    </>
  );
}

/** The outline within which zone and ring are drawn. */
function BedClip({ board }: Pick<Props, 'board'>) {
  return (
    <clipPath id={BED_CLIP}>
      <path d={board.rails.value.bedPath} />
    </clipPath>
  );
}

/** Of the shot, or of the last there was; with the aim of the way that is looked at. */
function linesOf(choose: ChooseModel, board: Board): ShotLines | null {
  const now = choose.shot.value;
  const shot = now?.ok ? now : choose.lastShot.value;
  const { balls, goal } = choose.open.value;
  const { ball, pocket } = goal;
  if (!shot || now === null || ball === null || pocket === null) return null;
  const way = choose.chosen.value;
  const aimRad = way && choose.toLog.value !== null ? way.option.stroke.aimRad : null;
  return layOutShot({ shot, balls, ball, pocket, aimRad }, choose.shape.value, board.map.value);
}

function wordsOf(
  choose: ChooseModel,
  board: Board,
  lines: ShotLines | null,
  told: PocketsTold,
): PlacedWords {
  const { zone } = choose.open.value;
  const map = board.map.value;
  const { pockets } = board.rails.value;
  const wanted = {
    crosses: choose.shot.value?.ok ? (lines?.inTheWay ?? []) : [],
    pockets: pockets.flatMap(({ name, hole }) => {
      const one = told.get(name);
      return one && !one.isClosed ? [{ name, hole, word: one.words }] : [];
    }),
    zone: zone && map.toPoint(zone),
  };
  const keepOff = () => [...ballsOn(choose, board), ...pockets.map(({ hole }) => hole)];
  return placeWords(wanted, keepOff, map.bed, board.canvas.value);
}

/** Where the cue ball should come to rest. */
function ZoneMark({ choose, board }: { choose: ChooseModel; board: Board }) {
  const zone = useComputed(() => choose.open.value.zone).value;
  if (zone === null) return null;
  const map = board.map.value;
  const { x, y } = map.toPoint(zone);
  return (
    <g class="zone-mark" clip-path={`url(#${BED_CLIP})`}>
      <circle cx={x} cy={y} r={zone.radiusM * map.pxPerM} />
      <path d={`M${x - 5} ${y}h10m-5 -5v10`} />
    </g>
  );
}
