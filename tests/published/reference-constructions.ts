/**
 * The measured constructions as the engine's input. What a description leaves open is filled in by common practice and
 * said here: specimens 4 m × 2.5 m (10 m², perimeter 13 m), panes 1.5 m × 1.25 m, joist spacing 406 mm, 76 mm of rock wool
 * in t2, mats and vinyl by assumed values of the usual order. Nothing here is fitted to the row it describes.
 */
import type {
  Cavity,
  Construction,
  Covering,
  FibreLayer,
  Interlayer,
  Leaf,
  Mat,
  Sheet,
  SheetContact,
} from '#src/acoustics/construction.ts';
import { COVERINGS, FIBRE_MATERIALS, SHEET_MATERIALS } from '#src/acoustics/materials.ts';
import type { MEASURED_RATINGS } from './measured-ratings.ts';
import type { MEASURED_SPECTRA } from './measured-spectra.ts';

export type ReferenceId = keyof typeof MEASURED_SPECTRA | keyof typeof MEASURED_RATINGS;

/** fitted: in the fit and judged by leave-one-out; judged: never fitted; printed: unverified or contradictory rows. */
export type ReferenceRole = 'fitted' | 'judged' | 'printed';

/**
 * The laboratory's own limit: R 74 dB at 500 Hz, +3 dB per octave; an assumed value, at least what a floor of Rw 74 measured
 * in one (rows a1, a2) asks for.
 */
export const LABORATORY = { R500_dB: 74, slope_dB_per_octave: 3 };

export const REFERENCE_ROLES: Record<ReferenceId, ReferenceRole> = {
  w1: 'fitted',
  w2: 'fitted',
  w3: 'judged',
  w4: 'fitted',
  w5: 'fitted',
  f1: 'fitted',
  f2: 'fitted',
  f3: 'fitted',
  f4: 'judged',
  t1: 'fitted',
  t2: 'fitted',
  t3: 'fitted',
  t4: 'judged',
  c75: 'judged',
  c100: 'judged',
  c125: 'judged',
  c150: 'judged',
  c170: 'judged',
  c200: 'judged',
  g1: 'judged',
  g2: 'judged',
  g3: 'judged',
  g4: 'judged',
  a1: 'judged',
  a2: 'judged',
  a3: 'judged',
  a4: 'judged',
  s1: 'printed',
  s2: 'printed',
  s3: 'printed',
  s4: 'printed',
  t5: 'printed',
  t6: 'printed',
  t7: 'printed',
};

export function sheet(key: string, thickness_m: number, change: Partial<Sheet> = {}): Sheet {
  const material = SHEET_MATERIALS.find((m) => m.key === key);
  if (!material) throw new RangeError(`key must name a sheet material, got "${key}"`);
  const { name, density_kg_m3, youngsModulus_Pa, poissonRatio, lossFactor, form } = material;
  return {
    name,
    thickness_m,
    density_kg_m3,
    youngsModulus_Pa,
    ...(material.youngsModulusAcross_Pa ? { youngsModulusAcross_Pa: material.youngsModulusAcross_Pa } : {}),
    poissonRatio,
    lossFactor,
    form,
    ...(material.contactStiffness_N_m ? { contactStiffness_N_m: material.contactStiffness_N_m } : {}),
    ...change,
  };
}

export function leaf(sheets: readonly Sheet[], contact: SheetContact = 'loose'): Leaf {
  return { kind: 'leaf', sheets, contact };
}

export function fibre(key: string, thickness_m: number): FibreLayer {
  const material = FIBRE_MATERIALS.find((m) => m.key === key);
  if (!material) throw new RangeError(`key must name a fibre material, got "${key}"`);
  const { name, density_kg_m3, flowResistivity_Pa_s_m2 } = material;
  return { name, thickness_m, density_kg_m3, flowResistivity_Pa_s_m2 };
}

export function covering(key: string): Covering {
  const material = COVERINGS.find((m) => m.key === key);
  if (!material) throw new RangeError(`key must name a covering, got "${key}"`);
  const { name, surfaceMass_kg_m2, contactStiffness_N_m, thickness_m } = material;
  return { name, surfaceMass_kg_m2, contactStiffness_N_m, thickness_m };
}

export function mat(name: string, thickness_m: number, dynamicStiffness_N_m3: number, lossFactor = 0.2): Mat {
  return { kind: 'mat', name, thickness_m, dynamicStiffness_N_m3, lossFactor };
}

/** A cavity of timber joists 38 × 235 mm at 406 mm with the lower leaf screwed direct, unless changed. */
export function cavity(change: Partial<Cavity> = {}): Cavity {
  return {
    kind: 'cavity',
    joists: 'solid-timber',
    depth_m: 0.235,
    joistWidth_m: 0.038,
    joistSpacing_m: 0.406,
    support: 'direct',
    fill: [],
    ...change,
  };
}

export function floor(...layers: (Leaf | Interlayer)[]): Construction {
  return { length_m: 4, width_m: 2.5, flanking: LABORATORY, layers };
}

const woodStud = { depth_m: 0.089 };
const steelStud = { joists: 'cold-formed-steel', depth_m: 0.0635, joistWidth_m: 0.032, joistSpacing_m: 0.61 } as const;
const gypsum12 = sheet('gypsum-board', 0.0127);
const gypsum16 = sheet('gypsum-board', 0.0159);
const fireRated16 = sheet('gypsum-board-fire-rated', 0.0159);
/** Strip flooring is nailed through the plywood every few centimetres, so that both bend as one. */
const deck = leaf([sheet('hardwood-flooring', 0.0198), sheet('plywood', 0.0127)], 'bonded');
const channel = { support: 'resilient-channel', supportLineSpacing_m: 0.61 } as const;
const clips = { support: 'clips', supportLineSpacing_m: 0.61, supportPointSpacing_m: 1.219 } as const;

function wall(sheets: readonly Sheet[], between: Partial<Cavity>): Construction {
  return floor(leaf(sheets), cavity(between), leaf(sheets));
}

function slab(thickness_m: number): Leaf {
  return leaf([sheet('concrete', thickness_m)]);
}

function pane(thickness_m: number): Construction {
  return { ...floor(leaf([sheet('glass', thickness_m)])), length_m: 1.5, width_m: 1.25 };
}

function timberSlab(thickness_m: number, density_kg_m3: number, fillMass_kg_m2: number, fill_m: number): Leaf {
  return leaf([
    sheet('chippings', fill_m, { density_kg_m3: fillMass_kg_m2 / fill_m }),
    sheet('cross-laminated-timber', thickness_m, { density_kg_m3 }),
  ]);
}

export const REFERENCE_CONSTRUCTIONS: Record<ReferenceId, Construction> = {
  w1: wall([gypsum12], woodStud),
  w2: wall([gypsum12], { ...woodStud, fill: [fibre('glass-fibre', 0.05)] }),
  w3: wall([gypsum12, gypsum12], woodStud),
  w4: wall([gypsum16], steelStud),
  w5: wall([gypsum16], { ...steelStud, fill: [fibre('glass-fibre', 0.05)] }),
  f1: floor(deck, cavity(), leaf([gypsum16])),
  f2: floor(deck, cavity(channel), leaf([gypsum16])),
  f3: floor(deck, cavity({ ...channel, fill: [fibre('glass-fibre', 0.075)] }), leaf([gypsum16])),
  f4: {
    ...floor(
      leaf([sheet('concrete', 0.041), sheet('plywood', 0.0159)]),
      cavity({ joists: 'open-truss', depth_m: 0.457, joistWidth_m: 0.05 }),
      leaf([gypsum16]),
    ),
    covering: covering('carpet-on-pad'),
  },
  t1: {
    ...floor(
      leaf([sheet('plywood', 0.0127), sheet('plywood', 0.0159)]),
      cavity({ ...clips, fill: [fibre('glass-fibre', 0.152)] }),
      leaf([fireRated16, fireRated16]),
    ),
    covering: covering('sheet-vinyl'),
  },
  t2: floor(
    leaf([sheet('cement-board', 0.02)]),
    cavity({
      joists: 'cold-formed-steel',
      depth_m: 0.254,
      joistWidth_m: 0.041,
      supportHeight_m: 0.022,
      supportPointSpacing_m: 0.61,
      fill: [fibre('mineral-wool', 0.076)],
    }),
    leaf([gypsum16]),
  ),
  t3: floor(
    leaf([sheet('magnesium-oxide-board', 0.0187)]),
    cavity({
      ...channel,
      joists: 'cold-formed-steel',
      depth_m: 0.305,
      joistWidth_m: 0.041,
      fill: [fibre('mineral-wool', 0.089)],
    }),
    leaf([gypsum16]),
  ),
  t4: {
    ...floor(
      leaf([sheet('gypsum-concrete', 0.0254)]),
      mat('entangled mat', 0.0064, 30e6),
      leaf([sheet('osb', 0.0188)]),
      cavity({ ...clips, joists: 'i-joist', depth_m: 0.302, joistWidth_m: 0.063, fill: [fibre('glass-fibre', 0.089)] }),
      leaf([gypsum16, gypsum16]),
    ),
    covering: covering('vinyl-plank'),
  },
  t5: floor(leaf([sheet('engineered-wood-flooring', 0.012)]), mat('rubber', 0.003, 200e6), slab(0.152)),
  t6: floor(leaf([sheet('engineered-wood-flooring', 0.012)]), mat('rubber', 0.006, 100e6), slab(0.152)),
  t7: floor(leaf([sheet('ceramic-tile', 0.007)]), mat('rubber', 0.005, 120e6), slab(0.152)),
  c75: floor(slab(0.075)),
  c100: floor(slab(0.1)),
  c125: floor(slab(0.125)),
  c150: floor(slab(0.15)),
  c170: floor(slab(0.17)),
  c200: floor(slab(0.2)),
  s1: floor(slab(0.1)),
  s2: floor(slab(0.15)),
  s3: floor(slab(0.2)),
  s4: floor(leaf([sheet('softwood-boards', 0.019)]), mat('battens on glass fibre', 0.063, 10e6), slab(0.15)),
  g1: pane(0.003),
  g2: pane(0.006),
  g3: pane(0.0127),
  g4: pane(0.019),
  a1: floor(
    leaf([sheet('cement-screed', 0.06, { density_kg_m3: 2500 })]),
    mat('mineral wool impact board', 0.03, 10e6),
    timberSlab(0.16, 500, 125, 0.1),
  ),
  a2: floor(
    leaf([sheet('cement-screed', 0.06, { density_kg_m3: 2500 })]),
    mat('mineral wool impact board', 0.04, 6e6),
    timberSlab(0.16, 500, 99, 0.08),
  ),
  a3: floor(
    leaf([sheet('dry-screed', 0.025)]),
    mat('mineral wool impact board', 0.03, 40e6),
    timberSlab(0.14, 500, 90, 0.06),
  ),
  a4: floor(
    leaf([sheet('gypsum-fibre-board', 0.025, { density_kg_m3: 1200 })]),
    mat('board', 0.02, 50e6),
    timberSlab(0.14, 450, 27.6, 0.06),
  ),
};
