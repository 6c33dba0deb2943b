import { describe, expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { panelRadiation } from '#src/acoustics/panel-radiation.ts';
import { predict } from '#src/acoustics/predict.ts';
import { homogeneousReduction_dB } from '#src/acoustics/standards/iso-12354-1-element.ts';
import { leaf, sheet } from '../published/reference-constructions.ts';

const C = 343;
const EDGES = { area_m2: 10, perimeter_m: 13, length_m: 4, width_m: 2.5 };

const floor = (kind: 'concrete' | 'gypsum-board', thickness_m: number, size: number): Construction => ({
  length_m: 4 * size,
  width_m: 2.5 * size,
  layers: [leaf([sheet(kind, thickness_m)])],
});

describe('a plate at its critical frequency', () => {
  // Maidanik, JASA 34, 1962: 0.45 √(U fc/c) (from memory, unverified).
  it.each([90, 125, 250])(
    'radiates there what Maidanik says, within 1 dB, where it is hardly larger than a wave: %d Hz',
    (fc_Hz) => {
      const maidanik = 0.45 * Math.sqrt((EDGES.perimeter_m * fc_Hz) / C);
      const ratio = panelRadiation(fc_Hz, fc_Hz, EDGES, C) / maidanik;
      expect(Math.abs(10 * Math.log10(ratio))).toBeLessThan(1);
    },
  );

  it('keeps the limit of 2 of EN 12354-1 Annex B where waves are short', () => {
    expect(panelRadiation(2500, 2500, EDGES, C)).toBe(2);
  });

  // EN 12354-1:2000, Annex B (from memory, unverified), with c_L and loss as the engine has them. The annex knows two kinds of
  // plates: those without modes below fc/2 have no dip, all others that of a plate without end.
  const annex_dB = (thickness_m: number, bands_Hz: readonly number[]) => {
    const { youngsModulus_Pa, density_kg_m3, poissonRatio, lossFactor } = sheet('concrete', thickness_m);
    const element = {
      surfaceMass_kg_m2: density_kg_m3 * thickness_m,
      thickness_m,
      longitudinalSpeed_m_s: Math.sqrt(youngsModulus_Pa / (density_kg_m3 * (1 - poissonRatio ** 2))),
      internalLossFactor: lossFactor,
      length_m: 4,
      height_m: 2.5,
    };
    return homogeneousReduction_dB(element, bands_Hz);
  };
  it.each([
    [0.18, 80],
    [0.2, 80],
    [0.25, 80],
    [0.075, 500],
    [0.1, 400],
    [0.15, 200],
  ])('loses as a slab of %d m what Annex B says, within 2 dB from %d Hz to 2 kHz', (thickness_m, from_Hz) => {
    const { bands_Hz, R_dB } = predict(floor('concrete', thickness_m, 1));
    const expected_dB = annex_dB(thickness_m, bands_Hz);
    bands_Hz.forEach((band_Hz, i) => {
      if (band_Hz < from_Hz || band_Hz > 2000) return;
      expect(Math.abs(R_dB[i]! - expected_dB[i]!), `${band_Hz} Hz`).toBeLessThan(2);
    });
  });

  it('dips deeper the larger it is, and far above fc as deep whatever its size', () => {
    const R = (size: number) => predict(floor('concrete', 0.15, size));
    const [room, hall] = [R(1), R(10)];
    const at = (prediction: typeof room, band_Hz: number) => prediction.R_dB[prediction.bands_Hz.indexOf(band_Hz)]!;
    expect(at(hall, 125)).toBeLessThan(at(room, 125) - 3);
    for (const band_Hz of [1000, 2000]) expect(Math.abs(at(hall, band_Hz) - at(room, band_Hz))).toBeLessThan(0.5);
  });
});
