import { type BenchLine, engineBench } from './engine-bench';

function show({ name, value, unit }: BenchLine): void {
  const figure = value >= 100 ? Math.round(value).toLocaleString('en') : value.toPrecision(3);
  console.log(`${name.padEnd(60)} ${figure.padStart(12)} ${unit}`);
}

for (const line of engineBench()) show(line);
