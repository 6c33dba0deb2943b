import { describe, expect, test } from 'vitest';
import type { OverlayFocus } from '#cells/curves/curve-overlays.ts';
import { TEXTBOOK_MODELS } from '#cells/curves/textbook-models.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { belowFloatingPart } from '#src/acoustics/floating-part.ts';
import { predict } from '#src/acoustics/predict.ts';
import { massLaw_dB } from '#src/acoustics/simple/mass-law.ts';
import type { LineOverlay } from '#src/charts/band-data.ts';
import type { CurveOverlay, CurveQuantity } from '#src/notebook/types.ts';
import { isolated, limp } from '../../acoustics/fixtures.ts';
import { cavity, covering, leaf, mat, sheet } from '../../published/reference-constructions.ts';

function focusOn(floor: Construction): OverlayFocus {
  const below = belowFloatingPart(floor);
  return {
    prediction: predict(floor),
    color: 'black',
    construction: () => floor,
    belowFloating: () => below && predict(below),
  };
}

function made(overlay: CurveOverlay, floor: Construction, quantity: CurveQuantity) {
  return TEXTBOOK_MODELS.find((m) => m.overlay === overlay)!.line(focusOn(floor), quantity, 'SI');
}

function lineOf(overlay: CurveOverlay, floor: Construction, quantity: CurveQuantity): LineOverlay {
  const [line] = made(overlay, floor, quantity);
  if (typeof line !== 'object' || line.kind !== 'line') throw new Error(`expected a line, got ${line}`);
  return line;
}

const BANDS_HZ = predict(isolated(leaf([limp(10)]))).bands_Hz;
const at = ({ values_dB }: LineOverlay, band_Hz: number) => values_dB[BANDS_HZ.indexOf(band_Hz)]!;

const screed = leaf([sheet('cement-screed', 0.05)]);
const slab = leaf([sheet('concrete', 0.15)]);
const ceiling = leaf([sheet('gypsum-board', 0.0127)]);
const soft = mat('mineral wool', 0.02, 1e7);
const gap = cavity({ joists: 'none', depth_m: 0.1, supportHeight_m: 0 });

describe('double leaf (Sharp 1978, from memory)', () => {
  const floor = isolated(leaf([limp(10)]), gap, leaf([limp(15)]));

  test('18 dB per octave between f0 103.8 Hz and c/2πd 546 Hz, 12 above (own hand-worked case)', () => {
    // 1.8 ρc²/d = 2.553·10⁶ N/m³, times 1/10 + 1/15: √(4.255·10⁵)/2π = 103.8 Hz; 343.2/2π/0.1 = 546 Hz
    const line = lineOf('double-leaf', floor, 'airborne');
    expect(at(line, 500) - at(line, 250)).toBeCloseTo(18, 1);
    expect(at(line, 4000) - at(line, 2000)).toBeCloseTo(12, 1);
    expect(line.description).toContain('104 Hz');
    expect(line.description).toContain('546 Hz');
  });

  test('below f0 it is the mass law of both: 25 kg/m² at 50 Hz, 20 lg(ωm′/2ρc) − 5 = 14.6 dB (hand-worked)', () => {
    expect(at(lineOf('double-leaf', floor, 'airborne'), 50)).toBeCloseTo(14.6, 0);
  });

  test.each([
    ['one leaf', isolated(ceiling)],
    ['3 leaves', isolated(screed, soft, slab, cavity(), ceiling)],
    ['a mat between', isolated(screed, soft, slab)],
  ])('says that a floor has %s', (words, other) => {
    expect(made('double-leaf', other, 'airborne')).toContain(`and this floor has ${words}`);
  });
});

test('limp panel (Sewell 1970): no finite panel holds back less than an endless one in a diffuse field', () => {
  const line = lineOf('limp-panel', isolated(leaf([limp(20)])), 'airborne');
  // 20 kg/m², 10 m², 500 Hz: 20 lg(76.03) − 10 lg[ln(9.154·√10) + 0.16] = 37.6 − 5.5 dB (own hand-worked case)
  expect(at(line, 500)).toBeCloseTo(32.15, 1);
  BANDS_HZ.forEach((frequency_Hz, i) => {
    const endless_dB = massLaw_dB({ surfaceMass_kg_m2: 20, frequency_Hz, incidence: 'diffuse' });
    expect(line.values_dB[i]!, `${frequency_Hz} Hz`).toBeGreaterThan(endless_dB);
  });
});

describe('floating floor (Cremer 1952; EN 12354-2:2000, Annex C)', () => {
  const floor = isolated(screed, soft, slab);

  test('the floor below the mat less 30 lg(f/f0) for a screed: f0 48 Hz with 110 kg/m² on 10 MN/m³ (hand-worked)', () => {
    const line = lineOf('floating-floor', floor, 'impact');
    const bare = predict(isolated(slab));
    const f0_Hz = Math.sqrt(1e7 / 110) / 2 / Math.PI;
    expect(bare.Ln_dB[BANDS_HZ.indexOf(500)]! - at(line, 500)).toBeCloseTo(30 * Math.log10(500 / f0_Hz), 6);
    expect(line.description).toContain('f0 48 Hz');
  });

  test('40 lg(f/f0) for dry layers', () => {
    const dry = isolated(leaf([sheet('gypsum-fibre-board', 0.025)]), soft, slab);
    expect(lineOf('floating-floor', dry, 'impact').description).toContain('40 lg');
  });

  test('needs a mat under the uppermost leaf; says that the covering is left out', () => {
    expect(made('floating-floor', isolated(slab, cavity(), ceiling), 'impact')).toContain('lies on a mat');
    expect(lineOf('floating-floor', { ...floor, covering: covering('carpet') }, 'impact').description).toContain(
      'nothing for the covering',
    );
  });

  test('waits for the prediction of the floor below', () => {
    const { line } = TEXTBOOK_MODELS.find((m) => m.overlay === 'floating-floor')!;
    expect(line({ ...focusOn(floor), belowFloating: () => undefined }, 'impact', 'SI')).toEqual([]);
  });
});

describe('bare slab (EN 12354:2000)', () => {
  // 0.15 m · 2300 kg/m³ = 345 kg/m²: 164 − 35 lg 345 = 75.2, 37.5 lg 345 − 42 = 53.2 (hand-worked)
  test.each([
    ['impact', 75.17],
    ['airborne', 53.17],
  ] as const)('the %s contour stands at %d dB at 500 Hz', (quantity, rating_dB) => {
    const line = lineOf('bare-slab', isolated(slab), quantity);
    expect(at(line, 500)).toBeCloseTo(rating_dB, 1);
    expect(at(line, 80)).toBeNaN();
  });

  test.each([
    ['a covering', { ...isolated(slab), covering: covering('carpet') }],
    ['boards', isolated(ceiling)],
    ['3 leaves', isolated(screed, soft, slab, cavity(), ceiling)],
    ['57.5 kg/m²', isolated(leaf([sheet('concrete', 0.025)]))],
  ])('says that a floor has %s', (words, other) => {
    expect(made('bare-slab', other, 'impact')).toContain(words);
  });
});

test('a floor with nothing in it gets the engine’s own reason, not an error', () => {
  const empty = isolated(leaf([sheet('concrete', 0)]));
  const { line } = TEXTBOOK_MODELS.find((m) => m.overlay === 'bare-slab')!;
  const focus = { ...focusOn(isolated(slab)), construction: () => empty };
  expect(line(focus, 'impact', 'SI')).toContain('must hold a sheet thicker than 0');
});
