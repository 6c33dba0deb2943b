import { describe, expect, it } from 'vitest';
import type { Cavity } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, fibre, leaf, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const boards = (layers: number) => leaf(Array.from({ length: layers }, () => sheet('gypsum-board', 0.0127)));
const steelStud = { joists: 'cold-formed-steel', depth_m: 0.0635, joistWidth_m: 0.032, joistSpacing_m: 0.61 } as const;
const woodStud = { depth_m: 0.089 };
const withFibre = (frame: Partial<Cavity>) => ({ ...frame, fill: [fibre('glass-fibre', frame.depth_m!)] });

describe('walls of unequal leaves', () => {
  it.each([
    ['wood studs', woodStud],
    ['wood studs and fibre', withFibre(woodStud)],
    ['steel studs', steelStud],
    ['steel studs and fibre', withFibre(steelStud)],
  ])(
    'on %s keep out as much from either side: every band within 1 dB, STC within a point (reciprocity)',
    (_, frame) => {
      const thin = predict(isolated(boards(1), cavity(frame), boards(3)));
      const thick = predict(isolated(boards(3), cavity(frame), boards(1)));
      thin.R_dB.forEach((R, i) => {
        expect(Math.abs(R - thick.R_dB[i]!), `${thin.bands_Hz[i]} Hz`).toBeLessThan(1);
      });
      expect(Math.abs(thin.ratings.STC - thick.ratings.STC)).toBeLessThanOrEqual(1);
    },
  );
});
