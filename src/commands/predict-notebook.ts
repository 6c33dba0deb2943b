import type { Construction } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { Prediction, PredictOptions } from '#src/acoustics/prediction.ts';
import { type FieldValues, fieldValues } from '#src/acoustics/ratings/field-values.ts';
import { diffuseFrom_Hz } from '#src/acoustics/room-modes.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { FORMAT, type Notebook, type Stack, VERSION } from '#src/notebook/types.ts';
import { version } from '../../package.json';
import type { RoomBelow } from './room-options.ts';

/** What `predict --json` prints; numbers in SI units, levels in dB. */
export interface NotebookPrediction {
  /** Title of the notebook, or name of the stack. */
  readonly notebook: string;
  /** What computed it, with its version. */
  readonly engine: string;
  readonly scenarios: readonly ScenarioPrediction[];
}

export interface ScenarioPrediction {
  readonly name: string;
  readonly stacks: readonly StackPrediction[];
}

export interface StackPrediction extends Omit<Prediction, 'mechanisms'> {
  readonly name: string;
  /**
   * Where bands below 50 Hz are asked for: from this band up every band holds five modes or more of a room of the
   * floor's sides, 2.5 m high (assumed); below it a level depends on the place. Null where no band does.
   */
  readonly diffuseFrom_Hz?: number | null;
  /** As measured above the room that was asked for. */
  readonly field?: FieldValues;
}

/** What is asked for besides the notebook. */
export interface PredictionWishes {
  readonly room?: RoomBelow | undefined;
  readonly lowestBand_Hz?: PredictOptions['lowestBand_Hz'];
}

const ASSUMED_HEIGHT_m = 2.5;

/** One or more stacks could not be computed. */
export class PredictionFailure extends Error {
  /** One sentence for each. */
  readonly failures: readonly string[];

  constructor(failures: readonly string[]) {
    super(failures.join('; '));
    this.name = 'PredictionFailure';
    this.failures = failures;
  }
}

/** @throws PredictionFailure if a stack of a scenario cannot be computed, with every such stack named. */
export function predictNotebook(
  notebook: Notebook,
  { room, lowestBand_Hz = 50 }: PredictionWishes = {},
): NotebookPrediction {
  const failures: string[] = [];
  const scenarios = notebook.scenarios.map((scenario) => ({
    name: scenario.name,
    stacks: notebook.stacks.flatMap((stack) => {
      try {
        const construction = resolveStack(notebook, scenario.id, stack.id);
        const prediction = predict(construction, { lowestBand_Hz });
        return [
          {
            ...shaped(stack.name, prediction),
            ...(lowestBand_Hz < 50 && { diffuseFrom_Hz: diffuseBand_Hz(construction, prediction) }),
            ...(room && { field: inBuilding(construction, prediction, room) }),
          },
        ];
      } catch (error) {
        const reason = error instanceof Error ? error.message : String(error);
        failures.push(`scenario "${scenario.name}", stack "${stack.name}" cannot be computed: ${reason}`);
        return [];
      }
    }),
  }));
  if (failures.length > 0) throw new PredictionFailure(failures);
  return { notebook: notebook.title, engine: `slab-and-spring ${version}`, scenarios };
}

/** A stack on its own, without flanking sound, as the one scenario of a notebook around it. */
export function predictStack(stack: Stack, wishes: PredictionWishes = {}): NotebookPrediction {
  const notebook: Notebook = {
    format: FORMAT,
    version: VERSION,
    id: 'alone',
    title: stack.name,
    units: 'SI',
    parameters: [],
    stacks: [stack],
    materials: [],
    flanking: { kind: 'none', R500_dB: 0, slope_dB_per_octave: 0 },
    cells: [],
    scenarios: [{ id: 'alone', name: stack.name, parent: null, changes: {} }],
    shown: ['alone'],
    reference: 'alone',
    active: 'alone',
  };
  return predictNotebook(notebook, wishes);
}

function inBuilding({ length_m, width_m }: Construction, prediction: Prediction, room: RoomBelow): FieldValues {
  return fieldValues(prediction, { partitionArea_m2: length_m * width_m, ...room });
}

function diffuseBand_Hz({ length_m, width_m }: Construction, { bands_Hz }: Prediction): number | null {
  const from = diffuseFrom_Hz({ length_m, width_m, height_m: ASSUMED_HEIGHT_m }, bands_Hz);
  return Number.isFinite(from) ? from : null;
}

function shaped(name: string, prediction: Prediction): StackPrediction {
  const { bands_Hz, R_dB, paths_dB, Ln_dB, impactPaths_dB, ratings, ...rest } = prediction;
  const { surfaceMass_kg_m2, height_m, resonances_Hz, criticalFrequencies_Hz } = rest;
  return {
    name,
    bands_Hz,
    R_dB,
    paths_dB,
    Ln_dB,
    impactPaths_dB,
    ratings,
    surfaceMass_kg_m2,
    height_m,
    resonances_Hz,
    criticalFrequencies_Hz,
  };
}
