/**
 * Built-in materials. SI units; where the numbers come from stands in `material-sources.ts`, which only those load who
 * read it.
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
}

export interface FibreMaterial {
  readonly key: string;
  readonly name: string;
  readonly density_kg_m3: number;
  readonly flowResistivity_Pa_s_m2: number;
}

export interface MatProduct {
  readonly key: string;
  readonly name: string;
  readonly thickness_m: number;
  readonly dynamicStiffness_N_m3: number;
  readonly lossFactor: number;
}

export interface CoveringMaterial {
  readonly key: string;
  readonly name: string;
  readonly surfaceMass_kg_m2: number;
  readonly contactStiffness_N_m: number;
  readonly thickness_m: number;
}

export const SHEET_MATERIALS: readonly SheetMaterial[] = [
  {
    key: 'gypsum-board',
    name: 'gypsum board',
    form: 'board',
    density_kg_m3: 700,
    youngsModulus_Pa: 2.1e9,
    poissonRatio: 0.3,
    lossFactor: 0.035,
    contactStiffness_N_m: 2e7,
  },
  {
    key: 'gypsum-board-fire-rated',
    name: 'fire-rated gypsum board',
    form: 'board',
    density_kg_m3: 800,
    youngsModulus_Pa: 2.4e9,
    poissonRatio: 0.3,
    lossFactor: 0.035,
    contactStiffness_N_m: 2e7,
  },
  {
    key: 'gypsum-fibre-board',
    name: 'gypsum-fibre board',
    form: 'board',
    density_kg_m3: 1000,
    youngsModulus_Pa: 3.8e9,
    poissonRatio: 0.3,
    lossFactor: 0.03,
    contactStiffness_N_m: 2e7,
  },
  {
    key: 'dry-screed',
    name: 'dry screed (gypsum)',
    form: 'board',
    density_kg_m3: 900,
    youngsModulus_Pa: 3e9,
    poissonRatio: 0.3,
    lossFactor: 0.03,
    contactStiffness_N_m: 2e7,
  },
  {
    key: 'cement-board',
    name: 'cement board',
    form: 'board',
    density_kg_m3: 1350,
    youngsModulus_Pa: 6e9,
    poissonRatio: 0.25,
    lossFactor: 0.03,
    contactStiffness_N_m: 1e8,
  },
  {
    key: 'magnesium-oxide-board',
    name: 'magnesium-oxide board',
    form: 'board',
    density_kg_m3: 1050,
    youngsModulus_Pa: 5e9,
    poissonRatio: 0.25,
    lossFactor: 0.03,
    contactStiffness_N_m: 1e8,
  },
  {
    key: 'plywood',
    name: 'plywood',
    form: 'board',
    density_kg_m3: 600,
    youngsModulus_Pa: 5.8e9,
    poissonRatio: 0.3,
    lossFactor: 0.05,
    contactStiffness_N_m: 2e7,
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
  },
  {
    key: 'chipboard',
    name: 'chipboard',
    form: 'board',
    density_kg_m3: 760,
    youngsModulus_Pa: 3.3e9,
    poissonRatio: 0.3,
    lossFactor: 0.03,
    contactStiffness_N_m: 2e7,
  },
  {
    key: 'hardwood-flooring',
    name: 'hardwood strip flooring',
    form: 'board',
    density_kg_m3: 700,
    youngsModulus_Pa: 5e9,
    poissonRatio: 0.3,
    lossFactor: 0.05,
    contactStiffness_N_m: 2e7,
  },
  {
    key: 'engineered-wood-flooring',
    name: 'engineered wood flooring',
    form: 'board',
    density_kg_m3: 650,
    youngsModulus_Pa: 6e9,
    poissonRatio: 0.3,
    lossFactor: 0.05,
    contactStiffness_N_m: 2e7,
  },
  {
    key: 'cross-laminated-timber',
    name: 'cross-laminated timber',
    form: 'board',
    density_kg_m3: 480,
    youngsModulus_Pa: 8e9,
    youngsModulusAcross_Pa: 3e9,
    poissonRatio: 0.1,
    lossFactor: 0.06,
    contactStiffness_N_m: 2e7,
  },
  {
    key: 'chippings',
    name: 'chippings fill',
    form: 'board',
    density_kg_m3: 1500,
    youngsModulus_Pa: 2e7,
    poissonRatio: 0.2,
    lossFactor: 0.3,
    contactStiffness_N_m: 1e6,
  },
  {
    key: 'ceramic-tile',
    name: 'ceramic tile',
    form: 'slab',
    density_kg_m3: 2300,
    youngsModulus_Pa: 30e9,
    poissonRatio: 0.2,
    lossFactor: 0.01,
  },
  {
    key: 'glass',
    name: 'glass',
    form: 'board',
    density_kg_m3: 2500,
    youngsModulus_Pa: 64e9,
    poissonRatio: 0.24,
    lossFactor: 0.04,
  },
  {
    key: 'steel',
    name: 'steel sheet',
    form: 'board',
    density_kg_m3: 7850,
    youngsModulus_Pa: 210e9,
    poissonRatio: 0.28,
    lossFactor: 0.01,
  },
  {
    key: 'hollow-core-slab',
    name: 'hollow-core slab (solid of the same mass and stiffness)',
    form: 'slab',
    density_kg_m3: 1500,
    youngsModulus_Pa: 24e9,
    youngsModulusAcross_Pa: 14e9,
    poissonRatio: 0.2,
    lossFactor: 0.006,
  },
  {
    key: 'aerated-concrete',
    name: 'autoclaved aerated concrete',
    form: 'slab',
    density_kg_m3: 600,
    youngsModulus_Pa: 2.1e9,
    poissonRatio: 0.2,
    lossFactor: 0.0125,
  },
  {
    key: 'concrete',
    name: 'concrete',
    form: 'slab',
    density_kg_m3: 2300,
    youngsModulus_Pa: 28e9,
    poissonRatio: 0.2,
    lossFactor: 0.01,
  },
  {
    key: 'cellular-concrete',
    name: 'cellular concrete topping',
    form: 'slab',
    density_kg_m3: 1760,
    youngsModulus_Pa: 10e9,
    poissonRatio: 0.2,
    lossFactor: 0.01,
  },
  {
    key: 'gypsum-concrete',
    name: 'gypsum concrete topping',
    form: 'slab',
    density_kg_m3: 1850,
    youngsModulus_Pa: 10e9,
    poissonRatio: 0.2,
    lossFactor: 0.01,
  },
  {
    key: 'cement-screed',
    name: 'cement screed',
    form: 'slab',
    density_kg_m3: 2200,
    youngsModulus_Pa: 25e9,
    poissonRatio: 0.2,
    lossFactor: 0.01,
  },
];

export const FIBRE_MATERIALS: readonly FibreMaterial[] = [
  {
    key: 'glass-fibre',
    name: 'glass fibre batt',
    density_kg_m3: 14,
    flowResistivity_Pa_s_m2: 8000,
  },
  {
    key: 'mineral-wool',
    name: 'mineral wool batt',
    density_kg_m3: 40,
    flowResistivity_Pa_s_m2: 12000,
  },
];

/** Dynamic stiffness of mats. Ask the maker for s′ by ISO 9052-1 before relying on one. */
export const MAT_PRODUCTS: readonly MatProduct[] = [
  {
    key: 'mineral-wool-board-soft',
    name: 'mineral wool impact board, s′ 6 MN/m³',
    thickness_m: 0.04,
    dynamicStiffness_N_m3: 6e6,
    lossFactor: 0.2,
  },
  {
    key: 'mineral-wool-board',
    name: 'mineral wool impact board, s′ 10 MN/m³',
    thickness_m: 0.03,
    dynamicStiffness_N_m3: 10e6,
    lossFactor: 0.2,
  },
  {
    key: 'mineral-wool-board-stiff',
    name: 'mineral wool impact board, s′ 40 MN/m³',
    thickness_m: 0.03,
    dynamicStiffness_N_m3: 40e6,
    lossFactor: 0.2,
  },
  {
    key: 'entangled-mat',
    name: 'entangled mesh mat',
    thickness_m: 0.0064,
    dynamicStiffness_N_m3: 30e6,
    lossFactor: 0.2,
  },
  {
    key: 'rubber-mat',
    name: 'granulated rubber mat',
    thickness_m: 0.006,
    dynamicStiffness_N_m3: 100e6,
    lossFactor: 0.2,
  },
];

export const COVERINGS: readonly CoveringMaterial[] = [
  {
    key: 'carpet-on-pad',
    name: 'heavy carpet on pad',
    surfaceMass_kg_m2: 4,
    contactStiffness_N_m: 3e4,
    thickness_m: 0.018,
  },
  {
    key: 'carpet',
    name: 'carpet',
    surfaceMass_kg_m2: 2,
    contactStiffness_N_m: 1.5e5,
    thickness_m: 0.008,
  },
  {
    key: 'sheet-vinyl',
    name: 'sheet vinyl',
    surfaceMass_kg_m2: 3,
    contactStiffness_N_m: 4e6,
    thickness_m: 0.0025,
  },
  {
    key: 'vinyl-plank',
    name: 'vinyl plank with foam back',
    surfaceMass_kg_m2: 8,
    contactStiffness_N_m: 1.5e6,
    thickness_m: 0.006,
  },
];
