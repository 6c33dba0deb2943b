import { expect, it } from 'vitest';
import { QUADRATURE } from '#src/acoustics/quadrature.ts';
import { everyNumber, sensitivities } from '#src/acoustics/sensitivities.ts';
import { cavity, fibre, leaf, sheet } from '../published/reference-constructions.ts';
import { isolated, limp } from './fixtures.ts';

it('a limp leaf gains 20/ln 10 = 8.69 dB per relative change of its mass (mass law)', () => {
  const { bands_Hz, parameters } = sensitivities(isolated(leaf([limp(40)])), ['layers/0/sheets/0/density_kg_m3']);
  bands_Hz.forEach((f, i) => {
    if (f >= 200 && f <= 2000) expect(parameters[0]!.dR_dB[i]!, `${f} Hz`).toBeCloseTo(8.69, 0);
  });
});

it('finds every positive number of the layers and gives each finite slopes', () => {
  const floor = isolated(
    leaf([sheet('plywood', 0.016)]),
    cavity({ support: 'clips', fill: [fibre('glass-fibre', 0.1)] }),
    leaf([sheet('gypsum-board', 0.0127)]),
  );
  const { parameters } = sensitivities(floor);
  expect(parameters.map((p) => p.path)).toEqual(everyNumber(floor));
  expect(parameters.map((p) => p.path)).toContain('layers/1/fill/0/flowResistivity_Pa_s_m2');
  for (const { dR_dB, dLn_dB } of parameters) expect([...dR_dB, ...dLn_dB].every(Number.isFinite)).toBe(true);
});

it('compares like with like where the present value stands between two quadratures', () => {
  const board = { ...sheet('gypsum-board', 0.0127), lossFactor: 0.005 };
  const floor = isolated(leaf([sheet('plywood', 0.019)]), cavity(), leaf([board]));
  const path = ['layers/2/sheets/0/lossFactor'];
  const [own, fixed] = [{}, { quadrature: QUADRATURE }].map(
    (options) => sensitivities(floor, path, options).parameters[0]!,
  );
  expect(own!.dR_dB).toEqual(fixed!.dR_dB);
});

it('refuses a path that names no number', () => {
  expect(() => sensitivities(isolated(leaf([limp(10)])), ['layers/7/depth_m'])).toThrow(
    new RangeError('path must name a number of the construction, got "layers/7/depth_m"'),
  );
});
