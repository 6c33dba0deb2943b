import { describe, expect, test } from 'vitest';
import { CHECKED_RANGES, type CheckedKey, outsideChecked, UNCHECKED_KINDS } from '#src/acoustics/checked-range.ts';
import type { Cavity, Construction } from '#src/acoustics/construction.ts';
import { outsideCheckedText } from '#src/notebook/checked-words.ts';
import {
  cavity,
  floor,
  leaf,
  mat,
  REFERENCE_CONSTRUCTIONS,
  REFERENCE_ROLES,
  type ReferenceId,
  sheet,
} from '../published/reference-constructions.ts';

const IDS = Object.keys(REFERENCE_CONSTRUCTIONS) as ReferenceId[];
/** Every row of the accuracy table that is fitted or judged. */
const CHECKED = IDS.filter((id) => REFERENCE_ROLES[id] !== 'printed');
const ROWS = CHECKED.map((id) => REFERENCE_CONSTRUCTIONS[id]);

const cavitiesOf = ({ layers }: Construction) => layers.filter((layer) => layer.kind === 'cavity');
const leavesOf = ({ layers }: Construction) => layers.filter((layer) => layer.kind === 'leaf');
const sheetsOf = (row: Construction) => leavesOf(row).flatMap((l) => l.sheets);
const thicknesses = (row: Construction, form: 'slab' | 'board') =>
  sheetsOf(row).flatMap((s) => (s.form === form ? s.thickness_m : []));

/** What a row has. */
const HELD: Readonly<Record<CheckedKey, (row: Construction) => readonly number[]>> = {
  joistDepth_m: (row) => cavitiesOf(row).map((c) => c.depth_m),
  joistSpacing_m: (row) => cavitiesOf(row).map((c) => c.joistSpacing_m),
  joistWidth_m: (row) => cavitiesOf(row).map((c) => c.joistWidth_m),
  slabThickness_m: (row) => thicknesses(row, 'slab'),
  boardThickness_m: (row) => thicknesses(row, 'board'),
  sheetDensity_kg_m3: (row) => sheetsOf(row).map((s) => s.density_kg_m3),
  sheetLossFactor: (row) => sheetsOf(row).map((s) => s.lossFactor),
  sheetsInLeaf: (row) => leavesOf(row).map((l) => l.sheets.length),
  leafMass_kg_m2: (row) =>
    leavesOf(row).map((l) => l.sheets.reduce((sum, s) => sum + s.thickness_m * s.density_kg_m3, 0)),
  leaves: (row) => [leavesOf(row).length],
  cavities: (row) => [cavitiesOf(row).length].filter((n) => n > 0),
  matStiffness_N_m3: ({ layers }) => layers.flatMap((l) => (l.kind === 'mat' ? l.dynamicStiffness_N_m3 : [])),
  fillFlowResistivity_Pa_s_m2: (row) => cavitiesOf(row).flatMap((c) => c.fill.map((f) => f.flowResistivity_Pa_s_m2)),
};
const KEYS = Object.keys(HELD) as CheckedKey[];

test.each(KEYS)('%s: the range is what the fitted and judged rows of the accuracy table span', (key) => {
  const { least, most } = CHECKED_RANGES[key];
  const held = ROWS.flatMap(HELD[key]);
  expect(Math.min(...held)).toBeCloseTo(least, 6);
  expect(Math.max(...held)).toBeCloseTo(most, 6);
});

/** The rows that a text names: "w4", or "t5 to t7". */
const idsIn = (text: string) => text.match(/\b[a-z]\d+\b/g) ?? [];

test.each(KEYS)('%s: the rows that the reason names as its limits have them', (key) => {
  const { least, most, reason } = CHECKED_RANGES[key];
  // What follows is about what is known beyond, or within.
  const [limits] = reason.split(/;|, of which/) as [string];
  const ids = idsIn(limits);
  for (const id of ids) expect(CHECKED).toContain(id);
  const isNear = (a: number) => (b: number) => Math.abs(a - b) <= 1e-6 * Math.abs(b);
  const has = (limit: number) =>
    ids.filter((id) => HELD[key](REFERENCE_CONSTRUCTIONS[id as ReferenceId]).some(isNear(limit)));
  expect([...new Set([...has(least), ...has(most)])].toSorted()).toEqual([...ids].toSorted());
  if (least !== most) expect(has(most)).not.toEqual([]);
  if (limits.includes('from')) expect(has(least)).not.toEqual([]);
});

test('every row that a reason names is one of the table, and one that it calls printed is', () => {
  const reasons = [...Object.values(CHECKED_RANGES).map(({ reason }) => reason), ...Object.values(UNCHECKED_KINDS)];
  for (const id of reasons.flatMap(idsIn)) expect(IDS).toContain(id);
  for (const [, from, to] of reasons.join().matchAll(/printed only \((\w+) to (\w+)\)/g))
    for (const id of IDS.slice(IDS.indexOf(from as ReferenceId), IDS.indexOf(to as ReferenceId) + 1))
      expect(REFERENCE_ROLES[id]).toBe('printed');
  expect(reasons.join()).toContain('printed only (');
});

test('what no row has is told in words that need no table beside them', () => {
  for (const reason of Object.values(UNCHECKED_KINDS)) {
    expect(reason).toMatch(/^no measured floor with .+ was at hand[;:] /);
    expect(reason).not.toMatch(/\brows?\b|table|\.md|\b[a-z]\d+\b/);
  }
});

test('no fitted or judged row is outside of what was checked', () => {
  for (const row of ROWS) expect(outsideChecked(row)).toEqual([]);
});

test('no fitted or judged row has spring hangers, joists of the ceiling’s own, or a cavity without joists', () => {
  expect(
    ROWS.flatMap(cavitiesOf).filter(
      (c) => c.support === 'hangers' || c.support === 'separate-joists' || c.joists === 'none',
    ),
  ).toEqual([]);
});

const board = sheet('gypsum-board', 0.0127);
const deck = leaf([sheet('plywood', 0.019)]);
const said = (construction: Construction, units: 'SI' | 'inch-pound' = 'SI') =>
  outsideChecked(construction).map((outside) => outsideCheckedText(outside, units));
const framed = (change: Partial<Cavity>) => floor(deck, cavity(change), leaf([board]));

describe('outside', () => {
  test.each<[string, Construction, string]>([
    ['joists of 2 m', framed({ depth_m: 2 }), 'joists 2000 mm deep (checked 63.5 to 457 mm)'],
    ['joists of 10 mm', framed({ depth_m: 0.01 }), 'joists 10 mm deep (checked 63.5 to 457 mm)'],
    ['joists 5 m apart', framed({ joistSpacing_m: 5 }), 'joists 5000 mm apart (checked 406 to 610 mm)'],
    [
      'a film of topping',
      floor(leaf([sheet('gypsum-concrete', 0.003), ...deck.sheets]), cavity(), leaf([board])),
      'gypsum concrete topping 3 mm thick (checked 25.4 to 200 mm)',
    ],
    [
      'a stiff mat',
      floor(leaf([sheet('concrete', 0.05)]), mat('rubber', 0.003, 200e6), deck),
      'rubber of 200 MN/m³ (checked 6 to 50 MN/m³)',
    ],
    [
      'a board that loses next to nothing',
      floor(deck, cavity(), leaf([{ ...board, lossFactor: 0.0003 }])),
      'gypsum board with a loss factor of 0.0003, which counts as 0.001 (checked 0.01 to 0.3)',
    ],
    [
      'two cavities',
      floor(deck, cavity(), leaf([board]), cavity(), leaf([board])),
      '2 cavities one below the other (checked 1)',
    ],
    ['hangers', framed({ support: 'hangers' }), 'spring hangers (no measured one was at hand)'],
    ['no joists', framed({ joists: 'none' }), 'a cavity without joists (no measured one was at hand)'],
  ])('%s', (_, construction, text) => {
    expect(said(construction)).toEqual([text]);
  });

  test('fifty layers of half a millimetre', () => {
    const films = Array.from({ length: 50 }, () => ({ ...board, thickness_m: 0.0005 }));
    expect(said(floor(deck, cavity(), leaf(films)))).toEqual([
      '50 sheets on each other (checked 1 to 2)',
      'gypsum board 0.5 mm thick (checked 3 to 160 mm)',
    ]);
  });

  test('is said once for each number, of the value that lies farthest out', () => {
    const two = leaf([
      { ...board, thickness_m: 0.001 },
      { ...board, thickness_m: 0.0002 },
    ]);
    expect(said(floor(deck, cavity(), two))).toContain('gypsum board 0.2 mm thick (checked 3 to 160 mm)');
  });

  test('reads in inches too', () => {
    expect(said(framed({ joistSpacing_m: 5 }), 'inch-pound')).toEqual(['joists 196.9 in apart (checked 16 to 24 in)']);
  });
});

test('inside, near enough, absent or nothing left: no remark', () => {
  expect(said(framed({ joistSpacing_m: 0.35, depth_m: 0.5 }))).toEqual([]);
  expect(said(floor(deck, cavity({ depth_m: 0 }), leaf([{ ...board, thickness_m: 0 }])))).toEqual([]);
  expect(said(floor(leaf([{ ...board, thickness_m: 0 }])))).toEqual([]);
});
