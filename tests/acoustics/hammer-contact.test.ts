import { describe, expect, it } from 'vitest';
import { contactOf } from '#src/acoustics/hammer-contact.ts';
import { tappingForce2_N2_Hz } from '#src/acoustics/tapping-machine.ts';
import { sheet } from '../published/reference-constructions.ts';
import { dB } from './fixtures.ts';

const osb = sheet('osb', 0.0151);
const topping = (thickness_m: number) => sheet('gypsum-concrete', thickness_m);
const bending_Nm = ({ youngsModulus_Pa: E, thickness_m: h, poissonRatio: nu }: typeof osb) =>
  (E * h ** 3) / (12 * (1 - nu * nu));

describe('the contact of a hammer with a leaf', () => {
  it('is rigid where no sheet gives way, and that of the sheet struck where this one does', () => {
    expect(contactOf([sheet('concrete', 0.15)])).toEqual({ stiffness_N_m: Infinity, lossFactor: 0 });
    expect(contactOf([osb, sheet('concrete', 0.15)])).toEqual({ stiffness_N_m: 2e7, lossFactor: 0 });
  });

  it.each([0.003, 0.006, 0.012, 0.025, 0.05])(
    'is two plates with a soft layer between under %d m of topping (own integral)',
    (t) => {
      const [B1, B2] = [bending_Nm(topping(t)), bending_Nm(osb)];
      const perArea = 2e7 / (Math.PI * 0.015 ** 2);
      // ∫ [1/(B1 + B2/(1 + B2k⁴/s'')) − 1/(B1 + B2)] k⁻³ dk/2π over ln k.
      let compliance = 0;
      const step = 0.001;
      for (let x = Math.log(0.01); x < Math.log(1e6); x += step) {
        const k = Math.exp(x);
        const joined = B1 + B2 / (1 + (B2 * k ** 4) / perArea);
        compliance += ((1 / joined - 1 / (B1 + B2)) * step) / (2 * Math.PI * k * k);
      }
      expect((contactOf([topping(t), osb]).stiffness_N_m - 2e7) * compliance).toBeCloseTo(1, 3);
    },
  );

  it('is the deck alone under a film and rigid under a topping of usual thickness, within 1 dB up to 4 kHz', () => {
    const film = contactOf([topping(1e-6), osb]);
    expect(film.stiffness_N_m / 2e7).toBeCloseTo(1, 3);
    expect(film.lossFactor).toBeLessThan(1e-4);
    for (const thickness_m of [0.025, 0.038, 0.05]) {
      const { stiffness_N_m, lossFactor } = contactOf([topping(thickness_m), osb]);
      const mobility = 1 / (8 * Math.sqrt((bending_Nm(topping(thickness_m)) + bending_Nm(osb)) * 1850 * thickness_m));
      for (const f of [50, 500, 2000, 4000]) {
        const force2 = tappingForce2_N2_Hz(f, mobility, stiffness_N_m, lossFactor);
        expect(Math.abs(dB(force2 / tappingForce2_N2_Hz(f, mobility, Infinity)))).toBeLessThan(1);
      }
    }
  });

  it('gives a blow back the less the more topping is under the hammer', () => {
    const timber = sheet('cross-laminated-timber', 0.14);
    const losses = [0.001, 0.01, 0.03, 0.1].map((t) => contactOf([topping(t), timber]).lossFactor);
    expect(losses).toEqual(losses.toSorted((a, b) => a - b));
    expect(losses[0]).toBeLessThan(0.01);
    expect(losses.at(-1)).toBeGreaterThan(0.9);
  });
});
