import { expect, it } from 'vitest';
import type { Construction, Sheet } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { SHARP_QUADRATURE } from '#src/acoustics/quadrature.ts';
import { cavity, leaf, mat, sheet } from '../published/reference-constructions.ts';

const plate = (thickness_m: number, density_kg_m3: number, youngsModulus_Pa: number, rest: Partial<Sheet>) =>
  sheet('concrete', thickness_m, { density_kg_m3, youngsModulus_Pa, ...rest });

/** Floors that the generators of the property tests found more than 0.1 dB off, to two digits. */
const ONCE_OFF: [why: string, Construction][] = [
  [
    'a film on a mat: the common wave radiates by what it moves, not by the film',
    {
      length_m: 11,
      width_m: 0.3,
      layers: [
        leaf([plate(0.00011, 5, 6.9e8, { poissonRatio: 9.3e-6, lossFactor: 0.0011 })]),
        mat('mat', 0.012, 1.4e6, 1.6),
        leaf([plate(0.026, 5.2, 4e11, { poissonRatio: 0.32, lossFactor: 0.31 })]),
      ],
    },
  ],
  [
    'a thick sheet whose coincidence lies just faster than sound',
    {
      length_m: 0.3,
      width_m: 0.65,
      layers: [
        leaf([
          plate(0.31, 1700, 2e10, { poissonRatio: 0.1, lossFactor: 0.13, form: 'board', contactStiffness_N_m: 8e8 }),
        ]),
      ],
    },
  ],
  [
    'heavy leaves screwed direct, which swing between joists',
    {
      length_m: 5.7,
      width_m: 2,
      layers: [
        leaf(
          [
            plate(0.094, 780, 1.2e9, { poissonRatio: 0.16, lossFactor: 0.061 }),
            plate(0.018, 2500, 2e9, { poissonRatio: 0.22, lossFactor: 0.036 }),
            plate(0.029, 1900, 4.9e9, { poissonRatio: 2.4e-6, lossFactor: 0.1 }),
          ],
          'damped',
        ),
        cavity({
          joists: 'open-truss',
          depth_m: 0.046,
          joistWidth_m: 0.06,
          joistSpacing_m: 0.31,
          fill: [{ name: 'fibre', thickness_m: 0.13, flowResistivity_Pa_s_m2: 7400, density_kg_m3: 20 }],
        }),
        leaf([
          plate(0.099, 1200, 6.1e9, { poissonRatio: 0.35, lossFactor: 0.011 }),
          plate(0.0072, 1700, 8.7e9, {
            poissonRatio: 0.043,
            lossFactor: 0.022,
            form: 'board',
            contactStiffness_N_m: 1.9e6,
          }),
          plate(0.0062, 530, 4.6e9, { poissonRatio: 0.06, lossFactor: 0.016 }),
        ]),
      ],
    },
  ],
];

it.each(ONCE_OFF)('%s: within 0.1 dB of a finer quadrature in every band', (_, floor) => {
  const fine = { ...SHARP_QUADRATURE, frequencies: 16, peakFrequencies: 16, angles: 24, slowWaves: 24 };
  const own = predict(floor);
  const finer = predict(floor, { quadrature: fine });
  own.bands_Hz.forEach((band_Hz, i) => {
    expect(Math.abs(own.R_dB[i]! - finer.R_dB[i]!), `R at ${band_Hz} Hz`).toBeLessThan(0.1);
    expect(Math.abs(own.Ln_dB[i]! - finer.Ln_dB[i]!), `Ln at ${band_Hz} Hz`).toBeLessThan(0.1);
  });
});
