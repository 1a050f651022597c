import { withText } from '../report/readme-place';
import { roundedUp, spreadOf } from '../report/spread';
import type { RigidAgreement } from './rigid-agreement';
import { RIGID_FAMILIES, type RigidFamilyName } from './rigid-games';

export type RigidFindings = Readonly<Record<RigidFamilyName, RigidAgreement>>;

/** Less than this is rounding. */
const LEAST = 1e-6;

/** The README with the report on rigid bodies in its place. @throws Error without marks */
export function withRigidReport(readme: string, findings: RigidFindings): string {
  const names = Object.keys(RIGID_FAMILIES) as RigidFamilyName[];
  const rows = names.map((name) => {
    const { placesMm, velocitiesPercent, directionsDeg } = findings[name];
    const cells = [placesMm, velocitiesPercent, directionsDeg].map(apart);
    return `| ${RIGID_FAMILIES[name].name} | ${placesMm.length} | ${cells.join(' | ')} |`;
  });
  const head = [
    '| engine and rigid bodies apart: mean (max) | shots | place, mm | velocity, % | direction, ° |',
    '|---|---|---|---|---|',
  ];
  return withText(readme, 'truth:rigid-bodies', [...head, ...rows].join('\n'));
}

function apart(values: readonly number[]): string {
  const { mean, max } = spreadOf(values);
  if (max < LEAST) return '0';
  return `${roundedUp(mean)} (${roundedUp(max)})`;
}
