import { describe, expect, it } from 'vitest';
import { MODEL_RESIDUAL_RMS } from '#src/acoustics/model-residuals.ts';
import { AIRBORNE_UNCERTAINTY } from '#src/acoustics/standards/iso-12999-1.ts';
import { LOWEST_MEASURED_BAND_HZ, modelResidual_dB, predictionUncertainty } from '#src/acoustics/uncertainty.ts';

const sigma = new Map(AIRBORNE_UNCERTAINTY.A);
const residual = new Map(MODEL_RESIDUAL_RMS);

describe('uncertainty of a prediction', () => {
  it('is the root of the sum of squares of ISO 12999-1, situation A, and of the residual of the octave', () => {
    const { standard_dB } = predictionUncertainty([400, 500, 630]);
    standard_dB.forEach((u, i) => {
      expect(u ** 2).toBeCloseTo(sigma.get([400, 500, 630][i]!)! ** 2 + residual.get(500)! ** 2, 12);
    });
  });

  it.each([
    [0.68, 'twoSided', 1],
    [0.95, 'twoSided', 1.96],
    [0.95, 'oneSided', 1.65],
    [0.99, 'twoSided', 2.58],
  ] as const)('covers %d %s with k = %d (ISO 12999-1, clause 8, from memory)', (confidence, sides, k) => {
    const { standard_dB, expanded_dB, coverageFactor } = predictionUncertainty([1000], { confidence, sides });
    expect(coverageFactor).toBe(k);
    expect(expanded_dB[0]).toBe(k * standard_dB[0]!);
  });

  it('covers 95 % two-sided unless asked otherwise', () => {
    expect(predictionUncertainty([500])).toEqual(predictionUncertainty([500], { confidence: 0.95, sides: 'twoSided' }));
  });

  it('takes the nearest measured octave beyond the ends, and every third of an octave alike', () => {
    expect(modelResidual_dB(50)).toBe(residual.get(125));
    expect(modelResidual_dB(5000)).toBe(residual.get(4000));
    expect([100, 125, 160].map(modelResidual_dB)).toEqual(Array(3).fill(residual.get(125)));
    expect(modelResidual_dB(200)).toBe(residual.get(250));
  });

  it('names the lowest third of the octaves that are measured: 125 Hz holds 100, 125 and 160 (IEC 61260-1)', () => {
    expect(LOWEST_MEASURED_BAND_HZ).toBe(100);
    expect(modelResidual_dB(80)).toBe(modelResidual_dB(LOWEST_MEASURED_BAND_HZ));
  });

  it('has no value below the bands of ISO 12999-1', () => {
    expect(predictionUncertainty([40, 50]).standard_dB.map(Number.isNaN)).toEqual([true, false]);
  });

  it('refuses a confidence that no factor covers', () => {
    expect(() => predictionUncertainty([500], { confidence: 1 })).toThrow(RangeError);
  });
});
