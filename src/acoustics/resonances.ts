import type { Air } from './air.ts';
import { bayResonance_Hz } from './bay-resonance.ts';
import { firstAcross_Hz } from './cavity-resonances.ts';
import type { SupportKind } from './construction.ts';
import { restingGive_m3_N } from './fastening-impedance.ts';
import type { CavityModel, FloorModel } from './floor-model.ts';
import type { NamedFrequency } from './prediction.ts';
import { tridiagonalEigenvalue } from './tridiagonal.ts';

/** Ratio of adiabatic to isothermal stiffness of air: fibre keeps it at constant temperature. */
const ADIABATIC_RATIO = 1.4;

/** Critical frequency of each leaf, from the upper room down. */
export function criticalFrequencies(model: FloorModel): NamedFrequency[] {
  return model.plates.map((plate, i) => ({
    frequency_Hz: plate.criticalFrequency_Hz,
    name: `${leafName(model, i)}: bending waves as fast as sound`,
    kind: 'critical',
  }));
}

/** Resonances of the leaves on their springs, of the cavities' depth, and of boards between their fastenings. */
export function resonances(model: FloorModel): NamedFrequency[] {
  return [...bounceResonances(model), ...cavityModes(model), ...bayResonances(model)].sort(
    (a, b) => a.frequency_Hz - b.frequency_Hz,
  );
}

/** Static stiffness per area between two leaves, N/m³: air and fill, and the springs beside them. */
export function interlayerStiffness_N_m3(model: FloorModel, index: number): number {
  const layer = model.interlayers[index]!;
  if (layer.kind === 'mat') return layer.mat.dynamicStiffness_N_m3;
  const { air, plates } = model;
  const ofAir = airStiffness_N_m3(layer, air);
  const { chain } = layer;
  if (!chain?.lower) return ofAir;
  const upper = restingGive_m3_N(chain.upper, plates[index]!.staticBending_Nm);
  const lower = restingGive_m3_N(chain.lower, plates[index + 1]!.staticBending_Nm);
  const spring = chain.spring ? 1 / chain.spring.stiffness_N_m3 : 0;
  return ofAir + 1 / (upper + spring + lower);
}

/** Of air and fill alone, N/m³. */
export function airStiffness_N_m3({ fluids }: CavityModel, { density_kg_m3, soundSpeed_m_s }: Air): number {
  const modulus = density_kg_m3 * soundSpeed_m_s ** 2;
  const softness = fluids.reduce(
    (sum, f) => sum + (f.thickness_m / modulus) * (f.flowResistivity_Pa_s_m2 === undefined ? 1 : ADIABATIC_RATIO),
    0,
  );
  return 1 / softness;
}

/**
 * Natural frequencies of the leaves as masses on the interlayers as springs, floating freely: (1/2π) √(s'(1/m1 + 1/m2))
 * for two. The eigenvalues of the chain are found by Sturm's sequence and bisection.
 */
export function bounceResonances(model: FloorModel): NamedFrequency[] {
  const masses = model.plates.map((p) => p.surfaceMass_kg_m2);
  const springs = model.interlayers.map((_, i) => interlayerStiffness_N_m3(model, i));
  // In the springs' extensions the matrix is tridiagonal: diagonal s_i(1/m_i + 1/m_{i+1}), beside it √(s_i s_{i+1})/m_{i+1}.
  const diagonal = springs.map((s, i) => s * (1 / masses[i]! + 1 / masses[i + 1]!));
  const beside = springs.slice(1).map((s, i) => Math.sqrt(s * springs[i]!) / masses[i + 1]!);
  return diagonal.map((_, rank) => {
    const squared = tridiagonalEigenvalue(diagonal, beside, rank);
    const index = nearestSpring(diagonal, squared);
    const mat = model.interlayers[index]!.kind === 'mat';
    return {
      frequency_Hz: Math.sqrt(squared) / (2 * Math.PI),
      name: mat
        ? `${leafName(model, index)} floats on the mat`
        : `${leafName(model, index)} and ${leafName(model, index + 1)} bounce on ${springName(model.interlayers[index] as CavityModel)}`,
      kind: mat ? 'floating' : 'mass-spring-mass',
    };
  });
}

/** Which interlayer's own resonance lies nearest to the mode: it is stretched most. */
function nearestSpring(diagonal: readonly number[], squared: number): number {
  let best = 0;
  for (let i = 1; i < diagonal.length; i++) {
    if (Math.abs(Math.log(diagonal[i]! / squared)) < Math.abs(Math.log(diagonal[best]! / squared))) best = i;
  }
  return best;
}

/** First resonance across the depth of each cavity, c/2d. */
function cavityModes(model: FloorModel): NamedFrequency[] {
  const several = model.interlayers.filter(({ kind }) => kind === 'cavity').length > 1;
  return model.interlayers.flatMap((layer, i) => {
    if (layer.kind !== 'cavity') return [];
    const leaves = several ? `${leafName(model, i)} and ${leafName(model, i + 1)}` : 'the leaves';
    return {
      frequency_Hz: firstAcross_Hz(layer, model.air),
      name: `half a wavelength fits between ${leaves}`,
      kind: 'cavity' as const,
    };
  });
}

function bayResonances(model: FloorModel): NamedFrequency[] {
  return model.interlayers.flatMap((layer, i) => {
    if (layer.kind !== 'cavity' || !layer.chain) return [];
    const framed = layer.cavity.joists !== 'none' || layer.chain.lower;
    const ends = framed ? [{ leaf: i, spacing_m: layer.chain.upper.line_m }] : [];
    if (layer.chain.lower) ends.push({ leaf: i + 1, spacing_m: layer.chain.lower.line_m });
    return ends.map(({ leaf, spacing_m }) => {
      const plate = model.plates[leaf]!;
      return {
        frequency_Hz: bayResonance_Hz(plate, spacing_m),
        name: `${leafName(model, leaf)} swings between its fastenings`,
        kind: 'bay' as const,
      };
    });
  });
}

/** What stiffens a cavity besides its air: through what the leaf below is held. */
export const HELD_BY: Readonly<Record<SupportKind, string>> = {
  direct: 'joists',
  'resilient-channel': 'channel',
  clips: 'clips',
  hangers: 'hangers',
  'separate-joists': 'joists',
};

function springName({ chain, cavity }: CavityModel): string {
  return chain?.lower ? `the air and the ${HELD_BY[cavity.support]}` : 'the air';
}

function leafName({ plates }: FloorModel, index: number): string {
  if (plates.length === 1) return 'the leaf';
  if (index === 0) return 'the upper leaf';
  if (index === plates.length - 1) return 'the lower leaf';
  return plates.length === 3 ? 'the middle leaf' : `leaf ${index + 1}`;
}
