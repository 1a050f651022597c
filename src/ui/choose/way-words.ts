import type { RankedWay } from '../../engine/options/ranked-way';
import type { Way } from '../../engine/options/way';
import type { EndedBy, RoomWindow } from '../../engine/room/windows';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { formatNumber, formatQuantity } from '../../units/format-number';
import type { SpeedScale } from '../../units/speed-unit';
import { TIP_CONTACT } from '../../units/tip-contact';
import { MISS_WORDS } from '../shot/room-words';
import { capitalised, percentWords } from './table-words';

/** Said of every raised cue. */
export const RAISED_LINE =
  'Raised cue: it can mark the cloth and send a ball off the table. The room’s rules come first.';

/** As players call it: "outside, soft, roll". */
export function wayName({ side, arrival, isDrag, speed, isRaised }: Way): string {
  const parts = [
    side === 'none' ? 'no side' : side,
    speed,
    isDrag ? `drag, ${arrival}` : arrival,
    ...(isRaised ? ['cue raised'] : []),
  ];
  return parts.join(', ');
}

/** What comes of the cue ball: "scratch 8 %, in the zone 34 % of those that go"; may be empty. */
export function outcomeWords({ scratch, goodPosition }: RankedWay): string {
  return [
    ...(scratch >= 0.005 ? [`scratch ${percentWords(scratch)}`] : []),
    ...(goodPosition === null
      ? []
      : [`in the zone ${percentWords(goodPosition)} of those that go`]),
  ].join(', ');
}

/** Why it is no easier, and what comes of the cue ball, on one line. */
export function wayLine(ranked: RankedWay): string {
  const reason = capitalised(reasonWords(ranked));
  const outcome = outcomeWords(ranked);
  return outcome === '' ? reason : `${reason}. ${capitalised(outcome)}`;
}

/** Why it is no easier, in one line. */
export function reasonWords({ hardest, windows, option }: RankedWay): string {
  const lead = LEADS[hardest];
  if (windows === null || hardest === 'kit') return lead;
  return `${lead}${missWords(endsOf(hardest, windows, option.shot.side))}`;
}

const LEADS: Readonly<Record<RankedWay['hardest'], string>> = {
  direction: 'little room for the line of the cue',
  side: 'little room for the side',
  height: 'little room for the tip’s height',
  elevation: 'little room for how high the butt is',
  speed: 'speed window narrow',
  kit: 'hangs on what is not measured of the kit',
};

/** How one strays, and what becomes of it. */
type Stray = readonly [string, EndedBy];

type Windows = NonNullable<RankedWay['windows']>;

function endsOf(
  hardest: Exclude<RankedWay['hardest'], 'kit'>,
  windows: Windows,
  side: number,
): readonly Stray[] {
  switch (hardest) {
    case 'direction':
      return between(windows.aimRad, 'aimed left', 'aimed right');
    case 'side':
      return side < 0
        ? between(windows.side, 'with more', 'with less')
        : between(windows.side, 'with less', 'with more');
    case 'height':
      return between(windows.height, 'if lower', 'if higher');
    case 'elevation':
      return between(windows.elevationRad, 'if lower', 'if higher');
    case 'speed':
      return between(windows.speedMps, 'if slow', 'if fast');
  }
}

function between({ low, high }: RoomWindow, lower: string, higher: string): readonly Stray[] {
  return [
    [lower, low.endedBy],
    [higher, high.endedBy],
  ];
}

function missWords(ends: readonly Stray[]): string {
  const told = ends.filter(([, endedBy]) => endedBy !== 'range');
  if (told.length === 0) return '';
  return `; ${told.map(([how, endedBy]) => `${MISS_WORDS[endedBy]} ${how}`).join(', ')}`;
}

/** The stroke in figures: "¼ R → right, ⅛ R ↓ low, 3° up, 1.6 m/s". */
export function strokeWords(
  { option: { shot } }: Pick<RankedWay, 'option'>,
  { inUnit, facts }: SpeedScale,
): string {
  const speed = inUnit(shot.speedMps);
  return [
    radiiWords(shot.side, '→ right', '← left') ?? 'no side',
    radiiWords(shot.height, '↑ high', '↓ low') ?? 'middle height',
    `cue ${formatQuantity(degreesOf(shot.elevationRad), DEGREES)} up`,
    formatQuantity(speed, { ...facts, decimals: 1 }),
  ].join(', ');
}

function radiiWords(fraction: number, plus: string, minus: string): string | null {
  const size = formatNumber(Math.abs(fraction), TIP_CONTACT);
  return size === '0' ? null : `${size} R ${fraction > 0 ? plus : minus}`;
}
