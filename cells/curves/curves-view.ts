/** What a curves cell shows, as data: which curves stand, what is missing and why. */
import type { Result, ResultsView } from '#cells/contract.ts';
import { aroundKind } from '#cells/shared/around-counted.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { predictionFrom } from '#src/acoustics/prediction-from.ts';
import { type BandChartData, type BandSeries, isPoints, levelText } from '#src/charts/band-data.ts';
import { scenarioMark } from '#src/charts/scenario-marks.ts';
import { focusScenario } from '#src/notebook/focus-scenario.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { CurvesCell, Notebook, Scenario } from '#src/notebook/types.ts';
import { curveOverlays, type OverlayFocus } from './curve-overlays.ts';
import { type CurveQuantityInfo, curveQuantityInfo } from './curve-quantities.ts';
import type { MeasuredRatings } from './measured-ratings.ts';

/** What is loaded only for cells that need it. */
export type CurvesTools = Partial<typeof import('./measured-tools.ts') & typeof import('./overlay-tools.ts')>;

export interface CurvesView {
  readonly data: BandChartData;
  /** One sentence for who does not see the picture. */
  readonly label: string;
  readonly busy: boolean;
  /** Why there is nothing to draw; undefined when there is. */
  readonly empty?: string;
  /** Scenarios whose prediction failed, with the reason. */
  readonly failures: readonly { readonly name: string; readonly message: string }[];
  /** Under a difference: what it is taken from. Under overlays: whose they are. Under measured bands: how far off. */
  readonly remarks: readonly string[];
  /** What the curves hold besides the floor; undefined where nothing goes around it. */
  readonly around?: string;
  /** Of measured bands, beside the prediction's. */
  readonly ratings?: MeasuredRatings | undefined;
  /** Whose overlays are drawn; undefined while there is nothing to explain. */
  readonly focus: (OverlayFocus & { readonly scenario: Scenario }) | undefined;
}

/** @param tools Without them measured bands and most overlays of the cell are not there yet. */
export function curvesView(
  notebook: Notebook,
  cell: CurvesCell,
  results: ResultsView,
  tools: CurvesTools = {},
): CurvesView {
  const info = curveQuantityInfo(cell.quantity);
  const { shown, reference } = overSameBands({
    shown: shownScenarios(notebook).map((scenario) => ({
      scenario,
      result: results.of(scenario.id, cell.stack, cell),
    })),
    reference: info.relative ? results.of(notebook.reference, cell.stack, cell) : undefined,
  });
  const series = shown.flatMap(({ scenario, result }) => scenarioSeries(notebook, scenario, result, info, reference));
  const bands_Hz = firstPrediction(shown, reference)?.bands_Hz ?? [];
  const focus = focusOf(notebook, cell, shown, results);
  const overlays = focus && curveOverlays(cell, focus, notebook.units, tools.overlayMakers);
  const low =
    cell.lowestBand_Hz === 20 ? focus && tools.lowBands?.(notebook, cell.stack, focus.construction, bands_Hz) : [];
  const apparent = shown.some(({ result: { prediction } }) => prediction && info.paths_dB(prediction).flanking);
  const data: BandChartData = {
    bands_Hz,
    valueLabel: apparent ? info.apparentLabel : info.valueLabel,
    series,
    overlays: [...(low ?? []), ...(overlays?.drawn ?? []), ...(tools.measuredPoints?.(cell, bands_Hz) ?? [])],
    zeroLine: info.relative,
    ...(info.faintest_dB !== undefined && { cutBelow_dB: info.faintest_dB }),
  };
  const empty = emptyReason(notebook, info, shown, series);
  return {
    data,
    label: sentence(data, info, notebook),
    busy: [...shown.map((s) => s.result), ...(reference ? [reference] : [])].some((r) => r.state === 'computing'),
    ...(empty !== undefined && { empty }),
    failures: shown.flatMap(({ scenario, result }) =>
      result.state === 'failed' ? [{ name: scenario.name, message: result.message }] : [],
    ),
    remarks: [
      ...remarks(notebook, info, overlays?.drawn.length || overlays?.missing.length ? focus?.scenario : undefined),
      ...cutRemark(data),
      ...(cell.quantity === 'airborne' ? beyondMeasuring(data, apparent) : []),
      ...(overlays?.missing ?? []),
      ...((focus && tools.measuredRemarks?.(cell, focus.prediction, focus.scenario.name)) ?? []),
    ],
    ...(apparent && { around: withWalls(notebook, cell) }),
    ratings: focus && tools.measuredRatings?.(cell, focus.prediction, focus.scenario.name),
    focus,
  };
}

interface ShownScenario {
  readonly scenario: Scenario;
  readonly result: Result;
}

interface Drawn {
  readonly shown: readonly ShownScenario[];
  readonly reference: Result | undefined;
}

/** While bands below 50 Hz are computed some predictions have them and some do not: what all have is drawn. */
function overSameBands({ shown, reference }: Drawn): Drawn {
  const lowest_Hz = Math.max(
    ...[...shown.map((s) => s.result), reference].map((result) => result?.prediction?.bands_Hz[0] ?? 0),
  );
  const cut = (result: Result): Result =>
    result.prediction ? { ...result, prediction: predictionFrom(result.prediction, lowest_Hz) } : result;
  return {
    shown: shown.map(({ scenario, result }) => ({ scenario, result: cut(result) })),
    reference: reference && cut(reference),
  };
}

function shownScenarios(notebook: Notebook): readonly Scenario[] {
  return notebook.shown.flatMap((id) => notebook.scenarios.find((s) => s.id === id) ?? []);
}

function scenarioSeries(
  notebook: Notebook,
  { id, name, mark }: Scenario,
  { state, prediction }: Result,
  info: CurveQuantityInfo,
  reference: Result | undefined,
): readonly BandSeries[] {
  if (!prediction || (info.relative && (id === notebook.reference || !reference?.prediction))) return [];
  const levels = info.levels_dB(prediction);
  const values_dB =
    info.gain_dB && reference?.prediction ? gains(levels, info.levels_dB(reference.prediction), info.gain_dB) : levels;
  const note = noteOf(state, values_dB, id === notebook.reference);
  return [{ id, label: name, values_dB, mark: scenarioMark(mark), ...(note !== undefined && { note }) }];
}

function noteOf(state: Result['state'], values_dB: readonly number[], reference: boolean): string | undefined {
  if (state === 'failed') return 'last good curve';
  if (!values_dB.some(Number.isFinite)) return 'no values';
  return reference ? 'reference' : undefined;
}

function gains(
  values: readonly number[],
  reference: readonly number[],
  gain_dB: (value: number, reference: number) => number,
): number[] {
  return values.map((value, i) => gain_dB(value, reference[i] ?? NaN));
}

function firstPrediction(shown: readonly ShownScenario[], reference: Result | undefined): Prediction | undefined {
  return shown.find((s) => s.result.prediction)?.result.prediction ?? reference?.prediction;
}

/** Overlays belong to one scenario, else they would drown the curves. */
function focusOf(
  notebook: Notebook,
  { stack, lowestBand_Hz }: CurvesCell,
  shown: readonly ShownScenario[],
  results: ResultsView,
): CurvesView['focus'] {
  const { scenario, result } = shown.find((s) => s.scenario.id === focusScenario(notebook)) ?? {};
  if (!scenario || !result?.prediction) return undefined;
  return {
    scenario,
    prediction: result.prediction,
    color: scenarioMark(scenario.mark).color,
    construction: () => resolveStack(notebook, scenario.id, stack),
    belowFloating: () => results.of(scenario.id, stack, { lowestBand_Hz, part: 'below-floating' }).prediction,
  };
}

function emptyReason(
  notebook: Notebook,
  { relative }: CurveQuantityInfo,
  shown: readonly ShownScenario[],
  series: readonly BandSeries[],
): string | undefined {
  if (series.length > 0) return undefined;
  if (shown.length === 0) return 'No scenario is shown. Show one, and its curve appears here.';
  if (relative && shown.every((s) => s.scenario.id === notebook.reference))
    return 'Only the reference scenario is shown. Fork it and change something, and the difference appears here.';
  if (shown.some((s) => s.result.state === 'computing')) return 'Computing the first curves …';
  return 'There is no curve to draw.';
}

function remarks(notebook: Notebook, { relative }: CurveQuantityInfo, focus: Scenario | undefined): string[] {
  const reference = notebook.scenarios.find((s) => s.id === notebook.reference);
  return [
    ...(relative && reference ? [`Taken from “${reference.name}”: above the line is better, below it is worse.`] : []),
    ...(focus && notebook.shown.length > 1 ? [`What is laid over the curves belongs to “${focus.name}”.`] : []),
  ];
}

function cutRemark({ series, cutBelow_dB = -Infinity }: BandChartData): string[] {
  return series.some(({ values_dB }) => values_dB.some((value) => value < cutBelow_dB))
    ? [
        `Below ${cutBelow_dB} dB no curve is drawn: nobody hears or measures so little in a building. The numbers hold those values too.`,
      ]
    : [];
}

/** More than this between 250 and 2000 Hz is not measured of a floor: common practice, no source. */
const MOST_MEASURED_dB = 75;

function beyondMeasuring({ bands_Hz, series }: BandChartData, apparent: boolean): string[] {
  const isBeyond = (value: number, i: number) =>
    value > MOST_MEASURED_dB && bands_Hz[i]! >= 250 && bands_Hz[i]! <= 2000;
  if (!series.some(({ values_dB }) => values_dB.some(isBeyond))) return [];
  const missing = apparent ? '' : ', and none are counted here';
  return [
    `More than about ${MOST_MEASURED_dB} dB at middle frequencies is hardly ever measured, in laboratories or in buildings (common practice, no source): the walls then carry more than the floor${missing}. Such values say that the floor is no longer the weak part, not how much is heard.`,
  ];
}

/** What the curves hold besides the floor, and where to see the floor alone. */
function withWalls({ flanking }: Notebook, { overlays }: CurvesCell): string {
  const how = `What goes around by the walls is in the curves (${aroundKind(flanking)})`;
  return overlays.includes('paths') ? `${how}.` : `${how}; “Paths” shows what the floor alone lets through.`;
}

function sentence(
  { bands_Hz, series, overlays, valueLabel }: BandChartData,
  info: CurveQuantityInfo,
  notebook: Notebook,
): string {
  const quantity = valueLabel.replace(/, dB$/, '');
  const from = info.relative
    ? ` against ${notebook.scenarios.find((s) => s.id === notebook.reference)?.name ?? 'the reference'}`
    : '';
  const curves = [...series, ...overlays.filter(isPoints)].map(({ label, values_dB }) => {
    const finite = values_dB.filter(Number.isFinite);
    if (finite.length === 0) return `${label} without a value`;
    const [low, high] = [Math.min(...finite), Math.max(...finite)];
    return `${label} from ${levelText(low)} to ${levelText(high)} dB`;
  });
  const range = bands_Hz.length ? `, ${bands_Hz[0]} to ${bands_Hz.at(-1)} Hz` : '';
  return `Curves of the ${quantity}${from} in one-third-octave bands${range}: ${curves.join('; ') || 'none'}.`;
}
