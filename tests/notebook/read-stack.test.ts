import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readStack } from '#src/notebook/read-stack.ts';
import type { Stack } from '#src/notebook/types.ts';
import { CLUB_RUBBER } from './club-rubber.ts';
import { northWall } from './north-wall.ts';

const example = JSON.parse(
  readFileSync(new URL('../../demo-notebooks/one-stack.json', import.meta.url), 'utf8'),
) as Stack;

const FELT = {
  kind: 'fibre',
  key: 'felt',
  name: 'club felt',
  source: 'invented',
  density_kg_m3: 60,
  flowResistivity_Pa_s_m2: 9000,
};

const read = (changes: object) => readStack(JSON.stringify({ ...example, ...changes }));

function messages(changes: object): readonly string[] {
  const reading = read(changes);
  return reading.ok ? [] : reading.problems.map(({ message }) => message);
}

describe('a file of one stack', () => {
  test('is the stack alone where it brings nothing', () => {
    expect(read({})).toEqual({ ok: true, stack: example, materials: [] });
  });

  test('brings its own materials, which its fields then may name, and what goes around it', () => {
    const layers = example.layers.map((l) => (l.kind === 'cavity' ? { ...l, fill: 'felt' } : l));
    const flanking = { kind: 'by the walls', R500_dB: 0, slope_dB_per_octave: 0, walls: [northWall(0.2)] };
    expect(read({ covering: 'rubber', layers, materials: [CLUB_RUBBER, FELT], flanking })).toEqual({
      ok: true,
      stack: { ...example, covering: 'rubber', layers },
      materials: [CLUB_RUBBER, FELT],
      flanking,
    });
  });

  test('keeps where the numbers of a mat come from', () => {
    const deck = { ...example.layers[0], id: 'slab' };
    const numbers = { thickness_m: 0.01, dynamicStiffness_N_m3: 1e7, lossFactor: 0.1 };
    const mat = { kind: 'mat', id: 'mat', name: 'mat', ...numbers, source: 'data sheet, invented' };
    const layers = [deck, mat, ...example.layers];
    expect(read({ layers })).toEqual({ ok: true, stack: { ...example, layers }, materials: [] });
    expect(messages({ layers: [deck, { ...mat, source: 'x'.repeat(1001) }, ...example.layers] })).toEqual([
      expect.stringMatching(/source .*1000 .*\(\/layers\/1\/source\)/),
    ]);
  });

  test.each([
    [
      'a covering that it does not bring',
      { covering: 'rubber', materials: [{ ...CLUB_RUBBER, key: 'other' }] },
      'covering must be a known covering, got "rubber" (/covering)',
    ],
    [
      'a fibre taken for a covering',
      { covering: 'felt', materials: [FELT] },
      'covering must be a known covering, got "felt" (/covering)',
    ],
    [
      'a number beyond its limit',
      { materials: [{ ...FELT, flowResistivity_Pa_s_m2: 1e8 }] },
      'Material “club felt”: flow resistivity in Pa·s/m² must be at most 10000000, got 100000000 (/materials/0/flowResistivity_Pa_s_m2)',
    ],
    [
      'a key that is not its own',
      { materials: [{ ...CLUB_RUBBER, key: 'carpet' }] },
      'Material “club rubber”: key must be unique, got "carpet" once more (/materials/0/key)',
    ],
    [
      'a source that is left out',
      { materials: [{ ...CLUB_RUBBER, source: undefined }] },
      'Material “club rubber”: source must be present, got nothing (/materials/0/source)',
    ],
    [
      'two walls of one id',
      {
        flanking: { kind: 'by the walls', R500_dB: 0, slope_dB_per_octave: 0, walls: [northWall(0.2), northWall(0.3)] },
      },
      'Wall “north wall”: id must be unique, got "north" once more (/flanking/walls/1/id)',
    ],
    ['what only a notebook has', { units: 'SI' }, 'units must be absent (the key is unknown), got "SI" (/units)'],
  ])('is refused with one problem that says what and where, for %s', (_what, changes, message) => {
    expect(messages(changes)).toEqual([message]);
  });
});
