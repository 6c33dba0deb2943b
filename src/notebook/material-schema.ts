import * as v from 'valibot';
import { SHEET_FORMS } from '#src/acoustics/construction.ts';
import { COVERING_LIMITS, MODULUS_Pa } from '#src/acoustics/material-limits.ts';
import { LIMITS } from './limits.ts';
import { closed, key, name, numberWithin, textUpTo } from './schema-parts.ts';

const named = { key, name, source: textUpTo(LIMITS.source) };

/** The limits are those of the engine. */
const modulus_Pa = numberWithin(...MODULUS_Pa);

const sheetMaterial = closed({
  kind: v.literal('sheet'),
  ...named,
  form: v.picklist(SHEET_FORMS),
  density_kg_m3: numberWithin(20, 20_000),
  youngsModulus_Pa: modulus_Pa,
  youngsModulusAcross_Pa: v.exactOptional(modulus_Pa),
  poissonRatio: numberWithin(0, 0.49),
  lossFactor: numberWithin(1e-4, 1),
  contactStiffness_N_m: v.exactOptional(numberWithin(1, 1e12)),
});

const fibreMaterial = closed({
  kind: v.literal('fibre'),
  ...named,
  density_kg_m3: numberWithin(0, 1000),
  flowResistivity_Pa_s_m2: numberWithin(50, 1e7),
});

const covering = closed({
  kind: v.literal('covering'),
  ...named,
  surfaceMass_kg_m2: numberWithin(...COVERING_LIMITS.surfaceMass_kg_m2),
  thickness_m: numberWithin(...COVERING_LIMITS.thickness_m),
  contactStiffness_N_m: numberWithin(...COVERING_LIMITS.contactStiffness_N_m),
});

/** What a notebook, or a stack on its own, brings beside the built-in materials. */
export const ownMaterial = v.variant('kind', [sheetMaterial, fibreMaterial, covering]);
