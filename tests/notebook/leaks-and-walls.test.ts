import { describe, expect, test } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import { addLeak, removeLeak, renameLeak } from '#src/notebook/edits/edit-leaks.ts';
import { addWall, removeWall, updateWall } from '#src/notebook/edits/edit-walls.ts';
import { makeParameter } from '#src/notebook/edits/make-parameter.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { fieldLabel, fieldPaths } from '#src/notebook/field-path.ts';
import { readNotebookValue } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { FlankingWall, Notebook, StackLeak } from '#src/notebook/types.ts';
import { smallNotebook } from './small-notebook.ts';

const GAP: StackLeak = { kind: 'slit', id: 'gap', name: 'gap at the wall', width_m: 0.002, length_m: 3, depth_m: 0.2 };
const PIPE: StackLeak = { kind: 'hole', id: 'pipe', name: 'pipe', diameter_m: 0.03, depth_m: 0.3 };
const WALL: FlankingWall = {
  kind: 'homogeneous',
  id: 'north',
  name: 'north wall',
  junctionLength_m: 4,
  height_m: 2.6,
  junction: 'joists',
  straightK_dB: 6,
  cornerK_dB: 9,
  material: 'calcium-silicate',
  thickness_m: 0.24,
};

const leaky = () => addLeak(addLeak(smallNotebook(), 'floor', GAP), 'floor', PIPE);
const walled = (...walls: FlankingWall[]): Notebook => {
  const notebook = smallNotebook();
  return { ...notebook, flanking: { ...notebook.flanking, kind: 'by the walls', walls } };
};

const problemsOf = (notebook: unknown) => {
  const reading = readNotebookValue(notebook);
  return reading.ok ? [] : reading.problems.map((p) => p.message);
};

describe('leaks of a stack', () => {
  test('reach the engine: a hole without length, a slit with it', () => {
    expect(resolveStack(leaky(), 'existing', 'floor').leaks).toEqual([
      { name: 'gap at the wall', width_m: 0.002, length_m: 3, depth_m: 0.2 },
      { name: 'pipe', width_m: 0.03, depth_m: 0.3 },
    ]);
    expect(resolveStack(smallNotebook(), 'existing', 'floor')).not.toHaveProperty('leaks');
  });

  test('let sound through that is told as a path of its own', () => {
    const tight = predict(resolveStack(smallNotebook(), 'both', 'floor'));
    const open = predict(resolveStack(leaky(), 'both', 'floor'));
    expect(tight.paths_dB).not.toHaveProperty('leaks');
    expect(open.paths_dB.leaks).toHaveLength(21);
    expect(open.ratings.STC).toBeLessThan(tight.ratings.STC);
  });

  test('have fields with names, which can be parameters and differ in a fork', () => {
    const notebook = leaky();
    const path = ['leaks', 0, 'width_m'];
    expect(fieldPaths(notebook.stacks[0]!).filter((p) => p[0] === 'leaks')).toEqual([
      path,
      ['leaks', 0, 'length_m'],
      ['leaks', 0, 'depth_m'],
      ['leaks', 1, 'diameter_m'],
      ['leaks', 1, 'depth_m'],
    ]);
    expect(fieldLabel(notebook.stacks[0]!, path)).toBe('gap at the wall width');
    const sealed = setStackField(makeParameter(notebook, 'floor', path), 'floor', path, 0);
    expect(resolveStack(sealed, 'heavy', 'floor').leaks![0]!.width_m).toBe(0);
    expect(resolveStack(sealed, 'existing', 'floor').leaks![0]!.width_m).toBe(0.002);
    expect(problemsOf(sealed)).toEqual([]);
  });

  test('are renamed and removed by id, and unknown ones refused', () => {
    const renamed = renameLeak(leaky(), 'floor', 'gap', 'crack');
    expect(renamed.stacks[0]!.leaks!.map((l) => l.name)).toEqual(['crack', 'pipe']);
    expect(removeLeak(renamed, 'floor', 'gap').stacks[0]!.leaks).toEqual([PIPE]);
    expect(() => removeLeak(leaky(), 'floor', 'none')).toThrow('leak must be one of the stack\'s, got "none"');
    expect(() => addLeak(leaky(), 'floor', GAP)).toThrow('leak id must be new, got "gap"');
  });

  test('in a file are checked with their place', () => {
    const wrong = leaky() as { stacks: { leaks: Record<string, unknown>[] }[] } & Notebook;
    const [gap, pipe] = wrong.stacks[0]!.leaks as unknown as [StackLeak, StackLeak];
    const withLeaks = (...leaks: unknown[]) => ({
      ...wrong,
      stacks: [{ ...wrong.stacks[0]!, leaks }],
    });
    expect(problemsOf(withLeaks(gap, { ...pipe, id: 'gap' }))).toEqual([
      'Stack “Floor”, leak “pipe”: id must be unique, got "gap" once more (/stacks/0/leaks/1/id)',
    ]);
    expect(problemsOf(withLeaks({ ...gap, width_m: { parameter: 'density' } }))).toEqual([
      'Stack “Floor”, leak “gap at the wall”: the parameter for width must be a length parameter, got a density parameter (/stacks/0/leaks/0/width_m/parameter)',
    ]);
    expect(problemsOf(withLeaks({ ...gap, depth_m: -1 }))).toEqual([
      'Stack “Floor”, leak “gap at the wall”: depth in m must be at least 0, got -1 (/stacks/0/leaks/0/depth_m)',
    ]);
  });
});

describe('flanking by the walls', () => {
  test('reaches the engine with mass and speed of the material', () => {
    expect(resolveStack(walled(WALL), 'existing', 'floor').flanking).toEqual({
      walls: [
        {
          name: 'north wall',
          junctionLength_m: 4,
          height_m: 2.6,
          surfaceMass_kg_m2: 420,
          reduction: { kind: 'homogeneous', thickness_m: 0.24, longitudinalSpeed_m_s: 2600, internalLossFactor: 0.015 },
          junction: { kind: 'joists' },
        },
      ],
    });
  });

  test('of a rated wall and a measured junction passes the numbers on', () => {
    const { material: _m, thickness_m: _t, ...common } = WALL;
    const rated: FlankingWall = { ...common, kind: 'rated', surfaceMass_kg_m2: 60, Rw_dB: 45, junction: 'measured' };
    expect(resolveStack(walled(rated), 'existing', 'floor').flanking).toMatchObject({
      walls: [
        {
          surfaceMass_kg_m2: 60,
          reduction: { kind: 'rated', Rw_dB: 45 },
          junction: { kind: 'measured', straightK_dB: 6, cornerK_dB: 9 },
        },
      ],
    });
  });

  test('without walls is none, and walls wait while another kind is chosen', () => {
    expect(resolveStack(walled(), 'existing', 'floor')).not.toHaveProperty('flanking');
    const other = { ...walled(WALL), flanking: { ...walled(WALL).flanking, kind: 'ordinary' as const } };
    expect(resolveStack(other, 'existing', 'floor').flanking).toEqual({ R500_dB: 58, slope_dB_per_octave: 3 });
    expect(problemsOf(other)).toEqual([]);
  });

  test('walls are added, changed and removed by id', () => {
    const added = addWall(walled(), WALL);
    expect(updateWall(added, { ...WALL, thickness_m: 0.115 }).flanking.walls![0]).toMatchObject({ thickness_m: 0.115 });
    expect(removeWall(added, 'north').flanking.walls).toEqual([]);
    expect(() => addWall(added, WALL)).toThrow('wall id must be new, got "north"');
    expect(() => updateWall(added, { ...WALL, id: 'south' })).toThrow(
      'wall must be one of the notebook\'s, got "south"',
    );
  });

  test('in a file is checked with its place', () => {
    expect(problemsOf(walled(WALL, WALL))).toEqual([
      'Wall “north wall”: id must be unique, got "north" once more (/flanking/walls/1/id)',
    ]);
    expect(problemsOf(walled({ ...WALL, junction: 'glue' as 'tee' }))).toEqual([
      'Wall “north wall”: junction must be "cross" or "tee" or "light-facade" or "joists" or "measured", got "glue" (/flanking/walls/0/junction)',
    ]);
    expect(problemsOf(walled({ ...WALL, height_m: 0 }))).toEqual([
      'Wall “north wall”: height in m must be at least 0.5, got 0 (/flanking/walls/0/height_m)',
    ]);
  });
});
