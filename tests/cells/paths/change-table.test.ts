import { describe, expect, test } from 'vitest';
import { changeTable, type Studied } from '#cells/paths/change-table.ts';
import { numberName } from '#cells/paths/number-names.ts';
import { studyNumbers } from '#src/acoustics/number-study.ts';
import { predictionUncertainty } from '#src/acoustics/uncertainty.ts';
import { findStack } from '#src/notebook/find.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { studiedNumbers } from '#src/notebook/studied-numbers.ts';
import { practiceRoom } from '../../browser/practice-room.ts';

const notebook = practiceRoom();
const construction = resolveStack(notebook, 'both', 'floor');
const stack = findStack(notebook, 'floor');
const study = studyNumbers(construction, studiedNumbers(construction));
const studied: Studied = { construction, stack, study };

describe('the rows of what would change a floor', () => {
  test('tell 10 % more along the slope: ln 1.1 of it', () => {
    const path = 'layers/1/supportStiffness_N_m';
    const slopes = study.numbers.find((n) => n.path === path)!;
    const row = (sound: 'airborne' | 'impact') =>
      changeTable(studied, sound, 'SI').rows.find((r) => r.path === path)!.effects_dB;
    expect(row('airborne')).toEqual(slopes.dR_dB.map((s) => s * Math.log(1.1)));
    expect(row('impact')).toEqual(slopes.dLn_dB.map((s) => s * Math.log(1.1)));
  });

  test.each(['airborne', 'impact'] as const)(
    'of %s sound stand in the order of what they do from 50 to 160 Hz',
    (sound) => {
      const { rows, bands_Hz } = changeTable(studied, sound, 'SI');
      expect(bands_Hz.slice(0, 6)).toEqual([50, 63, 80, 100, 125, 160]);
      const strengths = rows.map(({ effects_dB }) => Math.hypot(...effects_dB.slice(0, 6)));
      expect(strengths).toEqual(strengths.toSorted((a, b) => b - a));
      expect(rows.length).toBeGreaterThan(8);
    },
  );

  test('leave out and count what one could not see', () => {
    const { rows, idle } = changeTable(studied, 'airborne', 'SI');
    expect(rows.length + idle).toBe(study.numbers.length);
    expect(idle).toBeGreaterThan(0);
    for (const { name, effects_dB } of rows) expect(Math.max(...effects_dB.map(Math.abs)), name).toBeGreaterThan(0.05);
  });

  test('name the number, its place, its value and its assumed range, in the units of the notebook', () => {
    const row = (units: 'SI' | 'inch-pound') =>
      changeTable(studied, 'airborne', units).rows.find((r) => r.path === 'layers/2/sheets/0/thickness_m')!;
    expect(row('SI')).toMatchObject({
      name: 'gypsum board, thickness',
      place: 'ceiling',
      value: '15.9 mm',
      tolerance: '±5 %',
    });
    expect(row('inch-pound').value).toBe('5/8 in');
  });

  test('hold beside the tolerances what model and laboratories leave open, for airborne sound', () => {
    const table = changeTable(studied, 'airborne', 'SI');
    expect(table.byTolerances_dB).toBe(study.standardR_dB);
    expect(table.byModel_dB).toEqual(predictionUncertainty(study.bands_Hz).standard_dB);
    expect(changeTable(studied, 'impact', 'SI')).toMatchObject({ byTolerances_dB: study.standardLn_dB });
    expect(changeTable(studied, 'impact', 'SI').byModel_dB).toBeUndefined();
  });

  test('say which number stands at the edge', () => {
    const edge = { path: 'layers/2/sheets/0/poissonRatio', value: 0.49, tolerance: 0.1, reason: 'too high' };
    const table = changeTable({ ...studied, study: { ...study, atTheEdge: [edge] } }, 'airborne', 'SI');
    expect(table.atTheEdge).toEqual(["gypsum board, Poisson's ratio (ceiling)"]);
  });
});

describe('the name of a number', () => {
  test.each([
    ['layers/0/sheets/1/youngsModulus_Pa', "plywood, Young's modulus", 'deck'],
    ['layers/1/joistSpacing_m', 'joist spacing', 'joists'],
    ['layers/1/supportStiffness_N_m', 'resilient channel, stiffness of one support', 'joists'],
    ['layers/1/fill/0/flowResistivity_Pa_s_m2', 'glass fibre batt, flow resistivity', 'joists'],
  ])('%s is "%s" of the %s', (path, name, place) => {
    expect(numberName(construction, stack, path)).toMatchObject({ name, place });
  });

  test('counts sheets that are called the same', () => {
    const [deck, ...others] = construction.layers;
    const sheets = deck!.kind === 'leaf' ? [deck!.sheets[1]!, deck!.sheets[1]!] : [];
    const twice = { ...construction, layers: [{ ...deck!, sheets }, ...others] } as typeof construction;
    expect(numberName(twice, stack, 'layers/0/sheets/1/thickness_m').name).toBe('plywood (sheet 2), thickness');
  });

  test('counts fills that are called the same', () => {
    const layers = construction.layers.map((layer) =>
      layer.kind === 'cavity' ? { ...layer, fill: [layer.fill[0]!, layer.fill[0]!] } : layer,
    );
    const path = 'layers/1/fill/1/flowResistivity_Pa_s_m2';
    expect(numberName({ ...construction, layers }, stack, path).name).toBe(
      'glass fibre batt (2 from below), flow resistivity',
    );
  });

  test('of a gap is that of its field, counted where several are called the same', () => {
    const slit = { name: 'gap', width_m: 0.001, length_m: 4, depth_m: 0.3 };
    const hole = { name: 'pipe', width_m: 0.02, depth_m: 0.3 };
    const withGaps = { ...construction, leaks: [slit, hole, slit] };
    const names = studiedNumbers(withGaps)
      .filter(({ path }) => path.startsWith('leaks/'))
      .map(({ path }) => numberName(withGaps, stack, path));
    expect(new Set(names.map(({ place }) => place))).toEqual(new Set(['gaps']));
    expect(names.map(({ name }) => name)).toEqual([
      'gap (1), width',
      'gap (1), length',
      'gap (1), depth',
      'pipe, diameter',
      'pipe, depth',
      'gap (3), width',
      'gap (3), length',
      'gap (3), depth',
    ]);
  });

  test('there is for every number that is studied', () => {
    for (const { path } of studiedNumbers(construction))
      expect(numberName(construction, stack, path).name).toMatch(/\w/);
    expect(() => numberName(construction, stack, 'layers/0/colour')).toThrow('path must name a number of a floor');
  });
});
