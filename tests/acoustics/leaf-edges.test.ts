import { expect, it } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import { massLaw_dB } from '#src/acoustics/simple/mass-law.ts';
import { cavity, leaf, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

it('a joist floor with its ceiling screwed direct holds back below half the first resonance of its boards what its mass does, within 4 dB (field incidence mass law)', () => {
  const floor = isolated(leaf([sheet('plywood', 0.019)]), cavity(), leaf([sheet('gypsum-board', 0.0127)]));
  const { R_dB, surfaceMass_kg_m2 } = predict(floor);
  // 13 mm gypsum board between joists 406 mm apart resonates at 144 Hz.
  [50, 63].forEach((f_Hz, i) => {
    const expected = massLaw_dB({ frequency_Hz: f_Hz, surfaceMass_kg_m2, incidence: 'field' });
    expect(Math.abs(R_dB[i]! - expected), `${f_Hz} Hz`).toBeLessThanOrEqual(4);
  });
});
