/** What a paths cell shows of one scenario, as data. */
import type { ResultsView } from '#cells/contract.ts';
import { MASS_IS_LOAD } from '#cells/shared/load-caution.ts';
import { supportsOf } from '#cells/shared/supports-of.ts';
import { csvText } from '#src/charts/csv.ts';
import { PATH_MARKS } from '#src/charts/path-marks.ts';
import { type ShareChartData, shareText } from '#src/charts/share-data.ts';
import type { Notebook, PathsCell, Scenario } from '#src/notebook/types.ts';
import { pathShares } from './path-shares.ts';
import { regionSentence } from './region-sentences.ts';
import { regionsOf } from './regions.ts';

export interface PathsView {
  /** Scenarios that can be chosen. */
  readonly shown: readonly Scenario[];
  readonly chosen: Scenario | undefined;
  readonly data: ShareChartData;
  readonly label: string;
  readonly sentences: readonly string[];
  /** Where a sentence names a mass. */
  readonly caution?: string;
  readonly busy: boolean;
  readonly empty?: string;
  readonly failure?: string;
}

/** What rules by a mass per area, which is named then. */
const BY_MASS: ReadonlySet<string> = new Set(['mass', 'mobility']);
const CAUTION = `${MASS_IS_LOAD.charAt(0).toUpperCase()}${MASS_IS_LOAD.slice(1)}.`;

const NOTHING: ShareChartData = { bands_Hz: [], paths: [], regions: [] };

/** Of the scenario with the wished id if it is shown; else of the active one, else of the first. */
export function pathsView(notebook: Notebook, cell: PathsCell, results: ResultsView, wished?: string): PathsView {
  const shown = notebook.shown.flatMap((id) => notebook.scenarios.find((s) => s.id === id) ?? []);
  const chosen = shown.find((s) => s.id === wished) ?? shown.find((s) => s.id === notebook.active) ?? shown[0];
  const base = { shown, chosen, label: '', sentences: [], busy: false, data: NOTHING };
  if (!chosen) return { ...base, empty: 'No scenario is shown. Show one, and its paths appear here.' };
  const result = results.of(chosen.id, cell.stack);
  const busy = result.state === 'computing';
  const failure = result.state === 'failed' ? { failure: result.message } : {};
  const { prediction } = result;
  if (!prediction)
    return { ...base, busy, ...failure, empty: busy ? 'Computing the paths …' : 'There are no paths to show.' };
  const { sound } = cell;
  const paths = pathShares(prediction, sound);
  if (!paths.some((p) => p.shares.some(Number.isFinite)))
    return { ...base, busy, ...failure, empty: `There are no ${sound} paths for this floor.` };
  const regions = regionsOf(prediction, sound);
  const flankingIsFixed = notebook.flanking.kind !== 'by the walls';
  const supports = [...supportsOf(notebook, chosen.id, cell.stack)];
  const support = supports.length === 1 ? supports[0] : undefined;
  const context = { prediction, shares: paths, sound, units: notebook.units, flankingIsFixed, support };
  const data = { bands_Hz: prediction.bands_Hz, paths, regions };
  return {
    ...base,
    ...failure,
    busy,
    data,
    label: sentence(chosen, data, sound),
    sentences: regions.map((region) => regionSentence(region, context)),
    ...(regions.some((r) => r.path === 'direct' && BY_MASS.has(r.mechanism)) ? { caution: CAUTION } : {}),
  };
}

function sentence({ name }: Scenario, { bands_Hz, paths }: ShareChartData, sound: PathsCell['sound']): string {
  const parts = paths.map(({ path, shares }) => {
    const finite = shares.filter(Number.isFinite);
    return `${PATH_MARKS[path].label} ${shareText(Math.min(...finite))} to ${shareText(Math.max(...finite))}`;
  });
  return `Shares of the paths of ${sound} sound through ${name}, ${bands_Hz[0]} to ${bands_Hz.at(-1)} Hz: ${parts.join('; ')}.`;
}

export function sharesCsv({ bands_Hz, paths }: ShareChartData): string {
  const head = ['band_Hz', ...paths.map(({ path }) => `${PATH_MARKS[path].label} (share)`)];
  const rows = bands_Hz.map((band, i) => [band, ...paths.map(({ shares }) => Number((shares[i] ?? NaN).toFixed(4)))]);
  return csvText(head, rows);
}
