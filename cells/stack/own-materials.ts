import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { icon } from '#cells/shared/icons.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import '#cells/shared/quantity-field.ts';
import type { QuantityEntry } from '#cells/shared/quantity-field.ts';
import { contactStiffnessFor_N_m, coveringDeltaLw_dB, STATED_DLW_dB } from '#src/acoustics/covering-stiffness.ts';
import { addOwnMaterial, removeOwnMaterial, updateOwnMaterial } from '#src/notebook/edits/edit-materials.ts';
import { materialUses } from '#src/notebook/material-use.ts';
import type { Notebook, OwnCovering, OwnMaterial, OwnSheetMaterial } from '#src/notebook/types.ts';
import { fieldGridStyles } from './field-grid.ts';
import { materialFields, newMaterial } from './own-material-fields.ts';

/** Materials that the notebook brings itself: name, numbers, and where they come from. */
@customElement('own-materials')
export class OwnMaterials extends LitElement {
  static override styles = [
    controlStyles,
    fieldGridStyles,
    css`
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        padding: var(--space-3);
        border-top: 1px solid var(--hairline);
      }
      li > .note {
        max-width: var(--reading-width);
        margin: var(--space-2) 0 0;
      }
      .missing {
        margin: 0;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-2) var(--space-3);
        margin-top: var(--space-2);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  /** Why a material could not be removed, under its kind and key. */
  @state() private refusal: { readonly id: string; readonly message: string } | undefined;

  override render() {
    return html`
      <ul>
        ${repeat(this.notebook.materials, idOf, (material) => this.#renderMaterial(material))}
      </ul>
      <div class="row">
        <button type="button" @click=${() => this.#add('sheet')}>Add a sheet material</button>
        <button type="button" @click=${() => this.#add('fibre')}>Add a fibre</button>
        <button type="button" @click=${() => this.#add('covering')}>Add a covering</button>
      </div>
    `;
  }

  #renderMaterial(material: OwnMaterial) {
    const { name, source } = material;
    const id = idOf(material);
    const uses = materialUses(this.notebook, material.kind, material.key);
    return html`
      <li data-material=${id}>
        <div class="fields" role="group" aria-label=${name}>
          ${this.#renderText(material, 'name', 'name', name)}
          ${this.#renderText(material, 'source', 'where its numbers come from', source)}
          ${material.kind === 'sheet' ? this.#renderForm(material) : nothing}
          ${materialFields(material).map(
            (field) => html`
              <quantity-field
                .label=${field.label}
                .quantity=${field.quantity}
                .min=${field.min}
                .max=${field.max}
                .value=${material[field.name as keyof OwnMaterial] as unknown as number | undefined}
                .optional=${field.whenEmpty !== undefined}
                .placeholder=${field.whenEmpty ?? ''}
                .units=${this.notebook.units}
                @quantity-entry=${(event: QuantityEntry) =>
                  this.#change(material, `${field.label} of ${name}`, { [field.name]: event.value })}
                @quantity-cleared=${() => this.#clear(material, field.name, `${field.label} of ${name}`)}
              ></quantity-field>
            `,
          )}
          ${material.kind === 'covering' ? this.#renderDeltaLw(material) : nothing}
        </div>
        ${
          material.kind === 'covering'
            ? html`<p class="note">
                ΔLw is what a covering takes off impact sound on a concrete slab of 140 mm (ISO 717-2), as product sheets
                state it. Written here it sets the contact stiffness, which is what is kept and computed with: how it gives
                way under a hammer.
              </p>`
            : nothing
        }
        <div class="row">
          <button type="button" class="quiet" @click=${() => this.#remove(material)}>
            ${icon('remove')} Remove ${name}
          </button>
          ${uses.length > 0 ? html`<span class="note">Used in ${uses.join('; ')}.</span>` : nothing}
          ${this.refusal?.id === id ? html`<span class="error" role="alert">${this.refusal.message}</span>` : nothing}
        </div>
      </li>
    `;
  }

  /** Another way to say how the covering gives way. */
  #renderDeltaLw(covering: OwnCovering) {
    const [min, max] = STATED_DLW_dB;
    return html`<quantity-field
      label="ΔLw on concrete"
      quantity="level"
      .min=${min}
      .max=${max}
      .value=${coveringDeltaLw_dB(covering.contactStiffness_N_m)}
      .units=${this.notebook.units}
      @quantity-entry=${({ value }: QuantityEntry) =>
        this.#change(covering, `ΔLw of ${covering.name}`, { contactStiffness_N_m: contactStiffnessFor_N_m(value) })}
    ></quantity-field>`;
  }

  #renderText(material: OwnMaterial, field: 'name' | 'source', label: string, value: string) {
    const id = `${field}-${idOf(material)}`;
    return html`
      <div class="field wide">
        <label for=${id}>${label}</label>
        <input
          id=${id}
          maxlength=${field === 'name' ? 200 : 1000}
          .value=${live(value)}
          aria-invalid=${value === '' ? 'true' : 'false'}
          aria-describedby=${value === '' ? `missing-${id}` : nothing}
          @change=${(event: Event) => {
            const input = event.target as HTMLInputElement;
            const text = input.value.trim();
            if (text) this.#change(material, `${field} of ${material.name}`, { [field]: text });
            else input.value = value;
          }}
        />
        ${value === '' ? html`<p class="error missing" id="missing-${id}">${MISSING[field]}</p>` : nothing}
      </div>
    `;
  }

  #renderForm(material: OwnSheetMaterial) {
    const id = `form-${idOf(material)}`;
    return html`
      <div class="field wide">
        <label for=${id}>how it is built in</label>
        <select
          id=${id}
          @change=${(event: Event) =>
            this.#change(material, `form of ${material.name}`, {
              form: (event.target as HTMLSelectElement).value as OwnSheetMaterial['form'],
            })}
        >
          <option value="board" .selected=${live(material.form === 'board')}>as boards on a frame</option>
          <option value="slab" .selected=${live(material.form === 'slab')}>cast in one piece</option>
        </select>
      </div>
    `;
  }

  /** Puts the focus into what is to be said first of a material. */
  async reveal(material: Pick<OwnMaterial, 'kind' | 'key'>): Promise<void> {
    await this.updateComplete;
    const row = this.renderRoot.querySelector<HTMLElement>(`[data-material="${idOf(material)}"]`);
    row?.scrollIntoView({ block: 'center' });
    row?.querySelector('input')?.focus();
  }

  #clear(material: OwnMaterial, field: string, label: string): void {
    const { [field as keyof OwnMaterial]: _gone, ...rest } = material;
    this.dispatchEvent(new NotebookEdit(label, (n) => updateOwnMaterial(n, rest as OwnMaterial)));
  }

  #add(kind: OwnMaterial['kind']): void {
    const material = newMaterial(this.notebook, kind);
    this.dispatchEvent(new NotebookEdit('add a material', (n) => addOwnMaterial(n, material)));
  }

  #change(material: OwnMaterial, label: string, patch: Partial<OwnSheetMaterial>): void {
    this.dispatchEvent(new NotebookEdit(label, (n) => updateOwnMaterial(n, { ...material, ...patch } as OwnMaterial)));
  }

  #remove(material: OwnMaterial): void {
    const remove = (n: Notebook) => removeOwnMaterial(n, material.kind, material.key);
    this.refusal = undefined;
    try {
      remove(this.notebook);
    } catch (error) {
      this.refusal = { id: idOf(material), message: messageOf(error) };
      return;
    }
    this.dispatchEvent(new NotebookEdit(`remove ${material.name}`, remove));
  }
}

const MISSING = {
  name: 'Give it a name.',
  source: 'Say where the numbers come from: a data sheet, a test report, an estimate of your own.',
} as const;

function idOf({ kind, key }: Pick<OwnMaterial, 'kind' | 'key'>): string {
  return `${kind}-${key}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'own-materials': OwnMaterials;
  }
}
