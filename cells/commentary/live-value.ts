/** From the destination of a link in a text to what stands there now. */
import type { Notebook } from '#src/notebook/types.ts';
import { NO_VALUE } from '#src/quantities/format-quantity.ts';
import type { ResultsView } from '../contract.ts';
import { countedWords, ratedName, ratedResult } from '../shared/rated-result.ts';
import { GAIN, liveQuantity, NAME } from './live-quantities.ts';

export interface LiveValue {
  readonly state: 'ready' | 'computing' | 'missing';
  readonly text: string;
  /** What it is, or what is wrong, in words. */
  readonly about: string;
}

const SCHEME = 'value:';

/** The key without what stands behind it. */
function bare(key: string): string {
  const ending = [GAIN, NAME].find((e) => key.endsWith(e)) ?? '';
  return key.slice(0, key.length - ending.length);
}

export function isLiveValue(destination: string): boolean {
  return destination.startsWith(SCHEME);
}

/** Stands in the text for what could not be resolved. */
export function unresolvedText(about: string, written: string): string {
  const reason = `${about.charAt(0).toLowerCase()}${about.slice(1).replace(/\.$/, '')}`;
  return written ? `[no value: ${reason}; “${written}” was written here]` : `[no value: ${reason}]`;
}

/**
 * `value:stack/quantity` in the active scenario, `value:scenario/stack/quantity` in the one named; with `-gain` behind
 * the quantity, the difference to the reference scenario; with `-name`, what the rating is called. `written` stands while there is no value yet; where there
 * can be none it is only quoted, since a number that once was true must not look like one that is.
 */
export function liveValue(notebook: Notebook, results: ResultsView, destination: string, written: string): LiveValue {
  const missing = (about: string): LiveValue => ({ state: 'missing', text: unresolvedText(about, written), about });
  const parts = destination.slice(SCHEME.length).split('/');
  if (parts.length < 2 || parts.length > 3) return missing('A live value is value:stack/quantity.');
  const [quantityKey, stackId, scenarioId = notebook.active] = parts.toReversed() as [string, string, string?];
  const scenario = notebook.scenarios.find((s) => s.id === scenarioId);
  if (!scenario) return missing(`There is no scenario "${scenarioId}".`);
  const stack = notebook.stacks.find((s) => s.id === stackId);
  if (!stack) return missing(`There is no stack "${stackId}".`);
  const gain = quantityKey.endsWith(GAIN);
  const isName = quantityKey.endsWith(NAME);
  const quantity = liveQuantity(bare(quantityKey));
  if (!quantity || (isName && !quantity.sound)) return missing(`There is no value "${quantityKey}".`);

  const of = (id: string) => ratedResult(notebook, results, id, stack.id);
  const involved = gain ? [of(scenario.id), of(notebook.reference)] : [of(scenario.id)];
  const [own, reference] = involved.map((r) => r.prediction);
  const text = own && textFor();
  const { sound } = quantity;
  const counted = sound && countedWords(notebook, stack.id, sound);
  const name = sound ? ratedName(notebook, stack.id, sound, quantity.label) : quantity.label;
  const about = [`${name} of ${stack.name}`, scenario.name, gain && 'against the reference', counted]
    .filter(Boolean)
    .join(', ');
  if (isName) return { state: 'ready', text: name, about };
  const failed = involved.find((r) => r.state === 'failed');
  if (failed) return { state: 'missing', text: text ?? NO_VALUE, about: `${about}: ${failed.message}` };
  if (involved.some((r) => r.state === 'computing') || text === undefined)
    return { state: 'computing', text: text ?? (written || '…'), about: `${about}: computing` };
  return { state: 'ready', text, about };

  function textFor(): string | undefined {
    if (!own || !quantity) return undefined;
    if (!gain) return quantity.show(own, notebook.units);
    return reference && quantity.showDifference(quantity.number(own) - quantity.number(reference), notebook.units);
  }
}
