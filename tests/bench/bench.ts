import { gzippedCodeBytes } from '../build/shipped-code';
import type { BenchLine } from './bench-line';
import { chooseBench } from './choose-bench';
import { startBench } from './cold-start';
import { dragBench } from './drag-bench';
import { engineBench } from './engine-bench';
import { fitBench } from './fit-bench';
import { growthBench } from './growth-bench';
import { manyRowsBench } from './many-rows-bench';
import { odeBench } from './ode-bench';
import { optionsBench } from './options-bench';
import { tableBench } from './table-bench';
import { touchBench } from './touch-bench';

/** Everything that is measured, one figure a line. Needs a build in dist. */
function show({ name, value, unit }: BenchLine): void {
  const figure = value >= 100 ? Math.round(value).toLocaleString('en') : value.toPrecision(3);
  console.log(`${name.padEnd(60)} ${figure.padStart(12)} ${unit}`);
}

for (const line of engineBench()) show(line);
for (const line of fitBench()) show(line);
for (const line of tableBench()) show(line);
for (const line of optionsBench()) show(line);
for (const line of growthBench()) show(line);
for (const line of odeBench()) show(line);
for (const line of await startBench()) show(line);
for (const line of await dragBench()) show(line);
for (const line of await touchBench()) show(line);
for (const line of await chooseBench()) show(line);
for (const line of await manyRowsBench()) show(line);
show({ name: 'scripts and styles, gzipped', value: gzippedCodeBytes(), unit: 'bytes' });
