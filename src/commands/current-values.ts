import { isLiveValue, liveValue } from '#cells/commentary/live-value.ts';
import type { ResultsView } from '#cells/contract.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Cell, Notebook } from '#src/notebook/types.ts';

const LINK = /\[([^\]]*)\]\(([^()\s]+)\)/g;

/**
 * The notebook with every live value written as it is computed now, so that its text also reads right where nothing is
 * computed.
 *
 * @throws RangeError for a live value that names nothing.
 */
export function withCurrentValues(notebook: Notebook): Notebook {
  const results = computedResults(notebook);
  const current = (whole: string, written: string, destination: string): string => {
    if (!isLiveValue(destination)) return whole;
    const { state, text, about } = liveValue(notebook, results, destination, written);
    if (state !== 'ready') throw new RangeError(`${destination}: ${about}`);
    return `[${text}](${destination})`;
  };
  const renewed = (cell: Cell): Cell =>
    cell.kind === 'commentary' ? { ...cell, text: cell.text.replace(LINK, current) } : cell;
  return { ...notebook, cells: notebook.cells.map(renewed) };
}

/** Computes each stack of each scenario when it is first asked for. */
function computedResults(notebook: Notebook): ResultsView {
  const predictions = new Map<string, Prediction>();
  return {
    of: (scenarioId, stackId) => {
      const key = `${scenarioId}/${stackId}`;
      const prediction = predictions.get(key) ?? predict(resolveStack(notebook, scenarioId, stackId));
      predictions.set(key, prediction);
      return { state: 'ready', prediction };
    },
  };
}
