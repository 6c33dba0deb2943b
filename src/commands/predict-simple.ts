import type { Construction } from '#src/acoustics/construction.ts';
import { type FloorModel, floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { bareSlabLnw, bareSlabRw, reductionPlusImpact_dB } from '#src/acoustics/simple/bare-slab.ts';
import { coveringImprovement_dB, floatingImprovement_dB } from '#src/acoustics/simple/floating-floor.ts';
import { massLaw_dB } from '#src/acoustics/simple/mass-law.ts';
import { bareSlabOf, doubleLeafOf, floatingLeafOf } from '#src/acoustics/simple/model-fits.ts';
import { sewellPanel_dB } from '#src/acoustics/simple/sewell-panel.ts';
import { type SimpleFloor, simpleFloor } from '#src/acoustics/simple/simple-floor.ts';
import { threeBranchDoubleLeaf } from '#src/acoustics/simple/three-branch-double-leaf.ts';

export type SimpleModelKey = 'massLaw' | 'sewell' | 'doubleLeaf' | 'floating' | 'covering' | 'bareSlab';

/** A textbook rule beside the prediction: for learning, not for planning. */
export interface SimpleModel {
  readonly key: SimpleModelKey;
  /** Transmission loss, reduction of impact level, or R + Ln. */
  readonly quantity: 'R' | 'ΔL' | 'R+Ln';
  /** What is taken for what, and the rule. */
  readonly about: string;
  /** One value per band, NaN (null in JSON) outside the rule's range; null where the rule does not fit the stack. */
  readonly values_dB: readonly number[] | null;
  /** Why there are no values. */
  readonly reason?: string;
  /** Numbers behind the rule, and single numbers that it gives. */
  readonly numbers?: Readonly<Record<string, number>>;
}

export const SIMPLE_MODELS: readonly { readonly key: SimpleModelKey; readonly heading: string }[] = [
  { key: 'massLaw', heading: 'mass law' },
  { key: 'sewell', heading: 'Sewell' },
  { key: 'doubleLeaf', heading: 'double leaf' },
  { key: 'floating', heading: 'ΔL floating' },
  { key: 'covering', heading: 'ΔL covering' },
  { key: 'bareSlab', heading: 'R+Ln slab' },
];

interface Floor {
  /** As the textbooks see it. */
  readonly simple: SimpleFloor;
  /** As the engine sees it. */
  readonly model: FloorModel;
}

type Rule = (floor: Floor, prediction: Prediction) => SimpleModel;

export function simpleModels(construction: Construction, prediction: Prediction): readonly SimpleModel[] {
  const floor = { simple: simpleFloor(construction), model: floorModel(construction, MODEL_CONSTANTS) };
  return RULES.map((rule) => rule(floor, prediction));
}

const massLaw: Rule = (_, { bands_Hz, surfaceMass_kg_m2 }) => ({
  key: 'massLaw',
  quantity: 'R',
  about: 'the whole mass as one limp leaf, sound from all angles up to 78°',
  values_dB: bands_Hz.map((frequency_Hz) => massLaw_dB({ surfaceMass_kg_m2, frequency_Hz, incidence: 'field' })),
  numbers: { surfaceMass_kg_m2 },
});

const sewell: Rule = ({ model: { plates, edges } }, { bands_Hz, surfaceMass_kg_m2 }) => {
  const only = plates.length === 1 ? { criticalFrequency_Hz: plates[0]!.criticalFrequency_Hz } : {};
  const { area_m2 } = edges;
  const leaf = plates.length === 1 ? 'the leaf' : 'the whole mass as one limp leaf';
  return {
    key: 'sewell',
    quantity: 'R',
    about: `${leaf} of the floor's area in a diffuse field, below its critical frequency (Sewell 1970)`,
    values_dB: bands_Hz.map((frequency_Hz) => sewellPanel_dB({ surfaceMass_kg_m2, area_m2, frequency_Hz, ...only })),
    numbers: { surfaceMass_kg_m2, area_m2, ...only },
  };
};

const doubleLeaf: Rule = ({ simple }, { bands_Hz }) => {
  const head = {
    key: 'doubleLeaf',
    quantity: 'R',
    about: 'two leaves on air and absorption, nothing that ties them (Sharp 1978)',
  } as const;
  const leaves = doubleLeafOf(simple);
  if (typeof leaves === 'string') return { ...head, values_dB: null, reason: leaves };
  const { R_dB, resonance_Hz, limit_Hz } = threeBranchDoubleLeaf({ bands_Hz, ...leaves });
  return { ...head, values_dB: R_dB, numbers: { ...leaves, resonance_Hz, limit_Hz } };
};

const floating: Rule = ({ simple }, { bands_Hz }) => {
  const head = {
    key: 'floating',
    quantity: 'ΔL',
    about: 'the upper leaf on its mat over a heavy floor: 30 lg(f/f0) for a screed in one piece, else 40 lg(f/f0)',
  } as const;
  const leaf = floatingLeafOf(simple);
  if (typeof leaf === 'string') return { ...head, values_dB: null, reason: leaf };
  const { surfaceMass_kg_m2, resonance_Hz, kind } = leaf;
  return {
    ...head,
    values_dB: bands_Hz.map((f) => floatingImprovement_dB(f, resonance_Hz, kind)),
    numbers: { surfaceMass_kg_m2, resonance_Hz },
  };
};

const covering: Rule = ({ model: { construction } }, { bands_Hz }) => {
  const head = {
    key: 'covering',
    quantity: 'ΔL',
    about: 'what the covering takes off by lengthening the blow, on a heavy floor: 40 lg(f/f0)',
  } as const;
  const stiffness_N_m = construction.covering?.contactStiffness_N_m;
  if (stiffness_N_m === undefined)
    return { ...head, values_dB: null, reason: 'it is made for a floor with a covering, and this one has none' };
  return {
    ...head,
    values_dB: bands_Hz.map((f) => coveringImprovement_dB(f, stiffness_N_m)),
    numbers: { contactStiffness_N_m: stiffness_N_m },
  };
};

const bareSlab: Rule = ({ simple, model: { plates } }, { bands_Hz }) => {
  const head = {
    key: 'bareSlab',
    quantity: 'R+Ln',
    about:
      'a bare slab above its critical frequency (Heckl & Rathe 1963); Rw from 150 kg/m², Ln,w from 100 to 600 kg/m² by its mass alone (EN 12354)',
  } as const;
  const slab = bareSlabOf(simple);
  if (typeof slab === 'string') return { ...head, values_dB: null, reason: slab };
  const { surfaceMass_kg_m2 } = slab;
  const { criticalFrequency_Hz } = plates[0]!;
  return {
    ...head,
    values_dB: bands_Hz.map((f) => reductionPlusImpact_dB(f, criticalFrequency_Hz)),
    numbers: {
      surfaceMass_kg_m2,
      criticalFrequency_Hz,
      Rw: bareSlabRw(surfaceMass_kg_m2),
      Lnw: bareSlabLnw(surfaceMass_kg_m2),
    },
  };
};

const RULES: readonly Rule[] = [massLaw, sewell, doubleLeaf, floating, covering, bareSlab];
