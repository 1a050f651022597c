import { readFileSync, writeFileSync } from 'node:fs';
import { agreement } from './agreement';
import { withReport } from './truth-report';

/** Writes what the truth tests find into the README, between its marks. */
writeFileSync('README.md', withReport(readFileSync('README.md', 'utf8'), agreement()));
