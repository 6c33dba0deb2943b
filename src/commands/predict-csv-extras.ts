/** The columns of what was asked for besides the prediction; none where it was not. */
import type { BandMechanism } from '#src/acoustics/prediction.ts';
import { bandColumn, type CsvColumn } from './csv-column.ts';
import type { StackPrediction } from './predict-notebook.ts';
import { SIMPLE_MODELS } from './predict-simple.ts';

type Columns = (stacks: readonly StackPrediction[]) => readonly CsvColumn[];

/** Columns that stand where a stack has the part that they show. */
function where(part: keyof StackPrediction, columns: Columns): Columns {
  return (stacks) => (stacks.some((stack) => stack[part] !== undefined) ? columns(stacks) : []);
}

const mechanisms: Columns = () => [
  ...ruleColumns('', ({ mechanisms: m }) => m),
  ...ruleColumns('impact_', ({ impactMechanisms: m }) => m),
];

function ruleColumns(before: string, rules: (stack: StackPrediction) => readonly BandMechanism[]): CsvColumn[] {
  return [
    { heading: `${before}path`, cell: (stack, i) => rules(stack)[i]!.path },
    { heading: `${before}path_share`, cell: (stack, i) => rules(stack)[i]!.share },
    { heading: `${before}mechanism`, cell: (stack, i) => rules(stack)[i]!.mechanism },
    { heading: `${before}mechanism_Hz`, cell: (stack, i) => rules(stack)[i]!.frequency_Hz ?? Number.NaN },
    { heading: `${before}mechanism_dB`, cell: (stack, i) => rules(stack)[i]!.effect_dB ?? Number.NaN },
  ];
}

const gains = where('gain', () => [
  bandColumn('R_gain_dB', ({ gain }) => gain?.R_dB),
  bandColumn('Ln_gain_dB', ({ gain }) => gain?.Ln_dB),
]);

const roomModes = where('roomModes', () => [
  { heading: 'room_modes', cell: (stack, i) => stack.roomModes?.meaning[i] ?? '' },
]);

const soundBelow = where('soundBelow', (stacks) => [
  bandColumn('above_dB', (s) => s.soundBelow?.above_dB),
  bandColumn('below_dB', (s) => s.soundBelow?.below_dB),
  bandColumn('loudness_phon', (s) => s.soundBelow?.loudness_phon),
  bandColumn('threshold_dB', (s) => s.soundBelow?.threshold_dB),
  bandColumn('background_dB', (s) => s.soundBelow?.background_dB),
  bandColumn('excess_dB', (s) => s.soundBelow?.excess_dB),
  { heading: 'audible', cell: (s, i) => s.soundBelow?.audible[i] ?? '' },
  ...(stacks[0]?.soundBelow?.ratings ?? []).map(
    ({ name }, i): CsvColumn => ({
      heading: `below_${name}`,
      cell: (s) => s.soundBelow?.ratings[i]?.value ?? Number.NaN,
    }),
  ),
]);

/** Stacks may differ in their numbers: a number that a stack does not have leaves its cells empty. */
const sensitivities = where('sensitivities', (stacks) => {
  const paths = new Set(stacks.flatMap((stack) => (stack.sensitivities?.numbers ?? []).map(({ path }) => path)));
  return [...paths].flatMap((path): readonly CsvColumn[] => {
    const of = (stack: StackPrediction) => stack.sensitivities?.numbers.find((s) => s.path === path);
    return [
      { heading: path, cell: (stack) => of(stack)?.value ?? Number.NaN },
      bandColumn(`dR_dB ${path} +10 %`, (stack) => of(stack)?.dR_dB),
      bandColumn(`dLn_dB ${path} +10 %`, (stack) => of(stack)?.dLn_dB),
    ];
  });
});

const uncertainty = where('uncertainty', () => [
  bandColumn('R_uncertainty_dB', (s) => s.uncertainty?.R.standard_dB),
  bandColumn('R_95percent_dB', (s) => s.uncertainty?.R.expanded_dB),
  bandColumn('R_tolerances_dB', (s) => s.uncertainty?.tolerances.R_dB),
  bandColumn('Ln_tolerances_dB', (s) => s.uncertainty?.tolerances.Ln_dB),
]);

const simple = where('simple', () =>
  SIMPLE_MODELS.map(({ key }) =>
    bandColumn(`simple_${key}_dB`, (stack) => stack.simple?.find((model) => model.key === key)?.values_dB),
  ),
);

export const EXTRA_COLUMNS: readonly Columns[] = [
  mechanisms,
  gains,
  roomModes,
  soundBelow,
  sensitivities,
  uncertainty,
  simple,
];
