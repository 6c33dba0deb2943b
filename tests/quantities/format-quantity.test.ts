import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  displayValue,
  formatQuantity,
  formatValue,
  fromDisplayValue,
  unitOf,
} from '#src/quantities/format-quantity.ts';
import { KINDS, kindOf, type QuantityKind, shownUnit, type UnitSystem } from '#src/quantities/kinds.ts';
import { parseQuantity } from '#src/quantities/parse-quantity.ts';

const ALL_KINDS = Object.keys(KINDS) as QuantityKind[];
const SYSTEMS: readonly UnitSystem[] = ['SI', 'inch-pound'];

describe('shows as many digits as a value deserves', () => {
  it.each<[number, QuantityKind, UnitSystem, string]>([
    [0.038, 'length', 'SI', '38 mm'],
    [0.0127, 'length', 'SI', '12.7 mm'],
    [0.01588, 'length', 'SI', '15.9 mm'],
    [1.2345, 'length', 'SI', '1235 mm'],
    [0.0381, 'length', 'inch-pound', '1 1/2 in'],
    [0.038, 'length', 'inch-pound', '1 1/2 in'],
    [0.0159, 'length', 'inch-pound', '5/8 in'],
    [0.013, 'length', 'inch-pound', '0.512 in'],
    [0.0005, 'length', 'inch-pound', '0.02 in'],
    [0.15, 'length', 'inch-pound', '5.91 in'],
    [0.36, 'length', 'inch-pound', '14.17 in'],
    [0.0254 * 0.9996, 'length', 'inch-pound', '1 in'],
    [0.3048, 'length', 'inch-pound', '12 in'],
    [0, 'length', 'inch-pound', '0 in'],
    [-0.0127, 'length', 'inch-pound', '−1/2 in'],
    [0.0254 * 14.1925, 'length', 'inch-pound', '14 3/16 in'],
    [0.0254 * 100.25, 'length', 'inch-pound', '100 1/4 in'],
    [Number.POSITIVE_INFINITY, 'length', 'inch-pound', '∞ in'],
    [1e30, 'length', 'inch-pound', '3.937e+31 in'],
    [4.2, 'span', 'SI', '4.2 m'],
    [4.2, 'span', 'inch-pound', '13 ft 9 3/8 in'],
    [3.9624, 'span', 'inch-pound', '13 ft'],
    [3.9623, 'span', 'inch-pound', '13 ft'],
    [0.1524, 'span', 'inch-pound', '6 in'],
    [1760, 'density', 'SI', '1760 kg/m³'],
    [1760, 'density', 'inch-pound', '110 lb/ft³'],
    [66.9, 'surface-mass', 'SI', '66.9 kg/m²'],
    [8.333333, 'surface-mass', 'SI', '8.33 kg/m²'],
    [31.62, 'frequency', 'SI', '31.6 Hz'],
    [1250, 'frequency', 'SI', '1250 Hz'],
    [400e3, 'stiffness', 'SI', '400 kN/m'],
    [10e6, 'dynamic-stiffness', 'SI', '10 MN/m³'],
    [2.1e9, 'modulus', 'SI', '2.1 GPa'],
    [8000, 'flow-resistivity', 'SI', '8 kPa·s/m²'],
    [52.449, 'level', 'SI', '52.4 dB'],
    [-3.04, 'level', 'SI', '−3 dB'],
    [-0.001, 'level', 'SI', '0 dB'],
    // 0 means absent: what is not 0 must not read so.
    [0.00001, 'length', 'SI', '0.01 mm'],
    [-0.00004, 'length', 'SI', '−0.04 mm'],
    [0.00001, 'length', 'inch-pound', '0.0004 in'],
    [0.0004, 'span', 'SI', '0.0004 m'],
    [0.0004, 'span', 'inch-pound', '0.02 in'],
    [1e-16, 'length', 'SI', '0 mm'],
    [0, 'length', 'SI', '0 mm'],
    [0.0375, 'ratio', 'SI', '0.0375'],
    [Number.NaN, 'level', 'SI', '–'],
    [Number.POSITIVE_INFINITY, 'level', 'SI', '∞ dB'],
  ])('%d as a %s in %s is %s', (value, kind, system, text) => {
    expect(formatQuantity(value, kind, system)).toBe(text);
  });

  it('shows another unit of the same kind when asked, and refuses one of another kind', () => {
    expect(formatQuantity(0.0381, 'length', 'SI', { unit: 'in' })).toBe('1 1/2 in');
    expect(formatValue(4.2, 'length', 'SI', { unit: 'm' })).toBe('4.2');
    expect(() => formatQuantity(1, 'length', 'SI', { unit: 'kg' })).toThrow(
      'unit must be one of mm, cm, m, in, ft, got "kg" (length)',
    );
  });
});

describe.each(SYSTEMS)('in %s', (system) => {
  it.each(ALL_KINDS)('the example for %s can be read, in the unit that is shown', (kind) => {
    const { example } = kindOf(kind);
    expect(parseQuantity(example[system], kind, system).ok).toBe(true);
    expect(unitOf(kind, system)).toBe(shownUnit(kind, system).symbol);
  });

  it.each(ALL_KINDS)('a %s that is shown reads back within the rounding of its text', (kind) => {
    const { factor, symbol } = shownUnit(kind, system);
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (shown) => {
        const value = shown * factor;
        const parsed = parseQuantity(formatQuantity(value, kind, system), kind, system);
        if (!parsed.ok) throw new Error(parsed.message);
        // Half the last decimal, 0.5 % of small values, or a 32nd of an inch.
        const rounding =
          symbol === 'ft' ? 1 / 384 + 1e-9 : Math.max(0.5 * 10 ** -kindOf(kind).decimalsMax, 0.005 * Math.abs(shown));
        expect(Math.abs(parsed.value / factor - shown)).toBeLessThanOrEqual(rounding + 1e-9);
      }),
    );
  });

  it.each(ALL_KINDS)('what is shown of a %s stays the same once read back', (kind) => {
    const { factor } = shownUnit(kind, system);
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (shown) => {
        const text = formatQuantity(shown * factor, kind, system);
        const parsed = parseQuantity(text, kind, system);
        expect(parsed.ok && formatQuantity(parsed.value, kind, system)).toBe(text);
      }),
    );
  });

  it.each(ALL_KINDS)('display values of a %s convert there and back', (kind) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e12, noNaN: true }), (value) => {
        const back = fromDisplayValue(displayValue(value, kind, system), kind, system);
        expect(Math.abs(back / value - 1)).toBeLessThan(1e-14);
      }),
    );
  });
});

describe('every unit', () => {
  it.each(ALL_KINDS)('of a %s can be typed by its symbol and each of its spellings, and means one thing', (kind) => {
    for (const unit of kindOf(kind).units) {
      for (const spelling of [unit.symbol, ...unit.spellings]) {
        const parsed = parseQuantity(`2 ${spelling}`, kind, 'SI');
        if (spelling === '') continue;
        expect(parsed, `2 ${spelling}`).toEqual({ ok: true, value: expect.closeTo(2 * unit.factor, 12) });
      }
    }
  });

  it('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.constantFrom(...ALL_KINDS), (text, kind) => {
        const parsed = parseQuantity(text, kind, 'inch-pound');
        expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.message.startsWith('Expected ')).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

test('a length that rounds up to the least one of full digits is cut off, so that it reads back as itself', () => {
  for (const shown of ['0.04 mm', '-0.04 mm']) {
    const sign = shown.startsWith('-') ? -1 : 1;
    for (const length_m of [4.5e-5, 4.99e-5]) {
      const text = formatQuantity(sign * length_m, 'length', 'SI');
      expect(text.replace('−', '-')).toBe(shown);
      const parsed = parseQuantity(text, 'length', 'SI');
      expect(parsed.ok && formatQuantity(parsed.value, 'length', 'SI')).toBe(text);
    }
  }
});
