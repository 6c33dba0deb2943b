/**
 * Kinds of quantity, the units that people may type for each, and the two that are shown.
 *
 * A unit's factor is the SI value of one of it; the sources of the inch-pound ones stand in `conversion-factors.ts`.
 */
import { FOOT_M, INCH_M, OUNCE_KG, POUND_FORCE_N, POUND_KG, POUND_PER_SQUARE_INCH_PA } from './conversion-factors.ts';

export type UnitSystem = 'SI' | 'inch-pound';

export interface Unit {
  /** As shown; also accepted when typed. */
  readonly symbol: string;
  /** SI value of one unit. */
  readonly factor: number;
  /** Further spellings, without exponents raised and without blanks. */
  readonly spellings: readonly string[];
}

export interface Kind {
  /** What it is called in a message: "expected a length". */
  readonly name: string;
  readonly units: readonly Unit[];
  /** Symbol of the unit shown in each system; it is also what a bare number means. */
  readonly shown: Readonly<Record<UnitSystem, string>>;
  readonly example: Readonly<Record<UnitSystem, string>>;
  /** Significant digits that such a value deserves; whole numbers are never rounded further. */
  readonly significantDigits: number;
  readonly decimalsMax: number;
  /** 0 is not just small but absent: what is not 0 is never shown as 0. */
  readonly zeroIsAbsent?: true;
  /** Several terms may add up, as 5 ft 6 in. */
  readonly compound?: true;
}

function unit(symbol: string, factor: number, ...spellings: string[]): Unit {
  return { symbol, factor, spellings };
}

const MILLIMETRE = unit('mm', 0.001, 'millimetre', 'millimetres', 'millimeter', 'millimeters');
const CENTIMETRE = unit('cm', 0.01, 'centimetre', 'centimetres', 'centimeter', 'centimeters');
const METRE = unit('m', 1, 'metre', 'metres', 'meter', 'meters');
const INCH = unit('in', INCH_M, 'inch', 'inches', '"', '″', '”', "''", '′′', '’’');
const FOOT = unit('ft', FOOT_M, 'foot', 'feet', "'", '′', '’');
const LENGTHS = [MILLIMETRE, CENTIMETRE, METRE, INCH, FOOT];

export const KINDS = {
  length: {
    name: 'length',
    units: LENGTHS,
    shown: { SI: 'mm', 'inch-pound': 'in' },
    example: { SI: '38 mm', 'inch-pound': '1 1/2 in' },
    significantDigits: 4,
    decimalsMax: 1,
    zeroIsAbsent: true,
    compound: true,
  },
  /** The side of a room or the length of a joist. */
  span: {
    name: 'length',
    units: LENGTHS,
    shown: { SI: 'm', 'inch-pound': 'ft' },
    example: { SI: '4.2 m', 'inch-pound': '13 ft 9 in' },
    significantDigits: 4,
    decimalsMax: 3,
    zeroIsAbsent: true,
    compound: true,
  },
  area: {
    name: 'area',
    units: [
      unit('m²', 1, 'sqm'),
      unit('cm²', 1e-4),
      unit('mm²', 1e-6),
      unit('ft²', FOOT_M ** 2, 'sqft', 'sf'),
      unit('in²', INCH_M ** 2, 'sqin'),
    ],
    shown: { SI: 'm²', 'inch-pound': 'ft²' },
    example: { SI: '10 m²', 'inch-pound': '108 ft²' },
    significantDigits: 3,
    decimalsMax: 4,
  },
  volume: {
    name: 'volume',
    units: [
      unit('m³', 1, 'cum'),
      unit('L', 0.001, 'l', 'litre', 'litres', 'liter', 'liters'),
      unit('ft³', FOOT_M ** 3, 'cuft', 'cf'),
    ],
    shown: { SI: 'm³', 'inch-pound': 'ft³' },
    example: { SI: '50 m³', 'inch-pound': '1770 ft³' },
    significantDigits: 3,
    decimalsMax: 3,
  },
  mass: {
    name: 'mass',
    units: [
      unit('kg', 1),
      unit('g', 0.001),
      unit('t', 1000),
      unit('lb', POUND_KG, 'lbs', 'lbm', 'pound', 'pounds'),
      unit('oz', OUNCE_KG, 'ounce', 'ounces'),
    ],
    shown: { SI: 'kg', 'inch-pound': 'lb' },
    example: { SI: '2.4 kg', 'inch-pound': '5.3 lb' },
    significantDigits: 3,
    decimalsMax: 3,
    compound: true,
  },
  'line-mass': {
    name: 'mass per length',
    units: [unit('kg/m', 1), unit('lb/ft', POUND_KG / FOOT_M, 'lbs/ft', 'plf')],
    shown: { SI: 'kg/m', 'inch-pound': 'lb/ft' },
    example: { SI: '4.5 kg/m', 'inch-pound': '3 lb/ft' },
    significantDigits: 3,
    decimalsMax: 3,
  },
  density: {
    name: 'density',
    units: [
      unit('kg/m³', 1),
      unit('g/cm³', 1000),
      unit('t/m³', 1000),
      unit('lb/ft³', POUND_KG / FOOT_M ** 3, 'lbs/ft3', 'lb/cuft', 'lbs/cuft', 'lb/cf', 'pcf'),
    ],
    shown: { SI: 'kg/m³', 'inch-pound': 'lb/ft³' },
    example: { SI: '1760 kg/m³', 'inch-pound': '110 lb/ft³' },
    significantDigits: 3,
    decimalsMax: 3,
  },
  'surface-mass': {
    name: 'mass per area',
    units: [
      unit('kg/m²', 1),
      unit('g/m²', 0.001),
      unit('lb/ft²', POUND_KG / FOOT_M ** 2, 'lbs/ft2', 'lb/sqft', 'lbs/sqft', 'lb/sf', 'psf'),
    ],
    shown: { SI: 'kg/m²', 'inch-pound': 'lb/ft²' },
    example: { SI: '67 kg/m²', 'inch-pound': '14 lb/ft²' },
    significantDigits: 3,
    decimalsMax: 2,
  },
  /** Force per area, as floors are designed for. */
  load: {
    name: 'load per area',
    units: [
      unit('kPa', 1000),
      unit('Pa', 1),
      unit('kN/m²', 1000),
      unit('N/m²', 1),
      unit('psf', POUND_FORCE_N / FOOT_M ** 2, 'lb/ft2', 'lbf/ft2', 'lbs/ft2', 'lb/sqft'),
    ],
    shown: { SI: 'kPa', 'inch-pound': 'psf' },
    example: { SI: '0.7 kPa', 'inch-pound': '15 psf' },
    significantDigits: 3,
    decimalsMax: 3,
  },
  frequency: {
    name: 'frequency',
    units: [unit('Hz', 1, 'cps'), unit('kHz', 1000, 'k')],
    shown: { SI: 'Hz', 'inch-pound': 'Hz' },
    example: { SI: '31.5 Hz', 'inch-pound': '31.5 Hz' },
    significantDigits: 3,
    decimalsMax: 2,
  },
  time: {
    name: 'time',
    units: [unit('s', 1, 'sec', 'second', 'seconds'), unit('ms', 0.001)],
    shown: { SI: 's', 'inch-pound': 's' },
    example: { SI: '0.5 s', 'inch-pound': '0.5 s' },
    significantDigits: 3,
    decimalsMax: 3,
  },
  'dynamic-stiffness': {
    name: 'dynamic stiffness per area',
    units: [
      unit('MN/m³', 1e6),
      unit('kN/m³', 1000),
      unit('N/m³', 1),
      unit('N/mm³', 1e9),
      unit('lbf/in³', POUND_FORCE_N / INCH_M ** 3, 'lb/in3', 'lbs/in3', 'pci'),
    ],
    shown: { SI: 'MN/m³', 'inch-pound': 'lbf/in³' },
    example: { SI: '10 MN/m³', 'inch-pound': '37 lbf/in³' },
    significantDigits: 3,
    decimalsMax: 4,
  },
  stiffness: {
    name: 'stiffness',
    units: [
      unit('kN/m', 1000),
      unit('N/m', 1),
      unit('N/mm', 1000),
      unit('kN/mm', 1e6),
      unit('MN/m', 1e6),
      unit('lbf/in', POUND_FORCE_N / INCH_M, 'lb/in', 'lbs/in', 'pli'),
    ],
    shown: { SI: 'kN/m', 'inch-pound': 'lbf/in' },
    example: { SI: '400 kN/m', 'inch-pound': '2280 lbf/in' },
    significantDigits: 3,
    decimalsMax: 3,
  },
  modulus: {
    name: 'modulus of elasticity',
    units: [
      unit('GPa', 1e9),
      unit('MPa', 1e6),
      unit('kPa', 1000),
      unit('Pa', 1),
      unit('N/mm²', 1e6),
      unit('ksi', 1000 * POUND_PER_SQUARE_INCH_PA),
      unit('psi', POUND_PER_SQUARE_INCH_PA, 'lb/in2', 'lbf/in2'),
    ],
    shown: { SI: 'GPa', 'inch-pound': 'ksi' },
    example: { SI: '2.1 GPa', 'inch-pound': '305 ksi' },
    significantDigits: 3,
    decimalsMax: 6,
  },
  'flow-resistivity': {
    name: 'flow resistivity',
    units: [
      unit('kPa·s/m²', 1000, 'kPas/m2', 'kN·s/m4', 'kNs/m4'),
      unit('Pa·s/m²', 1, 'Pas/m2', 'N·s/m4', 'Ns/m4', 'rayl/m', 'rayls/m'),
      // The rayl of the trade's inch-pound data is the mks one: Pa·s/m.
      unit('rayl/in', 1 / INCH_M, 'rayls/in'),
    ],
    // No inch-pound unit is customary.
    shown: { SI: 'kPa·s/m²', 'inch-pound': 'kPa·s/m²' },
    example: { SI: '8 kPa·s/m²', 'inch-pound': '8 kPa·s/m²' },
    significantDigits: 3,
    decimalsMax: 3,
  },
  level: {
    name: 'level',
    units: [unit('dB', 1)],
    shown: { SI: 'dB', 'inch-pound': 'dB' },
    example: { SI: '52 dB', 'inch-pound': '52 dB' },
    significantDigits: 4,
    decimalsMax: 1,
  },
  ratio: {
    name: 'plain number',
    units: [unit('', 1), unit('%', 0.01, 'percent')],
    shown: { SI: '', 'inch-pound': '' },
    example: { SI: '0.05', 'inch-pound': '0.05' },
    significantDigits: 3,
    decimalsMax: 5,
  },
} as const satisfies Record<string, Kind>;

export type QuantityKind = keyof typeof KINDS;

export function kindOf(kind: QuantityKind): Kind {
  return KINDS[kind];
}

/** The unit that is shown for a kind; `symbol` picks another one of the same kind. */
export function shownUnit(kind: QuantityKind, system: UnitSystem, symbol = kindOf(kind).shown[system]): Unit {
  const found = kindOf(kind).units.find((u) => u.symbol === symbol);
  if (!found) throw new RangeError(`unit must be one of ${symbolsOf(kind)}, got "${symbol}" (${kind})`);
  return found;
}

/**
 * Number of units → SI value. Thousandths and the like are divided by a whole number, so that 38 mm is the very 0.038
 * that a literal is.
 */
export function toSI(value: number, { factor }: Unit): number {
  const perUnit = 1 / factor;
  return factor < 1 && Number.isInteger(perUnit) ? value / perUnit : value * factor;
}

/** SI value → number of units. */
export function fromSI(value: number, { factor }: Unit): number {
  return value / factor;
}

/** Symbols that may be typed, for a message: "mm, cm, m, in, ft". */
export function symbolsOf(kind: QuantityKind): string {
  return kindOf(kind)
    .units.map((u) => u.symbol)
    .filter((symbol) => symbol !== '')
    .join(', ');
}
