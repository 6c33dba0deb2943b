/** What lies outside of what the engine was checked on, in words and in the reader's units. */
import type { CheckedKey, OutsideChecked, UncheckedKind } from '#src/acoustics/checked-range.ts';
import { LEAST_LOSS_FACTOR } from '#src/acoustics/least-loss.ts';
import { INCH_M } from '#src/quantities/conversion-factors.ts';
import { formatQuantity, unitOf } from '#src/quantities/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '#src/quantities/kinds.ts';

interface Wording {
  /** Undefined for a count. */
  readonly quantity?: QuantityKind;
  say(text: string, name: string, value: number): string;
}

const WORDINGS: Readonly<Record<CheckedKey, Wording>> = {
  joistDepth_m: { quantity: 'length', say: (text) => `joists ${text} deep` },
  joistSpacing_m: { quantity: 'length', say: (text) => `joists ${text} apart` },
  joistWidth_m: { quantity: 'length', say: (text) => `joists ${text} wide` },
  slabThickness_m: { quantity: 'length', say: (text, name) => `${name} ${text} thick` },
  boardThickness_m: { quantity: 'length', say: (text, name) => `${name} ${text} thick` },
  sheetDensity_kg_m3: { quantity: 'density', say: (text, name) => `${name} of ${text}` },
  sheetLossFactor: {
    say: (text, name, value) => {
      const counted = value < LEAST_LOSS_FACTOR ? `, which counts as ${LEAST_LOSS_FACTOR}` : '';
      return `${name} with a loss factor of ${text}${counted}`;
    },
  },
  sheetsInLeaf: { say: (text) => `${text} sheets on each other` },
  leafMass_kg_m2: { quantity: 'surface-mass', say: (text) => `a leaf of ${text}` },
  leaves: { say: (text) => `${text} leaves` },
  cavities: { say: (text) => `${text} cavities one below the other` },
  matStiffness_N_m3: { quantity: 'dynamic-stiffness', say: (text, name) => `${name} of ${text}` },
  fillFlowResistivity_Pa_s_m2: { quantity: 'flow-resistivity', say: (text, name) => `${name} of ${text}` },
};

const KINDS: Readonly<Record<UncheckedKind, string>> = {
  hangers: 'spring hangers (no measured one was at hand)',
  'separate-joists': 'a ceiling on joists of its own (no measured one was at hand)',
  'no-joists': 'a cavity without joists (no measured one was at hand)',
};

/** `joists 5000 mm deep (checked 64 to 457 mm)`. */
export function outsideCheckedText(outside: OutsideChecked, units: UnitSystem): string {
  if (!('range' in outside)) return KINDS[outside.key];
  const { key, value, name = 'a layer', range } = outside;
  const { quantity, say } = WORDINGS[key];
  const text = (number: number) => (quantity ? formatQuantity(number, quantity, units) : String(number));
  const unit = quantity ? ` ${unitOf(quantity, units)}` : '';
  const limit = (number: number) =>
    text(quantity === 'length' && units === 'inch-pound' ? sixteenth_m(number) : number);
  const [least, most] = [limit(range.least), limit(range.most)];
  const from = unit.length > 1 && least.endsWith(unit) && most.endsWith(unit) ? least.slice(0, -unit.length) : least;
  return `${say(text(value), name, value)} (checked ${least === most ? most : `${from} to ${most}`})`;
}

/** The 406 mm of a description are 16 in, not 15.98. */
function sixteenth_m(length_m: number): number {
  const step_m = INCH_M / 16;
  return Math.round(length_m / step_m) * step_m;
}

export function outsideCheckedReason(outside: OutsideChecked): string {
  return 'range' in outside ? outside.range.reason : outside.reason;
}
