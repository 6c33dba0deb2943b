import { describe, expect, it } from 'vitest';
import type { ImpactBands } from '#src/acoustics/band-energies.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { raiseToFloatingLimit } from '#src/acoustics/floating-limit.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { normalisedImpactLevel_dB } from '#src/acoustics/impact.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { quadratureFor } from '#src/acoustics/quadrature.ts';
import { cavity, covering, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const BANDS_HZ = [50, 125, 500, 2000];
const EXACT_HZ = [50.12, 125.9, 501.2, 1995];
const slab = leaf([sheet('concrete', 0.14)]); // 322 kg/m²
const screed = leaf([sheet('cement-screed', 0.05)]); // 110 kg/m²
const dry = leaf([sheet('dry-screed', 0.025)]); // 22.5 kg/m²

/** A floor of which next to nothing comes down, one part through supports to three direct, after it was raised. */
function raised(construction: Construction, direct = 3e-20): ImpactBands {
  const model = floorModel(construction, MODEL_CONSTANTS);
  const energies = (power: number) => Float64Array.from(BANDS_HZ, () => power);
  const impact = { direct: energies(direct), supports: energies(direct / 3) };
  raiseToFloatingLimit(model, BANDS_HZ, quadratureFor(model), impact);
  return impact;
}

const levels_dB = ({ direct, supports }: ImpactBands) =>
  BANDS_HZ.map((_, i) => normalisedImpactLevel_dB(direct[i]! + supports[i]!, 1.204 * 343.2));

function bare_dB(construction: Construction): number[] {
  const { bands_Hz, Ln_dB } = predict(construction);
  return BANDS_HZ.map((band_Hz) => Ln_dB[bands_Hz.indexOf(band_Hz)]!);
}

describe('the most that a floor on a mat gains (slopes of EN 12354-2:2000, Annex C)', () => {
  it.each([
    ['cast', screed, 110, 30, slab, 322],
    ['dry', dry, 22.5, 40, slab, 322],
    ['cast, on a light deck', screed, 110, 30, leaf([sheet('osb', 0.018)]), 10.8],
  ] as const)('%s: by its slope above f0, and what its mass adds to that below', (_, top, m1, slope_dB, below, m2) => {
    const declared = 10e6;
    const f0_Hz = Math.sqrt((declared * Math.cbrt(m1 / 200)) / m1) / (2 * Math.PI);
    const levels = levels_dB(raised(isolated(top, mat('mat', 0.02, declared), below)));
    bare_dB(isolated(below)).forEach((bare, i) => {
      if (EXACT_HZ[i]! < f0_Hz) return;
      const gained = slope_dB * Math.log10(EXACT_HZ[i]! / f0_Hz) + 20 * Math.log10(1 + m1 / m2);
      expect(Math.abs(bare - levels[i]! - gained), `${BANDS_HZ[i]} Hz`).toBeLessThan(0.02);
    });
  });

  it('counts from what is below as struck through the same covering, which softens the blow first', () => {
    const under = covering('carpet');
    const f0_Hz = Math.sqrt((10e6 * Math.cbrt(112 / 200)) / 112) / (2 * Math.PI); // screed and carpet on the mat
    const levels = levels_dB(raised({ ...isolated(screed, mat('mat', 0.02, 10e6), slab), covering: under }));
    bare_dB({ ...isolated(slab), covering: under }).forEach((below, i) => {
      if (EXACT_HZ[i]! < f0_Hz) return;
      const gained = 30 * Math.log10(EXACT_HZ[i]! / f0_Hz) + 20 * Math.log10(1 + 112 / 322);
      expect(Math.abs(below - levels[i]! - gained), `${BANDS_HZ[i]} Hz`).toBeLessThan(0.02);
    });
  });

  it('raises both paths by the same factor', () => {
    const { direct, supports } = raised(isolated(screed, mat('mat', 0.02, 10e6), slab));
    BANDS_HZ.forEach((_, i) => {
      expect(direct[i]!).toBeGreaterThan(1e-19);
      expect(direct[i]! / supports[i]!).toBeCloseTo(3, 9);
    });
  });

  it('fades out below f0 with the sixth power of frequency (our own)', () => {
    const declared = 1e9;
    const f0_Hz = Math.sqrt((declared * Math.cbrt(110 / 200)) / 110) / (2 * Math.PI);
    const levels = levels_dB(raised(isolated(screed, mat('mat', 0.02, declared), slab)));
    const bare = bare_dB(isolated(slab));
    for (const i of [0, 1]) {
      const gained = 20 * Math.log10(1 + 110 / 322) - 60 * Math.log10(EXACT_HZ[i]! / f0_Hz);
      expect(Math.abs(bare[i]! - levels[i]! - gained), `${BANDS_HZ[i]} Hz`).toBeLessThan(0.02);
    }
  });

  it('changes nothing of a floor that lies on as good as no mat', () => {
    const floor = isolated(screed, mat('mat', 0.02, 1e12), slab);
    const { Ln_dB } = predict(floor);
    const power = (4e-9 / 4 / (1.204 * 343.2)) * 10 ** (Math.min(...Ln_dB) / 10);
    for (const direct of raised(floor, power).direct) expect(direct).toBe(power);
  });

  it('leaves what gains less, and what lies on no mat', () => {
    const power = 1;
    for (const direct of raised(isolated(screed, mat('mat', 0.02, 10e6), slab), power).direct)
      expect(direct).toBe(power);
    const framed = isolated(leaf([sheet('osb', 0.018)]), cavity(), leaf([sheet('gypsum-board', 0.0125)]));
    for (const direct of raised(framed).direct) expect(direct).toBe(3e-20);
  });
});
