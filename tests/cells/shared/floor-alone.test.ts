import { expect, it } from 'vitest';
import { floorAlone } from '#cells/shared/floor-alone.ts';
import { predict } from '#src/acoustics/predict.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Flanking } from '#src/notebook/types.ts';
import { practiceRoom } from '../../browser/practice-room.ts';
import { northWall } from '../../notebook/north-wall.ts';

const WALL = northWall(0.05);

const leaks = [{ kind: 'slit', id: 'gap', name: 'gap', width_m: 0.002, length_m: 0.5, depth_m: 0.3 }] as const;

function predicted(scenario: string, flanking: Flanking, withGap = false) {
  const notebook = practiceRoom({ flanking });
  const stacks = notebook.stacks.map((stack) => ({ ...stack, ...(withGap && { leaks }) }));
  return predict(resolveStack({ ...notebook, stacks }, scenario, 'floor'));
}

const limit = { R500_dB: 50, slope_dB_per_octave: 3 };
const none: Flanking = { kind: 'none', ...limit };

it.each([
  ['a limit', { kind: 'own', ...limit }, false],
  ['a limit beside a gap', { kind: 'own', ...limit }, true],
  ['walls one by one', { kind: 'by the walls', ...limit, walls: [WALL] }, false],
] as const)('the floor alone of a prediction with %s is the prediction without it', (_, flanking, gap) => {
  const counted = predicted('both', flanking as Flanking, gap);
  const alone = floorAlone(counted);
  const other = predicted('both', none, gap);
  expect(counted.R_dB.at(-1)).toBeLessThan(other.R_dB.at(-1)!);
  alone.R_dB.forEach((R, i) => {
    expect(R).toBeCloseTo(other.R_dB[i]!, 9);
  });
  alone.Ln_dB.forEach((Ln, i) => {
    expect(Ln).toBeCloseTo(other.Ln_dB[i]!, 9);
  });
  expect(alone.ratings).toEqual(other.ratings);
  expect(Object.keys(alone.paths_dB)).toEqual(Object.keys(other.paths_dB));
});

it('a prediction without flanking is the floor alone already', () => {
  const prediction = predicted('both', none);
  expect(floorAlone(prediction)).toBe(prediction);
});
