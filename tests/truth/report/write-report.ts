import { readFileSync, writeFileSync } from 'node:fs';
import { agreement } from './agreement';
import { aimAgreement } from './aim-agreement';
import { comparedTables, tableAgreement } from './table-agreement';
import { TABLE_FAMILIES, type TableFamilyName } from './table-cases';
import { withTableReport } from './table-report';
import { withReport } from './truth-report';

// Writes what the truth tests find into the README, between its marks.
const findings = { families: agreement(), aims: aimAgreement() };
const sampled = (name: TableFamilyName) =>
  tableAgreement(name, comparedTables(name, TABLE_FAMILIES[name].sample));
const tables = {
  level: sampled('level'),
  tilted: sampled('tilted'),
  rails: sampled('rails'),
  chains: sampled('chains'),
};
const readme = withReport(readFileSync('README.md', 'utf8'), findings);
writeFileSync('README.md', withTableReport(readme, tables));
