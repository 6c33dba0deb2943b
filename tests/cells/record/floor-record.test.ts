import { expect, test } from 'vitest';
import { aroundRecord } from '#cells/record/around-record.ts';
import { floorRecord } from '#cells/record/floor-record.ts';
import { materialsRecord } from '#cells/record/materials-record.ts';
import { MATERIAL_SOURCES } from '#src/acoustics/material-sources.ts';
import { MAT_PRODUCTS } from '#src/acoustics/materials.ts';
import { fieldPaths, getField } from '#src/notebook/field-path.ts';
import { NONE } from '#src/notebook/material-lookup.ts';
import type { LeafLayer, MatLayer, Notebook, OwnSheetMaterial, Stack } from '#src/notebook/types.ts';
import { practiceRoom } from '../../browser/practice-room.ts';
import { northWall } from '../../notebook/north-wall.ts';

const ALL = ['base', 'slab', 'hung', 'both'];
const OWN: OwnSheetMaterial = {
  kind: 'sheet',
  key: 'loam-board',
  name: 'loam board',
  source: 'data sheet of the maker, invented',
  form: 'board',
  density_kg_m3: 1450,
  youngsModulus_Pa: 1.2e9,
  poissonRatio: 0.2,
  lossFactor: 0.06,
};

const floorOf = (notebook: Notebook): Stack => notebook.stacks[0]!;

function texts(notebook: Notebook, group: string, label: string): readonly string[] | undefined {
  const found = floorRecord(notebook, floorOf(notebook), ALL).find(({ name }) => name.startsWith(group));
  return found?.rows.find((row) => row.label === label)?.texts;
}

function withFloor(change: (stack: Stack) => Stack, changes: Partial<Notebook> = {}): Notebook {
  const notebook = practiceRoom(changes);
  return { ...notebook, stacks: [change(floorOf(notebook))] };
}

test('the size of the floor, its covering and what differs between scenarios stand side by side', () => {
  const room = practiceRoom();
  expect(texts(room, 'Floor', 'length')).toEqual(Array(4).fill('4 m'));
  expect(texts(room, 'Floor', 'covering')).toEqual(Array(4).fill('none'));
  expect(texts(room, 'deck', 'sheet 1: material')).toEqual([
    'not in it',
    ...['cellular concrete topping', 'not in it', 'cellular concrete topping'],
  ]);
  expect(texts(room, 'deck', 'sheet 1: density')?.[1]).toBe('1760 kg/m³');
  expect(texts(room, 'joists', 'ceiling support')).toEqual([
    ...['screwed direct', 'screwed direct', 'resilient channel', 'resilient channel'],
  ]);
});

test('what is not stated is told as the usual value; what a kind of support has not is a dash', () => {
  const room = practiceRoom();
  expect(texts(room, 'deck', 'sheet 2: density')?.[0]).toBe('600 kg/m³ (usual)');
  const stiffness = texts(room, 'joists', 'stiffness of one support')!;
  expect(stiffness[0]).toBe('–');
  expect(stiffness[2]).toMatch(/^\d+ kN\/m \(usual\)$/);
});

test('every field that the stack states, gaps too, has a row unless it says nothing in any scenario', () => {
  const slit = { kind: 'slit' as const, id: 's', name: 'gap at the wall', width_m: 0.002, length_m: 4, depth_m: 0.03 };
  const room = withFloor((stack) => ({ ...stack, leaks: [slit] }));
  const rows = floorRecord(room, floorOf(room), ALL).flatMap(({ rows: r }) => r);
  const single = floorOf(room).layers.filter((l) => l.kind === 'leaf' && l.sheets.length === 1).length;
  const stated = fieldPaths(floorOf(room)).filter((path) => getField(floorOf(room), path) !== undefined);
  expect(rows.length).toBeGreaterThanOrEqual(stated.length - single);
  expect(texts(room, 'gap at the wall (slit)', 'width')).toEqual(Array(4).fill('2 mm'));
});

test('materials of the notebook’s own come with their numbers and their source, others with theirs', () => {
  const use = (stack: Stack): Stack => ({
    ...stack,
    covering: 'carpet',
    layers: stack.layers.map((l) =>
      l.kind === 'leaf' && l.id !== 'deck' ? { ...l, sheets: [{ material: OWN.key, thickness_m: 0.022 }] } : l,
    ),
  });
  const room = withFloor(use, { materials: [OWN] });
  const record = materialsRecord(room, floorOf(room), ALL);
  expect(record.find(({ isOwn }) => isOwn)).toEqual({
    name: 'loam board',
    isOwn: true,
    numbers: "density 1450 kg/m³, Young's modulus 1.2 GPa, Poisson's ratio 0.2, loss factor 0.06",
    source: 'data sheet of the maker, invented',
  });
  expect(record.map(({ name }) => name)).toEqual(expect.arrayContaining(['carpet', 'plywood']));
  for (const { source } of record) expect(source).not.toBe('not stated');
  // The slab stands only in two scenarios, and no material is told that none of those asked for has.
  const without = materialsRecord(room, floorOf(room), ['base']).map(({ name }) => name);
  expect(without).not.toContain('cellular concrete topping');
  expect(record.every(({ name }) => name !== NONE)).toBe(true);
});

test('every fill of a cavity has its rows and its material, where it is there', () => {
  const fillsAbove = [
    { fill: 'mineral-wool', fillThickness_m: 0.05 },
    { fill: 'glass-fibre', fillThickness_m: { parameter: 'slab' } },
  ];
  const room = withFloor((stack) => ({
    ...stack,
    layers: stack.layers.map((l) => (l.kind === 'cavity' ? { ...l, fillsAbove } : l)),
  }));
  expect(texts(room, 'joists', 'second fill')).toEqual(Array(4).fill('mineral wool batt'));
  expect(texts(room, 'joists', 'second fill thickness')).toEqual(Array(4).fill('50 mm'));
  expect(texts(room, 'joists', 'third fill')).toEqual([
    'not in it',
    'glass fibre batt',
    'not in it',
    'glass fibre batt',
  ]);
  expect(texts(room, 'joists', 'third fill thickness')).toEqual(['–', '38 mm', '–', '38 mm']);
  const named = (ids: readonly string[]) => materialsRecord(room, floorOf(room), ids).map(({ name }) => name);
  expect(named(['base'])).toContain('mineral wool batt');
  expect(named(['base'])).not.toContain('glass fibre batt');
  expect(named(['slab'])).toContain('glass fibre batt');
});

test('mats come with their source where they are in the floor: the known ones’, the stated one, or that none is stated', () => {
  const { key, name, ...known } = MAT_PRODUCTS[0]!;
  const own = { thickness_m: 0.01, dynamicStiffness_N_m3: 1e7, lossFactor: 0.1 };
  const source = 'test report of the club, invented';
  const withMat = (numbers: Partial<MatLayer>, thickness_m = 0.04) =>
    withFloor((stack) => ({
      ...stack,
      layers: [
        { ...(stack.layers[0] as LeafLayer), id: 'slab', sheets: [{ material: 'plywood', thickness_m }] },
        { kind: 'mat', id: 'mat', name: 'mat', ...own, ...numbers },
        ...stack.layers,
      ],
    }));
  const matRecord = (room: Notebook) => materialsRecord(room, floorOf(room), ALL).at(-1)!;
  const numbers = 'as stated above';
  const builtIn = { name: `mat: ${name}`, isOwn: false, numbers, source: MATERIAL_SOURCES.mat[key] };
  expect(matRecord(withMat(known))).toEqual(builtIn);
  expect(matRecord(withMat({ ...known, source: '' }))).toEqual(builtIn);
  expect(matRecord(withMat({ source }))).toEqual({ name: 'mat', isOwn: true, numbers, source });
  expect(matRecord(withMat({}))).toEqual({ name: 'mat', isOwn: true, numbers, source: 'not stated' });
  // Under a slab of no thickness there is no mat.
  expect(matRecord(withMat({ source }, 0)).name).not.toBe('mat');
});

test('a covering of the notebook’s own comes with its numbers and its source', () => {
  const rubber = {
    kind: 'covering',
    key: 'rubber',
    name: 'club rubber',
    source: 'data sheet of the maker, invented',
    surfaceMass_kg_m2: 7,
    thickness_m: 0.005,
    contactStiffness_N_m: 1e6,
  } as const;
  const room = withFloor((stack) => ({ ...stack, covering: 'rubber' }), { materials: [rubber] });
  expect(texts(room, 'Floor', 'covering')).toEqual(Array(4).fill('club rubber'));
  expect(materialsRecord(room, floorOf(room), ALL)[0]).toEqual({
    name: 'club rubber',
    isOwn: true,
    numbers: 'surface mass 7 kg/m², thickness 5 mm, contact stiffness 1000 kN/m',
    source: rubber.source,
  });
});

test('what goes around the floor is told with its numbers', () => {
  const flanking = (changes: Partial<Notebook['flanking']>) =>
    aroundRecord(practiceRoom({ flanking: { kind: 'own', R500_dB: 61, slope_dB_per_octave: 2, ...changes } }));
  expect(flanking({})[0]).toBe(
    'A limit of the notebook’s own: 61 dB at 500 Hz and 2 dB more per octave, for airborne sound only.',
  );
  expect(flanking({ kind: 'ordinary' })[0]).toMatch(/ordinary walls, assumed, not measured: 58 dB at 500 Hz/);
  const [wall] = flanking({ kind: 'by the walls', walls: [northWall(0.05)] });
  expect(wall).toMatch(/length along the floor \d.* m, height of the wall \d.* m; junction /);
});
