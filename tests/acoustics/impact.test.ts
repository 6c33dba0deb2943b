import { describe, expect, it } from 'vitest';
import type { Construction, Covering } from '#src/acoustics/construction.ts';
import { laidImprovement } from '#src/acoustics/laid-improvement.ts';
import { predict } from '#src/acoustics/predict.ts';
import { REFERENCE_COVERING } from '#src/acoustics/standards/iso-717-2-reference-floors.ts';
import { tappingForce2_N2_Hz } from '#src/acoustics/tapping-machine.ts';
import { cavity, covering, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const exact_Hz = (nominal: number): number => 10 ** (Math.round(10 * Math.log10(nominal)) / 10);
const slab = (thickness_m: number) => leaf([sheet('concrete', thickness_m)]);

describe('tapping machine', () => {
  it('strikes a rigid floor without rebound with 3.92 N²/Hz: (2 · 0.5 kg · 0.886 m/s · 10/s)²/20', () => {
    expect(tappingForce2_N2_Hz(500, 0, Number.POSITIVE_INFINITY)).toBeCloseTo(3.925, 2);
  });

  it('spans 6 dB from no rebound to full rebound at low frequency (Brunskog & Hammer 2003)', () => {
    const none = tappingForce2_N2_Hz(5, 1e-3, 2e7);
    const full = tappingForce2_N2_Hz(5, 1e-9, 2e7);
    expect(10 * Math.log10(full / none)).toBeCloseTo(6, 0);
  });

  it('strikes softer through carpet at high frequency', () => {
    expect(tappingForce2_N2_Hz(2000, 1e-5, 1e5)).toBeLessThan(tappingForce2_N2_Hz(2000, 1e-5, 2e7) / 100);
  });
});

describe('bare slabs', () => {
  it.each([0.045, 0.06, 0.1, 0.14, 0.2, 0.24])(
    'of %d m have Ln,w = 164 − 35 lg m′ within 2 dB (ISO 12354-2, from memory)',
    (thickness) => {
      const { Lnw } = predict(isolated(slab(thickness))).ratings;
      expect(Math.abs(Lnw - (164 - 35 * Math.log10(2300 * thickness)))).toBeLessThanOrEqual(2);
    },
  );

  it.each([0.08, 0.14, 0.2])(
    'of %d m have R + Ln = 38 + 30 lg f − 10 lg σ within 1 dB above 2 fc (Heckl & Rathe, JASA 35, 1963, with σ)',
    (thickness) => {
      const { bands_Hz, R_dB, Ln_dB, criticalFrequencies_Hz } = predict(isolated(slab(thickness)));
      const fc = criticalFrequencies_Hz[0]!.frequency_Hz;
      const judged = bands_Hz.map((_, i) => i).filter((i) => exact_Hz(bands_Hz[i]!) > 2 * fc);
      expect(judged.length).toBeGreaterThan(5);
      for (const i of judged) {
        const f = exact_Hz(bands_Hz[i]!);
        const sigma = 1 / Math.sqrt(1 - fc / f);
        const expected = 38 + 30 * Math.log10(f) - 10 * Math.log10(sigma);
        expect(Math.abs(R_dB[i]! + Ln_dB[i]! - expected), `${f} Hz`).toBeLessThan(1);
      }
    },
  );
});

describe('floating screeds', () => {
  const base = slab(0.14);
  const gains = (stiffness: number, top = leaf([sheet('cement-screed', 0.06)])) => {
    const bare = predict(isolated(base));
    const floating = predict(isolated(top, mat('mat', 0.03, stiffness), base));
    return bare.bands_Hz.map((f, i) => ({ f: exact_Hz(f), gain: bare.Ln_dB[i]! - floating.Ln_dB[i]! }));
  };

  it.each([6e6, 10e6, 20e6])(
    'on s′ = %d N/m³ under load follow Cremer’s 30 lg(f/f0) for cement, 3 dB more for their mass',
    (s) => {
      const f0 = Math.sqrt((s * Math.cbrt(132 / 200)) / 132) / (2 * Math.PI);
      for (const { f, gain } of gains(s)) {
        if (f < 3 * f0) continue;
        const excess = gain - 30 * Math.log10(f / f0);
        expect(excess, `${f} Hz`).toBeGreaterThan(-3);
        expect(excess, `${f} Hz`).toBeLessThan(3.1);
      }
    },
  );

  it('gain nothing on a rigid mat', () => {
    for (const { f, gain } of gains(1e11)) if (f < 500) expect(Math.abs(gain), `${f} Hz`).toBeLessThan(5);
  });

  it('rise by at most 40 lg(f/f0) when dry', () => {
    const dry = gains(20e6, leaf([sheet('dry-screed', 0.025)]));
    const f0 = Math.sqrt((20e6 * Math.cbrt(22.5 / 200)) / 22.5) / (2 * Math.PI);
    for (const { f, gain } of dry) {
      if (f > 2 * f0) expect(gain, `${f} Hz`).toBeLessThan(40 * Math.log10(f / f0) + 0.7);
    }
  });
});

describe('coverings', () => {
  const gain_dB = (floor: Construction, under: Covering) => {
    const bare = predict(floor);
    const covered = predict({ ...floor, covering: under });
    return (band_Hz: number) => {
      const i = bare.bands_Hz.indexOf(band_Hz);
      return bare.Ln_dB[i]! - covered.Ln_dB[i]!;
    };
  };

  // ISO 717-2:2020, Annex B. 6e5 N/m puts hammer and covering at 174 Hz.
  it('on a slab do what the reference covering does, within 1.5 dB from 100 to 1000 Hz, each by its stiffness', () => {
    const gain = gain_dB(isolated(slab(0.14)), { ...covering('carpet'), contactStiffness_N_m: 6e5 });
    const bands = REFERENCE_COVERING.filter(([band_Hz]) => band_Hz <= 1000);
    for (const [band_Hz, reference_dB] of bands) {
      expect(Math.abs(gain(band_Hz) - reference_dB), `${band_Hz} Hz`).toBeLessThan(1.5);
    }
  });

  // ΔLw by DIN 4109 Beiblatt 1:1989, Table 18 (from memory, unverified): 8 mm pile carpet on foam, vinyl on felt, on foam.
  it.each([
    ['carpet', 28],
    ['sheet-vinyl', 13],
    ['vinyl-plank', 16],
  ] as const)('%s on a slab takes what the table of floor coverings says, within 1 dB', (key, expected_dB) => {
    const { dLw } = laidImprovement({ ...isolated(slab(0.14)), covering: covering(key) })!;
    expect(Math.abs(dLw - expected_dB)).toBeLessThanOrEqual(1);
  });

  // DIN 4109 Beiblatt 1:1989 counts the better of floating floor and soft covering (from memory, unverified): no less.
  it.each(['carpet-on-pad', 'carpet', 'sheet-vinyl', 'vinyl-plank'])(
    '%s on a floating screed takes no less than the better of the two alone',
    (key) => {
      const dLw = (floor: Construction) => laidImprovement(floor)!.dLw;
      const screed = isolated(leaf([sheet('cement-screed', 0.05)]), mat('mat', 0.02, 2e7), slab(0.14));
      const alone = Math.max(dLw(screed), dLw({ ...isolated(slab(0.14)), covering: covering(key) }));
      expect(dLw({ ...screed, covering: covering(key) })).toBeGreaterThanOrEqual(alone);
    },
  );

  it('change nothing where they neither give way nor weigh anything', () => {
    const hard = { name: 'hard', surfaceMass_kg_m2: 1e-6, contactStiffness_N_m: 1e12, thickness_m: 1e-3 };
    for (const floor of [isolated(slab(0.14)), isolated(leaf([sheet('plywood', 0.0159)]))]) {
      const gain = gain_dB(floor, hard);
      for (const band_Hz of [50, 200, 800, 3150]) expect(Math.abs(gain(band_Hz)), `${band_Hz} Hz`).toBeLessThan(0.05);
    }
  });
});

describe('coverings and supports', () => {
  const deck = leaf([sheet('plywood', 0.0159)]);
  const ceiling = leaf([sheet('gypsum-board', 0.0159)]);

  it('carpet lowers the level more the higher the band, on concrete and on a deck', () => {
    for (const floor of [isolated(slab(0.15)), isolated(deck, cavity(), ceiling)]) {
      const bare = predict(floor);
      const carpeted = predict({ ...floor, covering: covering('carpet-on-pad') });
      const gain = (band: number) => {
        const i = bare.bands_Hz.indexOf(band);
        return bare.Ln_dB[i]! - carpeted.Ln_dB[i]!;
      };
      expect(gain(1000)).toBeGreaterThan(gain(250));
      expect(gain(250)).toBeGreaterThan(5);
    }
  });

  it('a softer support never makes the floor louder from 200 Hz, and one of no stiffness leaves the air alone', () => {
    const hung = (supportStiffness_N_m: number) =>
      predict(isolated(deck, cavity({ support: 'clips', supportStiffness_N_m }), ceiling));
    const [hard, soft, none] = [hung(4e6), hung(4e5), hung(1)];
    hard.bands_Hz.forEach((f, i) => {
      if (f < 200) return;
      expect(soft.Ln_dB[i]!, `${f} Hz`).toBeLessThan(hard.Ln_dB[i]! + 0.5);
      expect(none.Ln_dB[i]! - none.impactPaths_dB.direct![i]!, `${f} Hz`).toBeLessThan(0.01);
    });
  });
});
