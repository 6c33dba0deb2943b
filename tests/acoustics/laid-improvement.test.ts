import { describe, expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { improvementOf } from '#src/acoustics/improvement.ts';
import { laidImprovement } from '#src/acoustics/laid-improvement.ts';
import { predict } from '#src/acoustics/predict.ts';
import { laidOnStandardSlab, STANDARD_SLAB } from '#src/acoustics/standard-slab.ts';
import { cavity, covering, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const slab = leaf([sheet('concrete', 0.14)]);
const screed = leaf([sheet('cement-screed', 0.05)]);
const dry = leaf([sheet('dry-screed', 0.025)]);
const deck = leaf([sheet('plywood', 0.019)]);
const ceiling = leaf([sheet('gypsum-board', 0.0127)]);
const soft = mat('soft mat', 0.02, 1e7);
const stiff = mat('stiff mat', 0.006, 4e7);
const carpet = covering('carpet');

describe('what lies on a floor', () => {
  it('is laid on 140 mm of concrete of 10 m², whatever carries it, hangs below it and goes around it', () => {
    const walls = { R500_dB: 58, slope_dB_per_octave: 3 };
    const floor: Construction = {
      ...isolated(screed, soft, deck, cavity(), ceiling),
      length_m: 6,
      flanking: walls,
      leaks: [{ name: 'slit', width_m: 0.001, length_m: 1, depth_m: 0.1 }],
      covering: carpet,
    };
    expect(laidOnStandardSlab(floor)).toEqual({ ...isolated(screed, soft, slab), covering: carpet });
    expect(STANDARD_SLAB).toEqual(isolated(slab));
  });

  it('is every leaf on a mat down to the one that lies on none, and the covering alone where none does', () => {
    expect(laidOnStandardSlab(isolated(dry, soft, screed, stiff, deck, cavity(), ceiling, stiff, dry))).toEqual(
      isolated(dry, soft, screed, stiff, slab),
    );
    const raised = isolated(deck, cavity({ joists: 'none' }), dry, soft, slab);
    expect(laidOnStandardSlab({ ...raised, covering: carpet })).toEqual({ ...isolated(slab), covering: carpet });
  });

  it.each([
    ['a slab alone', isolated(slab)],
    ['boards on joists', isolated(leaf([sheet('cement-screed', 0.05), sheet('plywood', 0.019)]), cavity(), ceiling)],
    ['a screed of thickness 0', isolated(leaf([sheet('cement-screed', 0)]), soft, slab)],
    ['a screed on a mat of thickness 0', isolated(screed, mat('none', 0, 1e7), slab)],
  ])('is nothing on %s', (_, floor) => {
    expect(laidOnStandardSlab(floor)).toBeUndefined();
    expect(laidImprovement(floor)).toBeUndefined();
  });
});

describe('what it takes off impact sound', () => {
  // ISO 12354-2 for screeds and dry floors: mat-under-load.test.ts; DIN 4109 for coverings: impact.test.ts.

  it('does as the reference covering of ISO 717-2, Annex B, by its stiffness: ΔLw 19, ΔIIC 23 (delta-ratings.test.ts), ±1', () => {
    const { dLw, dIIC } = laidImprovement({
      ...isolated(deck, cavity(), ceiling),
      covering: { ...carpet, contactStiffness_N_m: 6e5 },
    })!;
    expect(Math.abs(dLw - 19)).toBeLessThanOrEqual(1);
    expect(Math.abs(dIIC - 23)).toBeLessThanOrEqual(1);
  });

  it('is the drop of Ln band by band, and f0 that of the floating leaf on the slab, worked by hand', () => {
    const { bands_Hz, dL_dB, floatingResonance_Hz } = laidImprovement(isolated(screed, soft, deck), {
      lowestBand_Hz: 20,
    })!;
    expect(bands_Hz[0]).toBe(20);
    const bare = predict(isolated(slab), { lowestBand_Hz: 20 });
    const laid = predict(isolated(screed, soft, slab), { lowestBand_Hz: 20 });
    expect(dL_dB).toEqual(bands_Hz.map((_, i) => bare.Ln_dB[i]! - laid.Ln_dB[i]!));
    // 110 kg/m² on s′ = 10 MN/m³ as stiff as under 200 kg/m², over 322 kg/m².
    const stiffness_N_m3 = 1e7 * Math.cbrt(110 / 200);
    expect(floatingResonance_Hz).toBeCloseTo(Math.sqrt(stiffness_N_m3 * (1 / 110 + 1 / 322)) / (2 * Math.PI), 3);
    expect(laidImprovement({ ...isolated(slab), covering: carpet })).not.toHaveProperty('floatingResonance_Hz');
  });

  it.each([
    ['carpet', isolated(slab), carpet],
    ['vinyl on foam', isolated(slab), covering('vinyl-plank')],
    ['a cement screed', isolated(screed, soft, slab), undefined],
    ['a dry screed on a stiff mat', isolated(dry, stiff, slab), undefined],
  ] as const)('of %s is the same on the 150 mm of ASTM E2179 (from memory) within 1 dB', (_, floor, on) => {
    const thicker = leaf([sheet('concrete', 0.15)]);
    const struck = { ...floor, ...(on && { covering: on }) };
    const laid = predict({ ...struck, layers: [...floor.layers.slice(0, -1), thicker] });
    const other = improvementOf(predict(isolated(thicker)), laid);
    const own = laidImprovement(struck)!;
    expect(Math.abs(own.dIIC - other.dIIC)).toBeLessThanOrEqual(1);
    expect(Math.abs(own.dLw - other.dLw)).toBeLessThanOrEqual(1);
  });
});
