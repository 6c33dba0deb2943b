import { outsideChecked } from '#src/acoustics/checked-range.ts';
import type { Improvement } from '#src/acoustics/improvement.ts';
import { laidImprovement } from '#src/acoustics/laid-improvement.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { Prediction, Sound } from '#src/acoustics/prediction.ts';
import { outsideCheckedReason, outsideCheckedText } from '#src/notebook/checked-words.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { LoneStack } from '#src/notebook/read-stack.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { type Flanking, FORMAT, type Notebook, VERSION } from '#src/notebook/types.ts';
import { wallsCountFor } from '#src/notebook/walls-counted.ts';
import { version } from '../../package.json';
import { extras, type PredictionWishes, type StackExtras } from './predict-extras.ts';
import { gainOver, type StackGain } from './predict-gains.ts';
import { type RatingNames, ratingNames } from './rating-names.ts';

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

export interface StackPrediction extends Prediction, StackExtras {
  readonly name: string;
  /** For which sounds what goes around by the walls is in the ratings. */
  readonly wallsCounted: readonly Sound[];
  /** What `ratings` are called: apparent names where the walls are counted in them. */
  readonly ratingNames: RatingNames;
  /** What lies far outside of the measured constructions that the engine was checked on. */
  readonly outsideChecked: readonly OutsideRemark[];
  /** What covering and leaves on mats take off impact sound on the standard slab; absent where neither lies on the floor. */
  readonly improvement?: Improvement;
  /** Where gains are asked for, in every scenario but the reference. */
  readonly gain?: StackGain;
}

export interface OutsideRemark {
  /** `joists 5000 mm deep (checked 64 to 457 mm)`. */
  readonly text: string;
  /** Where the limits come from. */
  readonly reason: string;
}

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

const SOUNDS: readonly Sound[] = ['airborne', 'impact'];

/** @throws PredictionFailure if a stack of a scenario cannot be computed, with every such stack named. */
export function predictNotebook(notebook: Notebook, wishes: PredictionWishes = {}): NotebookPrediction {
  const failures: string[] = [];
  const wallsCounted = SOUNDS.filter((sound) => wallsCountFor(sound, notebook));
  const names = ratingNames(wallsCounted);
  const scenarios = notebook.scenarios.map((scenario) => ({
    name: scenario.name,
    stacks: notebook.stacks.flatMap((stack): readonly StackPrediction[] => {
      try {
        const construction = resolveStack(notebook, scenario.id, stack.id);
        const options = { lowestBand_Hz: wishes.lowestBand_Hz ?? 50 };
        const prediction = predict(construction, options);
        const improvement = laidImprovement(construction, options);
        const layerNames = stack.layers.map(({ name }) => name);
        const outside = outsideChecked(construction).map((found) => ({
          text: outsideCheckedText(found, notebook.units),
          reason: outsideCheckedReason(found),
        }));
        return [
          {
            name: stack.name,
            ...prediction,
            wallsCounted,
            ratingNames: names,
            outsideChecked: outside,
            ...(improvement && { improvement }),
            ...extras(construction, layerNames, prediction, wishes),
          },
        ];
      } catch (error) {
        const reason = messageOf(error);
        failures.push(`scenario "${scenario.name}", stack "${stack.name}" cannot be computed: ${reason}`);
        return [];
      }
    }),
  }));
  if (failures.length > 0) throw new PredictionFailure(failures);
  return {
    notebook: notebook.title,
    engine: `slab-and-spring ${version}`,
    scenarios: wishes.gains ? withGains(scenarios, notebook) : scenarios,
  };
}

/** Every scenario has every stack, in the same order. */
function withGains(predicted: readonly ScenarioPrediction[], { scenarios, reference }: Notebook) {
  const at = scenarios.findIndex(({ id }) => id === reference);
  const base = predicted[at];
  if (!base) return predicted;
  return predicted.map(({ name, stacks }, i) => ({
    name,
    stacks:
      i === at ? stacks : stacks.map((stack, s) => ({ ...stack, gain: gainOver(base.name, base.stacks[s]!, stack) })),
  }));
}

const NOTHING_AROUND: Flanking = { kind: 'none', R500_dB: 0, slope_dB_per_octave: 0 };

/** A stack on its own as the one scenario of a notebook around it; nothing goes around it unless it says so. */
export function predictStack(lone: LoneStack, wishes: PredictionWishes = {}): NotebookPrediction {
  const { stack, materials, flanking = NOTHING_AROUND } = lone;
  const notebook: Notebook = {
    format: FORMAT,
    version: VERSION,
    id: 'alone',
    title: stack.name,
    units: 'SI',
    parameters: [],
    stacks: [stack],
    materials,
    flanking,
    cells: [],
    scenarios: [{ id: 'alone', name: stack.name, mark: 0, parent: null, changes: {} }],
    shown: ['alone'],
    reference: 'alone',
    active: 'alone',
  };
  return predictNotebook(notebook, wishes);
}
