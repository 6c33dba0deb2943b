import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { outsideCheckedNote, outsideCheckedStyles } from '#cells/shared/outside-checked.ts';
import { levelText } from '#src/charts/band-data.ts';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { findScenario } from '#src/notebook/find.ts';
import type { Notebook, RatingsCell as RatingsCellModel, Scenario } from '#src/notebook/types.ts';
import { countsAround } from '#src/notebook/walls-counted.ts';
import { NO_VALUE } from '#src/quantities/format-quantity.ts';
import { type CellProperties, NotebookEdit, type Result, type ResultsView } from '../contract.ts';
import { bringIntoView } from '../shared/bring-into-view.ts';
import { controlStyles } from '../shared/controls.ts';
import { ofFloorAlone } from '../shared/floor-alone.ts';
import { signed, wholeNumber } from '../shared/number-words.ts';
import { ownJoistsCaution } from '../shared/own-joists-caution.ts';
import { countsWalls } from '../shared/rated-result.ts';
import { scenarioSample } from '../shared/scenario-sample.ts';
import { segmented, segmentedStyles } from '../shared/segmented.ts';
import { stackPicker } from '../shared/stack-picker.ts';
import { countedNote } from './counted-note.ts';
import './field-part.ts';
import './laid-part.ts';
import { ratingMeaning } from './rating-meaning.ts';
import { RATING_ROWS, type RatingRow, rowWords } from './rating-rows.ts';
import { ratingStory, type StoryLine } from './rating-story.ts';
import { ratingsStyles } from './ratings-styles.ts';
import { spreadNote } from './spread-note.ts';

interface Column {
  readonly scenario: Scenario;
  readonly result: Result;
}

/** The single numbers of the shown scenarios side by side, with what each gains over the reference. */
@customElement('ratings-cell')
export class RatingsCell extends LitElement implements CellProperties<RatingsCellModel> {
  static override styles = [controlStyles, segmentedStyles, ratingsStyles, outsideCheckedStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: RatingsCellModel;
  @property({ attribute: false }) results!: ResultsView;

  /** Key of the row whose story is told. */
  @state() private told: string | undefined;

  override render() {
    const { notebook, cell } = this;
    const columns = notebook.shown.map((id) => ({ scenario: findScenario(notebook, id), result: this.#of(id) }));
    const reference = this.#of(notebook.reference);
    const picker = stackPicker(notebook, cell.stack, (stack) =>
      this.dispatchEvent(new NotebookEdit('stack of the ratings', (n) => updateCell(n, cell.id, 'ratings', { stack }))),
    );
    return html`<div class="screen-only">${picker}</div>
      ${this.#counted()}
      <div class="scroll" tabindex="0" role="region" aria-label="Ratings of the shown scenarios" ${fadeWhereMore()}>
        <table class="ratings" style="--columns: ${columns.length}">
          <thead>
            <tr>
              ${
                columns.some(({ scenario }) => scenario.id !== notebook.reference)
                  ? html`<th scope="col">
                      small figures: difference from ${findScenario(notebook, notebook.reference).name}
                    </th>`
                  : html`<td></td>`
              }
              ${columns.map(({ scenario }) => this.#head(scenario))}
            </tr>
          </thead>
          ${(['Airborne', 'Impact', 'Build-up'] as const).map(
            (group) => html`<tbody>
              <tr class="group">
                <th scope="rowgroup" colspan=${columns.length + 1}><span>${group}</span></th>
              </tr>
              ${RATING_ROWS.filter((row) => row.group === group).map((row) => this.#row(row, columns, reference))}
            </tbody>`,
          )}
        </table>
      </div>
      <p class="note">
        Mass counts leaves, covering, fill and the floor's joists. Added mass is load that the floor must carry for good: a structural engineer decides, and wet concrete weighs
        more. ${ownJoistsCaution(notebook, cell.stack)}
      </p>
      <p class="note">${spreadNote(countsWalls(notebook, 'airborne', cell.floorAlone ?? false))}</p>
      ${outsideCheckedNote(notebook, cell.stack)} ${this.#story()} ${this.#failures(columns)}
      <laid-part .notebook=${notebook} .cell=${cell} .results=${this.results}></laid-part>
      <field-part .notebook=${notebook} .cell=${cell} .results=${this.results}></field-part>`;
  }

  #of(scenarioId: string): Result {
    const result = this.results.of(scenarioId, this.cell.stack);
    return this.cell.floorAlone ? ofFloorAlone(result) : result;
  }

  #withWalls({ group }: RatingRow): boolean {
    if (group === 'Build-up') return false;
    return countsWalls(this.notebook, group === 'Airborne' ? 'airborne' : 'impact', this.cell.floorAlone ?? false);
  }

  #counted() {
    const { notebook, cell } = this;
    const { floorAlone = false } = cell;
    const choice = segmented({
      label: 'What is rated',
      name: 'rated',
      choices: [
        { value: 'together', label: 'floor and walls' },
        { value: 'alone', label: 'floor alone' },
      ],
      value: floorAlone ? 'alone' : 'together',
      onChange: (value) =>
        this.dispatchEvent(
          new NotebookEdit('what is rated', (n) =>
            updateCell(n, cell.id, 'ratings', { floorAlone: value === 'alone' }),
          ),
        ),
    });
    return html`<div class="counted">
      ${countsAround(notebook) ? html`<div class="screen-only">${choice}</div>` : nothing}
      <p class="note">${countedNote(notebook, cell)}</p>
      ${
        notebook.shown.length > 2
          ? html`<p class="note sideways screen-only">
              ${notebook.shown.length} scenarios, two at a time: the table scrolls sideways.
            </p>`
          : nothing
      }
    </div>`;
  }

  #head(scenario: Scenario) {
    const { notebook } = this;
    return html`<th scope="col" class="number">
      ${scenarioSample(scenario)} ${scenario.name}
      ${scenario.id === notebook.reference ? html`<br /><span class="neutral">reference</span>` : nothing}
    </th>`;
  }

  #row(row: RatingRow, columns: readonly Column[], reference: Result) {
    const told = this.told === row.key;
    const hasStory = row.group !== 'Build-up';
    const { label, about } = rowWords(row, this.#withWalls(row));
    return html`<tr>
      <th scope="row" title=${about}>
        ${
          hasStory
            ? html`<button
                class="quiet"
                aria-expanded=${told}
                aria-label="How ${label} came about"
                @click=${() => this.#tell(told ? undefined : row.key)}
              >
                ${label}
              </button>`
            : label
        }
      </th>
      ${columns.map((column) => this.#value(row, column, reference))}
    </tr>`;
  }

  #value(row: RatingRow, { scenario, result }: Column, reference: Result) {
    const { units } = this.notebook;
    const { prediction } = result;
    if (!prediction)
      return html`<td class="number neutral" aria-busy=${result.state === 'computing'}>
        ${result.state === 'computing' ? '…' : NO_VALUE}
      </td>`;
    const difference =
      reference.prediction && scenario.id !== this.notebook.reference
        ? row.number(prediction) - row.number(reference.prediction)
        : undefined;
    return html`<td class="number" aria-busy=${result.state === 'computing'}>
      <span class="value">${row.show(prediction, units)}</span>
      ${
        difference === undefined
          ? nothing
          : html`<span class="difference ${tone(row, difference)}"
              >${row.showDifference?.(difference, units) ?? signed(difference)}</span
            >`
      }
    </td>`;
  }

  /** Told of the active scenario. */
  #story() {
    const { notebook, told } = this;
    if (told === undefined) return nothing;
    const row = RATING_ROWS.find((r) => r.key === told)!;
    const { prediction } = this.#of(notebook.active);
    const withWalls = this.#withWalls(row);
    const story = prediction && ratingStory(told, prediction, withWalls);
    if (!story) return nothing;
    const { name } = findScenario(notebook, notebook.active);
    const { label, about } = rowWords(row, withWalls);
    return html`<section class="story" aria-label="How ${label} came about in ${name}" @keydown=${this.#onStoryKey}>
      <div class="story-head">
        <h3 tabindex="-1">${label} of ${name}</h3>
        <button class="quiet screen-only" @click=${this.#closeStory}>Close</button>
      </div>
      <p>${about.charAt(0).toUpperCase()}${about.slice(1)}. ${ratingMeaning(told)}</p>
      ${story.sentences.map((sentence) => html`<p>${sentence}</p>`)}
      <div class="scroll" tabindex="0" role="region" aria-label="Band by band" ${fadeWhereMore()}>
        <table>
          <thead>
            <tr>
              <th scope="col">Hz</th>
              ${story.bands_Hz.map((band) => html`<th scope="col" class="number">${band}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${story.lines.map(storyLine)}
          </tbody>
        </table>
      </div>
    </section>`;
  }

  /** The story stands under the table, often below the window: the reader is taken there, and back with the button. */
  async #tell(key: string | undefined): Promise<void> {
    this.told = key;
    await this.updateComplete;
    const story = this.renderRoot.querySelector('.story');
    if (!story) return;
    story.querySelector('h3')!.focus({ preventScroll: true });
    bringIntoView(story);
  }

  #onStoryKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    this.#closeStory();
  };

  #closeStory = (): void => {
    this.renderRoot.querySelector<HTMLElement>('button[aria-expanded="true"]')?.focus();
    this.told = undefined;
  };

  #failures(columns: readonly Column[]) {
    const failed = columns.flatMap(({ scenario, result }) =>
      result.state === 'failed' ? [html`<p class="error">${scenario.name}: ${result.message}</p>`] : [],
    );
    return failed.length === 0 ? nothing : html`<div class="failures">${failed}</div>`;
  }
}

function storyLine({ label, values_dB, stress, whole }: StoryLine) {
  return html`<tr>
    <th scope="row">${label}</th>
    ${values_dB.map(
      (value) => html`<td class="number ${stress && value > 0 ? 'stress' : ''}">
        ${whole ? wholeNumber(value) : levelText(value)}
      </td>`,
    )}
  </tr>`;
}

function tone({ better }: RatingRow, difference: number): 'better' | 'worse' | 'neutral' {
  const rounded = Math.round(difference);
  if (better === 'neither' || rounded === 0 || Number.isNaN(rounded)) return 'neutral';
  return rounded > 0 === (better === 'more') ? 'better' : 'worse';
}

declare global {
  interface HTMLElementTagNameMap {
    'ratings-cell': RatingsCell;
  }
}
