import { withText } from './readme-place';
import { roundedUp, spreadOf } from './spread';
import type { TableAgreement } from './table-agreement';
import type { TableFamilyName } from './table-cases';

export type TableFindings = Readonly<Record<TableFamilyName, TableAgreement>>;

/** Less than this, mm, is the solver's own. */
const LEAST_MM = 1e-6;
/** Of fewer, nothing is told. */
const FEWEST = 4;

/** The README with the report on whole tables in its place. @throws Error without marks */
export function withTableReport(readme: string, findings: TableFindings): string {
  return withText(readme, 'truth:tables', reportOf(findings));
}

function reportOf(findings: TableFindings): string {
  const all = Object.values(findings);
  return [countsOf(all), touchesTable(all), restsLine(findings.rails)].join('\n\n');
}

const total = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);

function countsOf(all: readonly TableAgreement[]): string {
  const [strokes, parted] = [
    total(all.map((one) => one.strokes)),
    total(all.map((one) => one.parted.length)),
  ];
  const same = parted === 0 ? 'all of them' : `all but ${parted}`;
  return `Of ${strokes} random strokes on whole tables, engine and reference tell of the same touches in ${same}. What the engine’s steps through a cushion leave out grows with every touch that follows, by distances over radii.`;
}

function touchesTable(all: readonly TableAgreement[]): string {
  const most = Math.max(...all.map(({ touchesMm }) => touchesMm.length));
  const touches = Array.from({ length: most }, (_, at) => at);
  const rows = all.map(({ family, strokes, touchesMm }) => {
    const cells = touches.map((at) => apart(touchesMm[at] ?? []) ?? '');
    return `| ${family.name} | ${strokes} | ${cells.join(' | ')} |`;
  });
  return [
    `| a ball’s place apart, mm: mean (max) | strokes | ${touches.map((at) => `touch ${at + 1}`).join(' | ')} |`,
    `|---|---|${touches.map(() => '---|').join('')}`,
    ...rows,
  ].join('\n');
}

function restsLine({ restsMm, points, restsAfterPointsMm }: TableAgreement): string {
  const rests = restsMm.flatMap((mm, touches) => {
    const told = apart(mm);
    return touches < 2 || told === null ? [] : [`after ${touches} cushions ${told} mm apart`];
  });
  const after = apart(restsAfterPointsMm);
  const leap = after === null ? '' : `, and those that came to rest did so ${after} mm apart`;
  return `The lone ball comes to rest ${rests.join(', ')}. That is off noses and jaws; ${points} met the point of a pocket, rounded to 3 mm, where errors leap${leap}.`;
}

function apart(placesMm: readonly number[]): string | null {
  if (placesMm.length < FEWEST) return null;
  const { mean, max } = spreadOf(placesMm);
  const [average, most] = [mean, max].map((mm) => roundedUp(Math.max(mm, LEAST_MM)));
  return `${average} (${most})`;
}
