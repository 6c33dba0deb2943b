import { describe, expect, it } from 'vitest';
import { type ChainEnds, chainImpedance } from '#src/acoustics/chain-impedance.ts';
import type { Cavity } from '#src/acoustics/construction.ts';
import { fasteningMobility } from '#src/acoustics/fastening-impedance.ts';
import { floorEdges } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { type SupportChain, supportChain } from '#src/acoustics/supports.ts';
import { cavity, fibre, floor, leaf, sheet } from '../published/reference-constructions.ts';

const boards = leaf([sheet('gypsum-board', 0.0127)]);
const chainOf = (change: Partial<Cavity>): SupportChain =>
  supportChain(cavity(change), 10, floorEdges(floor(boards)), MODEL_CONSTANTS)!;

describe('steel channel sections between two boards', () => {
  const stud = { joists: 'cold-formed-steel', joistSpacing_m: 0.61 } as const;
  const stiffness = (joistWidth_m: number, depth_m: number) =>
    chainOf({ ...stud, joistWidth_m, depth_m }).spring!.stiffness_N_m3;

  /** Castigliano: displacement per force = ∫ M²/B ds around the section, for a force beside the web. */
  function give_m3(beside_m: number, web_m: number): number {
    const STEPS = 10_000;
    let flanges = 0;
    for (let i = 0; i < STEPS; i++) flanges += 2 * (((i + 0.5) / STEPS) * beside_m) ** 2 * (beside_m / STEPS);
    return flanges + beside_m ** 2 * web_m;
  }

  it.each([
    [0.032, 0.092, 0.016],
    [0.02, 0.0635, 0.01],
    [0.041, 0.12, 0.016],
  ])('give with flanges of %d m and a web of %d m as the bending of their sheet has it', (width_m, web_m, beside_m) => {
    const ratio = stiffness(0.032, 0.0635) / stiffness(width_m, web_m);
    expect(ratio).toBeCloseTo(give_m3(beside_m, web_m) / give_m3(0.016, 0.0635), 5);
  });
});

describe('a ceiling on joists of its own', () => {
  const own = { support: 'separate-joists', supportHeight_m: 0.05, fill: [fibre('glass-fibre', 0.15)] } as const;
  const ends: ChainEnds = { upperBending_Nm: 2000, upperMass_kg_m2: 20, lowerBending_Nm: 400, lowerMass_kg_m2: 10 };
  const loss = MODEL_CONSTANTS.bayLossFactor;
  const omega = 2 * Math.PI * 500;
  const blank = { z11Re: 0, z11Im: 0, z12Re: 0, z12Im: 0, z22Re: 0, z22Im: 0 };

  it('meets the upper leaf in common bearings: a rigid link beside the mass of the joists', () => {
    const chain = chainOf(own);
    const { edges: _, ...apart } = chain;
    const z = chainImpedance(chain, ends, 500, 'framed', MODEL_CONSTANTS, { ...blank });
    const free = chainImpedance(apart, ends, 500, 'framed', MODEL_CONSTANTS, { ...blank });
    // Both leaves at one velocity: the link carries nothing, the joists' mass alone pulls.
    expect(z.z11Re - z.z12Re).toBeCloseTo(free.z11Re, 6);
    expect(z.z11Im - z.z12Im).toBeCloseTo(free.z11Im, 6);
    expect([z.z22Re, z.z22Im]).toEqual([z.z12Re, z.z12Im]);
    expect(free.z12Re).toBe(0);
    // The link gives way as much as both leaves do along it: z12 = 1/(1/K_up + 1/K_low).
    const give = [
      [ends.upperBending_Nm, ends.upperMass_kg_m2],
      [ends.lowerBending_Nm, ends.lowerMass_kg_m2],
    ].map(([bending, mass]) => fasteningMobility(chain.edges!, bending!, mass!, loss, omega, { re: 0, im: 0 }));
    const [re, im] = [give[0]!.re + give[1]!.re, give[0]!.im + give[1]!.im];
    expect(z.z12Re * re - z.z12Im * im).toBeCloseTo(1, 9);
    expect(z.z12Re * im + z.z12Im * re).toBeCloseTo(0, 9);
  });

  it('loses more the more of the edges is shared, and where none is comes within 1.5 dB of one that nothing joins', () => {
    const R_dB = [1e-9, 0.01, 0.03, 0.1, 0.3].map((sharedEdge) => {
      const prediction = predict(floor(boards, cavity(own), boards), {
        constants: { ...MODEL_CONSTANTS, sharedEdge },
      });
      return prediction.R_dB[prediction.bands_Hz.indexOf(500)]!;
    });
    const open = predict(floor(boards, cavity({ ...own, joists: 'none', support: 'direct', depth_m: 0.285 }), boards));
    expect(Math.abs(R_dB[0]! - open.R_dB[open.bands_Hz.indexOf(500)]!)).toBeLessThan(1.5);
    for (let i = 1; i < R_dB.length; i++) expect(R_dB[i]).toBeLessThan(R_dB[i - 1]!);
  });

  it('meets a slab without joists in the same bearings, and blows do not cross there', () => {
    const slab = leaf([sheet('concrete', 0.14)]);
    const under = (sharedEdge: number) =>
      predict(floor(slab, cavity({ ...own, joists: 'none', depth_m: 0.1 }), boards), {
        constants: { ...MODEL_CONSTANTS, sharedEdge },
      });
    const [shared, apart] = [under(0.05), under(1e-9)];
    const band = shared.bands_Hz.indexOf(1000);
    expect(shared.paths_dB.supports![band]!).toBeLessThan(apart.paths_dB.supports![band]! - 10);
    expect(shared.impactPaths_dB.supports).toBeUndefined();
    expect(shared.Ln_dB[band]!).toBeCloseTo(apart.Ln_dB[band]!, 1);
  });
});
