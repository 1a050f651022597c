import { readFileSync, writeFileSync } from 'node:fs';
import { rigidAgreement } from '../rigid-bodies/rigid-agreement';
import { withRigidReport } from '../rigid-bodies/rigid-report';
import { readyRigidBodies } from '../rigid-bodies/rigid-table';
import { agreement } from './agreement';
import { aimAgreement } from './aim-agreement';
import { anchoredPlayers, withPlayersReport } from './players-report';
import { comparedTables, tableAgreement } from './table-agreement';
import { TABLE_FAMILIES, type TableFamilyName } from './table-cases';
import { withTableReport } from './table-report';
import { withReport } from './truth-report';

// Writes what the truth tests find into the README, between its marks.
const sampled = (name: TableFamilyName) =>
  tableAgreement(name, comparedTables(name, TABLE_FAMILIES[name].sample));
await readyRigidBodies();
let readme = readFileSync('README.md', 'utf8');
readme = withReport(readme, { families: agreement(), aims: aimAgreement() });
readme = withTableReport(readme, {
  level: sampled('level'),
  tilted: sampled('tilted'),
  rails: sampled('rails'),
  chains: sampled('chains'),
});
readme = withRigidReport(readme, {
  slides: rigidAgreement('slides'),
  swerves: rigidAgreement('swerves'),
  impacts: rigidAgreement('impacts'),
  smooth: rigidAgreement('smooth'),
  hits: rigidAgreement('hits'),
});
readme = withPlayersReport(readme, anchoredPlayers());
writeFileSync('README.md', readme);
