import { describe, expect, it } from 'vitest';
import type { Cavity, Sheet } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { cavity, fibre, floor, leaf, mat, sheet } from '../published/reference-constructions.ts';

/** A thousand times as stiff as any mat sold, N/m³. */
const RIGID = 1e12;

const LAID: Record<string, Sheet> = {
  'dry screed': sheet('dry-screed', 0.025),
  'cement screed': sheet('cement-screed', 0.05),
};

const SUPPORTS: Cavity['support'][] = ['direct', 'resilient-channel', 'clips', 'separate-joists'];

const plywood = sheet('plywood', 0.022);
const ceiling = leaf([sheet('gypsum-board', 0.0125)]);
const below = (support: Cavity['support']) => cavity({ support, fill: [fibre('glass-fibre', 0.1)] });

const floating = (laid: Sheet, support: Cavity['support'], stiffness_N_m3: number) =>
  predict(floor(leaf([laid]), mat('mat', 0.01, stiffness_N_m3), leaf([plywood]), below(support), ceiling));
const lying = (laid: Sheet, support: Cavity['support']) =>
  predict(floor(leaf([laid, plywood]), below(support), ceiling));

/** Largest difference of any band, dB. */
function apart_dB(a: Prediction, b: Prediction, curve: (p: Prediction) => readonly number[]): number {
  return Math.max(...curve(a).map((value, band) => Math.abs(value - curve(b)[band]!)));
}

/** Limits by reasoning, no source: what lies on a mat that does not give way lies on the deck. */
describe.each(Object.keys(LAID))('%s on a rigid mat on a deck', (name) => {
  const laid = LAID[name]!;

  it.each(SUPPORTS)('does as on the deck itself, the ceiling held %s', (support) => {
    const rigid = floating(laid, support, RIGID);
    const loose = lying(laid, support);
    expect(apart_dB(rigid, loose, (p) => p.R_dB)).toBeLessThan(0.7);
    expect(apart_dB(rigid, loose, (p) => p.Ln_dB)).toBeLessThan(0.7);
    if (support === 'separate-joists') return;
    expect(apart_dB(rigid, loose, (p) => p.impactPaths_dB.supports!)).toBeLessThan(0.7);
    expect(apart_dB(rigid, loose, (p) => p.paths_dB.supports!)).toBeLessThan(0.7);
  });

  it('lies apart from the deck on a soft one', () => {
    const soft = floating(laid, 'direct', 5e6);
    expect(apart_dB(soft, lying(laid, 'direct'), (p) => p.Ln_dB)).toBeGreaterThan(20);
  });
});

describe('a second board below the ceiling on a rigid mat', () => {
  const osb = leaf([sheet('osb', 0.018)]);
  const boards = [sheet('gypsum-board', 0.0125), sheet('gypsum-board', 0.025)] as const;

  it.each(['direct', 'resilient-channel', 'clips'] as const)(
    'does as screwed to the first, the ceiling held %s',
    (support) => {
      const rigid = predict(floor(osb, below(support), leaf([boards[0]]), mat('mat', 0.001, RIGID), leaf([boards[1]])));
      const loose = predict(floor(osb, below(support), leaf([...boards])));
      expect(apart_dB(rigid, loose, (p) => p.R_dB)).toBeLessThan(0.7);
      expect(apart_dB(rigid, loose, (p) => p.Ln_dB)).toBeLessThan(0.7);
    },
  );
});
