import { describe, expect, expectTypeOf, it } from 'vitest';
import type { QuantityKind as NotebookKind, UnitSystem as NotebookSystem } from '#src/notebook/types.ts';
import type { QuantityKind, UnitSystem } from '#src/quantities/kinds.ts';
import { parseQuantity } from '#src/quantities/parse-quantity.ts';

function read(text: string, kind: QuantityKind, system: UnitSystem = 'SI', unit?: string): number | string {
  const parsed = parseQuantity(text, kind, system, unit === undefined ? {} : { unit });
  return parsed.ok ? parsed.value : parsed.message;
}

it('knows every kind of quantity and every unit system of the notebook', () => {
  expectTypeOf<NotebookKind>().toExtend<QuantityKind>();
  expectTypeOf<NotebookSystem>().toEqualTypeOf<UnitSystem>();
});

describe('lengths', () => {
  it.each([
    ['38 mm', 0.038],
    ['38mm', 0.038],
    ['3.8 cm', 0.038],
    ['0.038 m', 0.038],
    ['38', 0.038],
    ['37,5', 0.0375],
    ['0,125 m', 0.125],
    ['.5 m', 0.5],
    ['1 1/2 in', 0.0381],
    ['1-1/2"', 0.0381],
    ['1 - 1/2 in.', 0.0381],
    ['1½"', 0.0381],
    ['1 ½ inches', 0.0381],
    ['½ in', 0.0127],
    ['3/8 in', 0.009525],
    ['3⁄8 in', 0.009525],
    ['5/8″', 0.015875],
    ['5\' 6"', 1.6764],
    ['5\'-6"', 1.6764],
    ["5'6''", 1.6764],
    ['5 ft 6 in', 1.6764],
    ['5 ft. 6 in.', 1.6764],
    ['5ft6in', 1.6764],
    ['5’ 6 1/2”', 1.6891],
    ["5' 6", 1.6764],
    ['5 feet', 1.524],
    ['1 m 20 cm', 1.2],
    ['38 MM', 0.038],
    ['  38   mm ', 0.038],
    ['−3 mm', -0.003],
    ['+3 mm', 0.003],
    ['1e2 mm', 0.1],
    ['1 200 mm', 1.2],
    ['1\u202f200 mm', 1.2],
    ['1,234.5 mm', 1.2345],
    ['1.234,5 mm', 1.2345],
    ['0', 0],
  ])('%s', (text, value_m) => {
    expect(read(text, 'length')).toBeCloseTo(value_m, 12);
  });

  it('takes a bare number in the unit that is shown', () => {
    expect(read('2 1/2', 'length', 'inch-pound')).toBe(0.0635);
    expect(read('2 1/2', 'length', 'SI')).toBe(0.0025);
    expect(read('4.2', 'length', 'SI', 'm')).toBe(4.2);
    expect(read('4.2', 'span', 'SI')).toBe(4.2);
    expect(read('13', 'span', 'inch-pound')).toBeCloseTo(3.9624, 12);
  });

  it('reads millimetres as the very number a literal is', () => {
    for (let mm = 1; mm <= 400; mm++)
      expect(read(`${mm} mm`, 'length')).toBe(Number(`0.${String(mm).padStart(3, '0')}`));
  });
});

/** NIST SP 811 (2008), Appendix B.8: the factors as printed there, seven digits. */
describe('units of the trade', () => {
  it.each<[string, QuantityKind, number]>([
    ['110 lb/ft3', 'density', 110 * 16.01846],
    ['110 pcf', 'density', 110 * 16.01846],
    ['110 LB / FT^3', 'density', 110 * 16.01846],
    ['110 lbs per cu. ft', 'density', 110 * 16.01846],
    ['1760 kg/m³', 'density', 1760],
    ['1 760 kg/m^3', 'density', 1760],
    ['1.76 g/cm3', 'density', 1760],
    ['8 lb/ft2', 'surface-mass', 8 * 4.882428],
    ['8 psf', 'surface-mass', 8 * 4.882428],
    ['8 lb/sq ft', 'surface-mass', 8 * 4.882428],
    ['67 kg/m2', 'surface-mass', 67],
    ['8 psf', 'load', 8 * 47.88026],
    ['1.5 kN/m2', 'load', 1500],
    ['2.4 kg', 'mass', 2.4],
    ['5 lb 4 oz', 'mass', 5.25 * 0.4535924],
    ['3 plf', 'line-mass', 3 * 1.488164],
    ['10 MN/m³', 'dynamic-stiffness', 10e6],
    ['10', 'dynamic-stiffness', 10e6],
    ['37 pci', 'dynamic-stiffness', 37 * 271447.1],
    ['400 kN/m', 'stiffness', 400e3],
    ['400 N/mm', 'stiffness', 400e3],
    ['2280 lb/in', 'stiffness', 2280 * 175.1268],
    ['2.1 GPa', 'modulus', 2.1e9],
    ['2100 N/mm²', 'modulus', 2.1e9],
    ['300 ksi', 'modulus', 300 * 6.894757e6],
    ['8 kPa·s/m²', 'flow-resistivity', 8000],
    ['8 kPa s/m2', 'flow-resistivity', 8000],
    ['8 kPa.s/m2', 'flow-resistivity', 8000],
    ['8000 N·s/m⁴', 'flow-resistivity', 8000],
    ['8000 rayl/m', 'flow-resistivity', 8000],
    ['31.5 Hz', 'frequency', 31.5],
    ['1,25 khz', 'frequency', 1250],
    ['52 dB', 'level', 52],
    ['0.05', 'ratio', 0.05],
    ['5 %', 'ratio', 0.05],
    ['10 m²', 'area', 10],
    ['100 sq ft', 'area', 100 * 0.09290304],
    ['1000 ft³', 'volume', 1000 * 0.02831685],
    ['0.5 s', 'time', 0.5],
  ])('NIST SP 811 B.8: %s is a %s', (text, kind, value) => {
    const got = read(text, kind);
    expect(got).toBeTypeOf('number');
    expect(Math.abs((got as number) / value - 1)).toBeLessThan(5e-7);
  });
});

describe('what cannot be read', () => {
  it.each<[string, QuantityKind, UnitSystem, string, number]>([
    ['', 'length', 'SI', 'Expected a length, such as 38 mm; got nothing.', 0],
    ['thick', 'length', 'inch-pound', 'Expected a length, such as 1 1/2 in; got "thick".', 0],
    [
      '38 mn',
      'length',
      'SI',
      'Expected a unit of length (mm, cm, m, in, ft), such as 38 mm; got "mn" at character 4.',
      3,
    ],
    [
      '38 kg/m³',
      'length',
      'SI',
      'Expected a unit of length (mm, cm, m, in, ft) (not a density), such as 38 mm; got "kg/m³" at character 4.',
      3,
    ],
    [
      '2 mPa',
      'modulus',
      'SI',
      'Expected a unit of modulus of elasticity (GPa, MPa, kPa, Pa, N/mm², ksi, psi) (MPa?), such as 2.1 GPa; got "mPa" at character 3.',
      2,
    ],
    [
      '1,760 kg/m³',
      'density',
      'SI',
      'Expected an unmistakable number (1760 or 1.760?), such as 1760 kg/m³; got "1,760 kg/m³".',
      0,
    ],
    [
      '1 1/0 in',
      'length',
      'SI',
      'Expected a fraction that does not divide by 0, such as 1/2; got "1/0 in" at character 3.',
      2,
    ],
    ['1/0 in', 'length', 'inch-pound', 'Expected a fraction that does not divide by 0, such as 1/2; got "1/0 in".', 0],
    [
      '1 3/2 in',
      'length',
      'SI',
      'Expected a fraction below 1 after the whole number, such as 1 1/2; got "3/2 in" at character 3.',
      2,
    ],
    ['6 in 5 ft', 'length', 'SI', 'Expected a unit smaller than in, such as 38 mm; got "ft" at character 8.', 7],
    ['5 ft 6 in 1', 'length', 'SI', 'Expected a smaller unit (mm, cm, m, in, ft), such as 38 mm; got nothing.', 11],
    [
      '38 mm -',
      'length',
      'SI',
      'Expected a number and a smaller unit, or nothing, such as 38 mm; got "-" at character 7.',
      6,
    ],
    ['1.2.3 mm', 'length', 'SI', 'Expected a length, such as 38 mm; got "1.2.3 mm".', 0],
    ['1e999', 'ratio', 'SI', 'Expected a plain number, such as 0.05; got "1e999".', 0],
    [
      '5 dB',
      'ratio',
      'SI',
      'Expected a unit of plain number (%) (not a level), such as 0.05; got "dB" at character 3.',
      2,
    ],
  ])('%j as a %s in %s', (text, kind, system, message, at) => {
    expect(parseQuantity(text, kind, system)).toEqual({ ok: false, message, at });
  });

  it('shortens what was typed when it is very long', () => {
    const parsed = parseQuantity('x'.repeat(10_000), 'length', 'SI');
    expect(parsed.ok || parsed.message.length).toBeLessThan(120);
  });
});
