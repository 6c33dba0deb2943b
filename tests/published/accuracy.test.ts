import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { compare, ratingError } from '#src/commands/accuracy-compare.ts';
import { FITTED_CONSTANTS, misfit } from '#src/commands/accuracy-fit.ts';
import { constantsWithout, FITTED_IDS, STORED_FOLDS } from '#src/commands/accuracy-folds.ts';
import { accuracyReport, errorsOf, mean, meanAbsolute, rms, worst } from '#src/commands/accuracy-report.ts';
import { floor, leaf, sheet } from './reference-constructions.ts';

describe('the accuracy table', () => {
  it('in the repository is what the engine gives now (npm run accuracy -- --write)', () => {
    const written = readFileSync(new URL('../../src/acoustics/ACCURACY.md', import.meta.url), 'utf8');
    expect(written).toBe(accuracyReport());
  });

  it('is made with the constants of the last fit', () => {
    for (const { key } of FITTED_CONSTANTS) expect(MODEL_CONSTANTS[key], key).toBe(STORED_FOLDS.all![key]);
  });

  it('rests on a fit that no step of 5 % in one constant improves much', () => {
    const best = misfit(MODEL_CONSTANTS, FITTED_IDS);
    for (const { key } of FITTED_CONSTANTS) {
      for (const step of [0.95, 1.05]) {
        const other = misfit({ ...MODEL_CONSTANTS, [key]: MODEL_CONSTANTS[key] * step }, FITTED_IDS);
        expect(other, `${key} × ${step}`).toBeGreaterThan(best - 0.3);
      }
    }
  });

  it('has no constant at a bound', () => {
    for (const { key, least, most } of FITTED_CONSTANTS) {
      expect(MODEL_CONSTANTS[key], key).toBeGreaterThan(least * 1.02);
      expect(MODEL_CONSTANTS[key], key).toBeLessThan(most / 1.02);
    }
  });
});

describe('measured walls and floors, each left out of the fit (handbook tables and test reports, tests/published/)', () => {
  const errors = errorsOf(FITTED_IDS.map((id) => compare(id, constantsWithout(id))));

  it('STC: mean absolute error within 2.2 points, worst within 6', () => {
    expect(meanAbsolute(errors.STC)).toBeLessThanOrEqual(2.2);
    expect(worst(errors.STC)).toBeLessThanOrEqual(6);
  });

  it('IIC: mean absolute error within 2.5 points', () => {
    expect(meanAbsolute(errors.IIC)).toBeLessThanOrEqual(2.5);
  });

  it('octave bands: 4.4 dB rms, bias within ±3 dB at 125 Hz and ±2 dB above', () => {
    expect(rms(errors.octaves_dB.flat())).toBeLessThanOrEqual(4.4);
    errors.octaves_dB.forEach((band, i) => {
      expect(Math.abs(mean(band)), `octave ${i}`).toBeLessThanOrEqual(i === 0 ? 3 : 2);
    });
  });
});

describe('never fitted', () => {
  it.each(['c75', 'c100', 'c125', 'c150', 'c170', 'c200'] as const)(
    'slab %s: STC within 1 of Warnock, Cast-in-place concrete slabs',
    (id) => {
      expect(Math.abs(ratingError(compare(id, MODEL_CONSTANTS), 'STC')!)).toBeLessThanOrEqual(1);
    },
  );

  it.each(['w3', 'f4'] as const)('%s: STC within 4 of the handbook', (id) => {
    expect(Math.abs(ratingError(compare(id, MODEL_CONSTANTS), 'STC')!)).toBeLessThanOrEqual(4);
  });

  it('floating resonance f0 = (1/2π) √(s′(1/m1 + 1/m2)), s′ under load, stands in the result (own hand-worked case)', () => {
    const top = sheet('cement-screed', 0.05);
    const { resonances_Hz } = predict(
      floor(
        leaf([top]),
        { kind: 'mat', name: 'mat', thickness_m: 0.02, dynamicStiffness_N_m3: 10e6, lossFactor: 0.1 },
        leaf([sheet('concrete', 0.15)]),
      ),
    );
    // m1 = 110, m2 = 345 kg/m²: √(1e7 · ∛(110/200) · (1/110 + 1/345))/2π = 49.88 Hz
    expect(resonances_Hz.find((r) => r.kind === 'floating')!.frequency_Hz).toBeCloseTo(49.88, 1);
  });
});
