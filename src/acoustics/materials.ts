/**
 * Built-in materials, each row with its source. SI units.
 *
 * Stiffness and loss of boards, screeds and concrete are global constants of the model ("fitted"), within the published
 * ranges; densities are design values.
 */
export interface SheetMaterial {
  readonly key: string;
  readonly name: string;
  readonly form: 'slab' | 'board';
  readonly density_kg_m3: number;
  readonly youngsModulus_Pa: number;
  /** Across the stiff direction; absent for an isotropic material. */
  readonly youngsModulusAcross_Pa?: number;
  readonly poissonRatio: number;
  readonly lossFactor: number;
  /** Local stiffness under a hammer, N/m; absent: rigid. */
  readonly contactStiffness_N_m?: number;
  /** Thicknesses the trade sells or pours, m. */
  readonly usualThicknesses_m: readonly number[];
  readonly source: string;
}

export interface FibreMaterial {
  readonly key: string;
  readonly name: string;
  readonly density_kg_m3: number;
  readonly flowResistivity_Pa_s_m2: number;
  readonly source: string;
}

export interface MatProduct {
  readonly key: string;
  readonly name: string;
  readonly thickness_m: number;
  readonly dynamicStiffness_N_m3: number;
  readonly lossFactor: number;
  readonly source: string;
}

export interface CoveringMaterial {
  readonly key: string;
  readonly name: string;
  readonly surfaceMass_kg_m2: number;
  readonly contactStiffness_N_m: number;
  readonly thickness_m: number;
  readonly source: string;
}

const MEMORY = 'from memory, unverified';
const FITTED = 'stiffness and loss fitted within the published range';

export const SHEET_MATERIALS: readonly SheetMaterial[] = [
  {
    key: 'gypsum-board',
    name: 'gypsum board',
    form: 'board',
    density_kg_m3: 700,
    youngsModulus_Pa: 2.1e9,
    poissonRatio: 0.3,
    lossFactor: 0.03,
    contactStiffness_N_m: 2e7,
    usualThicknesses_m: [0.0095, 0.0127, 0.0159],
    source: `density common practice; ${FITTED}`,
  },
  {
    key: 'plywood',
    name: 'plywood',
    form: 'board',
    density_kg_m3: 600,
    youngsModulus_Pa: 5e9,
    poissonRatio: 0.3,
    lossFactor: 0.05,
    contactStiffness_N_m: 2e7,
    usualThicknesses_m: [0.0127, 0.0159, 0.019],
    source: `density common practice; ${FITTED}`,
  },
  {
    key: 'osb',
    name: 'oriented strand board',
    form: 'board',
    density_kg_m3: 600,
    youngsModulus_Pa: 5e9,
    poissonRatio: 0.3,
    lossFactor: 0.05,
    contactStiffness_N_m: 2e7,
    usualThicknesses_m: [0.0151, 0.0183, 0.022],
    source: `density: Hopkins, Sound Insulation, 2007, Table A2 (${MEMORY}); ${FITTED}`,
  },
  {
    key: 'softwood-boards',
    name: 'softwood boards',
    form: 'board',
    density_kg_m3: 450,
    youngsModulus_Pa: 8e9,
    poissonRatio: 0.3,
    lossFactor: 0.05,
    contactStiffness_N_m: 2e7,
    usualThicknesses_m: [0.019, 0.025, 0.032],
    source: `density: timber component catalogue (design value); ${FITTED}`,
  },
  {
    key: 'concrete',
    name: 'concrete',
    form: 'slab',
    density_kg_m3: 2300,
    youngsModulus_Pa: 28e9,
    poissonRatio: 0.2,
    lossFactor: 0.006,
    usualThicknesses_m: [0.1, 0.15, 0.2],
    source: `EN 12354-1:2000 Annex B, cL 3500 m/s, loss 0.006 (${MEMORY})`,
  },
  {
    key: 'cellular-concrete',
    name: 'cellular concrete topping',
    form: 'slab',
    density_kg_m3: 1760,
    youngsModulus_Pa: 10e9,
    poissonRatio: 0.2,
    lossFactor: 0.01,
    usualThicknesses_m: [0.025, 0.038, 0.05],
    source: `density 1680–1920 kg/m³ common practice, no source; ${FITTED}`,
  },
  {
    key: 'gypsum-concrete',
    name: 'gypsum concrete topping',
    form: 'slab',
    density_kg_m3: 1850,
    youngsModulus_Pa: 10e9,
    poissonRatio: 0.2,
    lossFactor: 0.01,
    usualThicknesses_m: [0.019, 0.025, 0.038],
    source: `density common practice, no source; ${FITTED}`,
  },
  {
    key: 'cement-screed',
    name: 'cement screed',
    form: 'slab',
    density_kg_m3: 2200,
    youngsModulus_Pa: 25e9,
    poissonRatio: 0.2,
    lossFactor: 0.01,
    usualThicknesses_m: [0.04, 0.05, 0.06],
    source: `density common practice, no source; ${FITTED}`,
  },
];

export const FIBRE_MATERIALS: readonly FibreMaterial[] = [
  {
    key: 'glass-fibre',
    name: 'glass fibre batt',
    density_kg_m3: 14,
    flowResistivity_Pa_s_m2: 8000,
    source: 'density: Tarnow, JASA 108(5), 2000; flow resistivity common practice, no source',
  },
  {
    key: 'mineral-wool',
    name: 'mineral wool batt',
    density_kg_m3: 40,
    flowResistivity_Pa_s_m2: 12000,
    source: 'common practice, no source',
  },
];

export const MAT_PRODUCTS: readonly MatProduct[] = [];

export const COVERINGS: readonly CoveringMaterial[] = [];
