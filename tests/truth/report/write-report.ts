import { readFileSync, writeFileSync } from 'node:fs';
import { agreement } from './agreement';
import { aimAgreement } from './aim-agreement';
import { withReport } from './truth-report';

// Writes what the truth tests find into the README, between its marks.
const findings = { families: agreement(), aims: aimAgreement() };
writeFileSync('README.md', withReport(readFileSync('README.md', 'utf8'), findings));
