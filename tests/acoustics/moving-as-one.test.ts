import { expect, test } from 'vitest';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { movingAsOne_dB } from '#src/acoustics/moving-as-one.ts';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated, limp } from './fixtures.ts';

const asOne = (construction: ReturnType<typeof isolated>, bands_Hz: readonly number[]) =>
  movingAsOne_dB(floorModel(construction, MODEL_CONSTANTS), bands_Hz);

test.each([
  ['50 mm of concrete', 'concrete', 0.05],
  ['150 mm of concrete', 'concrete', 0.15],
  ['6 mm of glass', 'glass', 0.006],
  ['13 mm of gypsum board', 'gypsum-board', 0.0127],
] as const)(
  'one leaf moves as one: %s as the engine has it, but near its critical frequency',
  (_, material, thickness_m) => {
    const construction = isolated(leaf([sheet(material, thickness_m)]));
    const { bands_Hz, R_dB, criticalFrequencies_Hz } = predict(construction, { lowestBand_Hz: 20 });
    const fc_Hz = criticalFrequencies_Hz[0]!.frequency_Hz;
    const found = asOne(construction, bands_Hz);
    bands_Hz.forEach((band_Hz, i) => {
      // Thick plates soften, so that the critical frequency moves up a little.
      const toCoincidence = band_Hz / fc_Hz;
      if (toCoincidence < 0.7 || toCoincidence > 1.5) expect(found[i], `${band_Hz} Hz`).not.toBeNaN();
      if (toCoincidence > 0.9 && toCoincidence < 1.25) expect(found[i], `${band_Hz} Hz`).toBeNaN();
      const most_dB = toCoincidence < 1 ? 0.4 : 1.1;
      if (!Number.isNaN(found[i])) expect(Math.abs(found[i]! - R_dB[i]!), `${band_Hz} Hz`).toBeLessThan(most_dB);
    });
  },
);

test('what lies between the leaves has no part in it', () => {
  const [upper, lower] = [leaf([limp(10)]), leaf([limp(15)])];
  const bands_Hz = [50, 100, 200, 400];
  const one = asOne(isolated(leaf([limp(10), limp(15)])), bands_Hz);
  const apart = asOne(isolated(upper, cavity({ joists: 'none', depth_m: 0.1, supportHeight_m: 0 }), lower), bands_Hz);
  const floating = asOne(isolated(upper, mat('mat', 0.02, 1e7), lower), bands_Hz);
  one.forEach((value, i) => {
    expect(apart[i]).toBeCloseTo(value, 6);
    expect(floating[i]).toBeCloseTo(value, 6);
  });
});
