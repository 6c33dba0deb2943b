/**
 * What is laid on a deck must vanish with its thickness: own cases, no source. So must a board that thins to nothing on or
 * under a slab.
 */
import { describe, expect, it } from 'vitest';
import type { Construction, Leaf, Sheet, SheetContact } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, covering, fibre, floor, leaf, mat, sheet } from '../published/reference-constructions.ts';

const DECKS: Record<string, Leaf> = {
  'an OSB deck': leaf([sheet('osb', 0.0151)]),
  'plywood under loose boards': leaf([sheet('softwood-boards', 0.019), sheet('plywood', 0.0159)]),
  'strip flooring glued to plywood': leaf([sheet('hardwood-flooring', 0.0198), sheet('plywood', 0.0127)], 'bonded'),
  'two boards with a damping layer': leaf([sheet('plywood', 0.0159), sheet('plywood', 0.0159)], 'damped'),
};
const TOPPINGS = ['gypsum-concrete', 'cement-screed', 'ceramic-tile'];
const SUPPORTS = ['resilient-channel', 'clips', 'direct'] as const;

const below = (support: (typeof SUPPORTS)[number]) =>
  [
    cavity({ support, fill: support === 'direct' ? [] : [fibre('glass-fibre', 0.15)] }),
    leaf([sheet('gypsum-board', 0.0127)]),
  ] as const;

function largestDifference_dB(a: Construction, b: Construction): { R: number; Ln: number } {
  const [p, q] = [predict(a), predict(b)];
  const largest = (x: readonly number[], y: readonly number[]) => Math.max(...x.map((v, i) => Math.abs(v - y[i]!)));
  return { R: largest(p.R_dB, q.R_dB), Ln: largest(p.Ln_dB, q.Ln_dB) };
}

const on = (deck: Leaf, ...sheets: Sheet[]): Leaf => ({ ...deck, sheets: [...sheets, ...deck.sheets] });

describe.each(Object.entries(DECKS))('on %s on joists', (_, deck) => {
  it.each(TOPPINGS)('a film of %s changes no band of either sound by more than a tenth of a decibel', (key) => {
    for (const support of SUPPORTS) {
      const bare = floor(deck, ...below(support));
      const filmed = floor(on(deck, sheet(key, 1e-5)), ...below(support));
      const { R, Ln } = largestDifference_dB(bare, filmed);
      expect(R, `R on ${support}`).toBeLessThan(0.1);
      expect(Ln, `Ln on ${support}`).toBeLessThan(0.1);
    }
  });
});

it('a topping grows out of the deck without a jump: half a millimetre more changes no band by more than 2 dB', () => {
  const deck = DECKS['an OSB deck']!;
  const at = (thickness_m: number) =>
    floor(on(deck, sheet('gypsum-concrete', thickness_m)), ...below('resilient-channel'));
  for (let mm = 0; mm < 12; mm += 0.5) {
    const { R, Ln } = largestDifference_dB(at(mm / 1000), at((mm + 0.5) / 1000));
    expect(R, `R from ${mm} mm`).toBeLessThan(2);
    expect(Ln, `Ln from ${mm} mm`).toBeLessThan(2);
  }
});

it('a film of topping under a covering, or on the deck below a floating slab, changes nothing either', () => {
  const deck = DECKS['an OSB deck']!;
  const filmed = on(deck, sheet('gypsum-concrete', 1e-5));
  const covered = (top: Leaf): Construction => ({
    ...floor(top, ...below('clips')),
    covering: covering('sheet-vinyl'),
  });
  const floating = (deckBelow: Leaf) =>
    floor(leaf([sheet('cement-screed', 0.05)]), mat('mat', 0.02, 10e6), deckBelow, ...below('clips'));
  for (const build of [covered, floating]) {
    const { R, Ln } = largestDifference_dB(build(deck), build(filmed));
    expect(Math.max(R, Ln)).toBeLessThan(0.1);
  }
});

describe('a film of board', () => {
  const film = sheet('osb', 1e-6);

  it.each<SheetContact>(['loose', 'bonded'])(
    'on or under a slab, %s, does not change its transmission loss',
    (contact) => {
      const slab = sheet('concrete', 0.15);
      const bare = floor(leaf([slab]));
      expect(largestDifference_dB(bare, floor(leaf([film, slab], contact))).R).toBeLessThan(0.05);
      const lined = largestDifference_dB(bare, floor(leaf([slab, film], contact)));
      expect(Math.max(lined.R, lined.Ln)).toBeLessThan(0.05);
    },
  );

  it('under a screed on a mat changes neither sound', () => {
    const screed = sheet('cement-screed', 0.05);
    const floating = (...sheets: Sheet[]) =>
      floor(leaf(sheets), mat('mat', 0.02, 10e6), leaf([sheet('concrete', 0.15)]));
    const { R, Ln } = largestDifference_dB(floating(screed), floating(screed, film));
    expect(Math.max(R, Ln)).toBeLessThan(0.05);
  });
});
