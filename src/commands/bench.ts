/**
 * npm run bench                one line per question in tests/bench/
 *
 * Every bench warms up, times each run alone, and sums a result into a sink so that nothing is optimised away.
 */
import { cpus, loadavg } from 'node:os';
import { PREDICTION_BENCHES } from '../../tests/bench/predictions.ts';

/** Runs before any is timed, and so long at least: the engine's functions are compiled again when the quadrature changes. */
const WARM_UP = 300;
const WARM_UP_ms = 2000;
const RUNS = 400;

console.log(
  `${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, load ${loadavg()[0]!.toFixed(1)}, Node ${process.version}, ${new Date().toISOString().slice(0, 10)}`,
);
console.log(`milliseconds: median, interquartile range, fastest of ${RUNS} runs`);
let sink = 0;
for (const { question, run } of PREDICTION_BENCHES) {
  const warm = performance.now() + WARM_UP_ms;
  for (let i = 0; i < WARM_UP || performance.now() < warm; i++) sink += run(i);
  const times_ms = Array.from({ length: RUNS }, (_, i) => {
    const start = performance.now();
    sink += run(i);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const at = (share: number): string => times_ms[Math.floor(share * (RUNS - 1))]!.toFixed(3);
  console.log(`${question.padEnd(56)} ${at(0.5)}   ${at(0.25)} … ${at(0.75)}   ${at(0)}`);
}
if (!Number.isFinite(sink)) throw new Error('a bench gave no number');
