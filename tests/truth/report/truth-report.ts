import { type FamilyAgreement, spreadIn } from './agreement';
import type { AimAgreement } from './aim-agreement';
import { QUANTITIES, type Quantity } from './compare-shot';
import { ENGINE_SUBJECT } from './engine-subject';
import type { FollowedRub } from './followed-rub';
import type { FigureTable } from './published-figure';
import { PUBLISHED_FIGURES } from './published-figures';
import { withText } from './readme-place';
import { roundedUp, spreadOf } from './spread';

/** What the truth tests have found. */
export interface Findings {
  readonly families: readonly FamilyAgreement[];
  readonly aims: AimAgreement;
}

/** The README with the report in its place. @throws Error without marks */
export function withReport(readme: string, findings: Findings): string {
  return withText(readme, 'truth:report', reportOf(findings));
}

function reportOf({ families, aims }: Findings): string {
  const [grounded, level, tilted, all] = families;
  if (!grounded || !level || !tilted || !all) throw new RangeError('four families are reported');
  return [
    countsOf(families),
    agreementTable([level, tilted], all),
    groundedLine(grounded),
    aimsLine(aims),
    rubLine([...grounded.rubs, ...level.rubs, ...tilted.rubs]),
    figuresTable(),
  ].join('\n\n');
}

const total = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);
const count = (figure: number) => figure.toLocaleString('en');

function countsOf(families: readonly FamilyAgreement[]): string {
  const [touches, misses, apart] = [
    total(families.map((family) => family.touches)),
    total(families.map((family) => family.misses)),
    total(families.map((family) => family.disagreements.length)),
  ];
  return `Of ${count(total(families.map(({ shots }) => shots)))} random strokes, ${count(touches)} touch the object ball by both, ${count(misses)} miss it by both, and ${apart === 0 ? 'none' : count(apart)} by only one. Figures are rounded up.`;
}

function agreementTable(play: readonly FamilyAgreement[], all: FamilyAgreement): string {
  const rows = (Object.keys(QUANTITIES) as Quantity[]).map((quantity) => {
    const { name, unit } = QUANTITIES[quantity];
    const shots = spreadIn(quantity, ...play);
    const cells = [shots.mean, shots.p99, shots.max].map(roundedUp);
    const extreme = spreadIn(quantity, all);
    return `| ${name}, ${unit} | ${cells.join(' | ')} | ${count(shots.count)} | ${roundedUp(extreme.max)} | ${count(extreme.count)} |`;
  });
  return [
    '| engine and reference apart | mean | 99 % | max | shots | max, anything accepted | shots |',
    '|---|---|---|---|---|---|---|',
    ...rows,
  ].join('\n');
}

function groundedLine(grounded: FamilyAgreement): string {
  const place = roundedUp(spreadIn('place', grounded).max);
  const direction = roundedUp(spreadIn('objectDirection', grounded).max);
  return `All of that is the last tenth of a millisecond of a ball’s bouncing, which the engine does not fly. Where the ball stays on the bed (${count(grounded.touches)} shots more), the two are at most ${place} mm and, in the object ball’s direction, ${direction}° apart.`;
}

function aimsLine({ shots, apartDeg, overlooked, notFound }: AimAgreement): string {
  const only = (missing: number, who: string) =>
    missing === 0 ? [] : [`${missing} only by ${who}`];
  const exceptions = [...only(overlooked.length, 'the reference'), ...only(notFound, 'the engine')];
  const rest = exceptions.length === 0 ? 'none by only one' : exceptions.join(', ');
  return `Looking for the aim by playing shot after shot, the reference finds the engine’s in ${count(apartDeg.length)} of ${count(shots)} random shots, at most ${roundedUp(spreadOf(apartDeg).max)}° off; ${rest}.`;
}

function rubLine(all: readonly FollowedRub[]): string {
  const rubs = all.filter(({ flying }) => !flying);
  const moved = spreadOf(rubs.map(({ movedDeg }) => movedDeg));
  const worst = rubs.find(({ movedDeg }) => movedDeg === moved.max);
  if (worst === undefined) throw new RangeError('no impacts');
  const { cutDeg, speedMps, slipMps } = worst;
  return `Both take one friction coefficient for a whole impact of two balls. If it followed the slip through the impact instead, the object ball would leave ${moved.mean.toFixed(1)}° elsewhere on average, ${moved.p99.toFixed(1)}° or less in 99 of 100 shots, and ${moved.max.toFixed(1)}° at most: at a cut of ${cutDeg.toFixed(0)}° and ${speedMps.toFixed(1)} m/s, the balls slipping at ${slipMps.toFixed(1)} m/s.`;
}

function figuresTable(): string {
  return [
    '| published figures, and the engine | source | how we have it | figures | most apart | held |',
    '|---|---|---|---|---|---|',
    ...PUBLISHED_FIGURES.map(figuresRow),
  ].join('\n');
}

function figuresRow({ law, source, tag, unit, figures }: FigureTable): string {
  const apart = figures.map(({ of, expected }) => Math.abs(of(ENGINE_SUBJECT) - expected));
  const held = figures.filter(({ tolerance }, index) => (apart[index] ?? 9e9) <= tolerance).length;
  const most = Math.max(...apart, 1e-9);
  const verdict = held === figures.length ? 'all' : `**${held} of ${figures.length}**`;
  return `| ${law} | ${source} | ${tag} | ${figures.length} | ${roundedUp(most)}${unit && ` ${unit}`} | ${verdict} |`;
}
