import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import { withCurrentValues } from '#src/commands/current-values.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { fieldPaths, fieldSpec, getField } from '#src/notebook/field-path.ts';
import { readNotebook } from '#src/notebook/read-file.ts';
import { resolveStack, resolveStackWith } from '#src/notebook/resolve.ts';
import type { Notebook, ParameterValue } from '#src/notebook/types.ts';
import { fieldValue, type Values, valuesOf } from '#src/notebook/values.ts';
import { FILE_ENDING, writeNotebook } from '#src/notebook/write-file.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

const folder = new URL('../../demo-notebooks/', import.meta.url);

function read(name: string): { readonly text: string; readonly notebook: Notebook } {
  const text = readFileSync(new URL(name, folder), 'utf8');
  const reading = readNotebook(text);
  if (!reading.ok) throw new Error(reading.problems.map((p) => p.message).join('\n'));
  return { text, notebook: reading.notebook };
}

describe.each(readdirSync(folder).filter((name) => name.endsWith(FILE_ENDING)))('%s', (name) => {
  const { text, notebook } = read(name);

  test('is written as the page would write it', () => {
    expect(text).toBe(writeNotebook(notebook));
  });

  test('opens as version 1 wrote it, and is the same', () => {
    const old = text.replace('"version": 2', '"version": 1').replaceAll(/^ *"mark": \d+,\n/gm, '');
    expect(old).not.toMatch('mark"');
    expect(readNotebook(old)).toEqual({ ok: true, notebook });
  });

  test('carries the live values that the engine computes: npm run demos', () => {
    expect(withCurrentValues(notebook)).toEqual(notebook);
  });

  test('in inches its lengths are what a lumber yard sells: whole ones and fractions', () => {
    const lengths = notebook.scenarios.flatMap(({ id }) => {
      const values = valuesOf(notebook, id);
      return notebook.stacks.flatMap((stack) =>
        fieldPaths(stack).flatMap((path) => {
          const spec = fieldSpec(stack, path);
          const field = getField(stack, path);
          if (spec.type === 'choice' || spec.quantity !== 'length' || field === undefined) return [];
          return [formatQuantity(Number(fieldValue<ParameterValue>(field, values)), 'length', 'inch-pound')];
        }),
      );
    });
    expect(lengths).toContain('16 in');
    expect(lengths.filter((text) => text.includes('.'))).toEqual([]);
  });

  test('states its cautions', () => {
    const words = notebook.cells.map((cell) => (cell.kind === 'commentary' ? cell.text : '')).join(' ');
    for (const caution of [/structural engineer/, /wiring/, /gas/, /asbestos/, /lead/, /fire stopping/i, /laborator/])
      expect(words).toMatch(caution);
    expect(words).toMatch(/Local codes and licensed practice decide/);
    expect(words).toMatch(/invented/);
  });

  test('where a text names a mass, the load is for a structural engineer in the same text', () => {
    const texts = notebook.cells.flatMap((cell) => (cell.kind === 'commentary' ? [cell.text] : []));
    const withMass = texts.filter((text) => text.includes('/surface-mass'));
    expect(withMass.length).toBeGreaterThan(0);
    for (const text of withMass) expect(text).toMatch(/structural engineer/);
  });

  test('a rating is explained in the text that first names it, with the way that is better', () => {
    const texts = notebook.cells.flatMap((cell) => (cell.kind === 'commentary' ? [cell.text] : []));
    for (const rating of ['STC', 'IIC'])
      expect(texts.find((text) => text.includes(rating))).toMatch(/more is quieter/i);
  });
});

describe('what the text of the practice room says holds in the computation', () => {
  const { notebook } = read(`practice-room-above-library${FILE_ENDING}`);
  const of = (scenario: string, n = notebook) => predict(resolveStack(n, scenario, 'floor'));
  const [existing, slab, channel, both] = ['existing', 'slab', 'channel', 'both'].map((id) => of(id)) as [
    ReturnType<typeof of>,
    ReturnType<typeof of>,
    ReturnType<typeof of>,
    ReturnType<typeof of>,
  ];
  const at = (levels_dB: readonly number[], band_Hz: number) => levels_dB[existing.bands_Hz.indexOf(band_Hz)]!;
  const bounce_Hz = (p: typeof existing) => p.resonances_Hz.find((r) => r.kind === 'mass-spring-mass')!.frequency_Hz;

  test('either cure gains, both gain most', () => {
    expect(existing.ratings.STC).toBeLessThan(channel.ratings.STC);
    expect(channel.ratings.STC).toBeLessThan(both.ratings.STC);
    expect(slab.ratings.STC).toBeLessThan(both.ratings.STC);
  });

  test('the new ceiling adds next to no weight', () => {
    expect(channel.surfaceMass_kg_m2 - existing.surfaceMass_kg_m2).toBeLessThan(3);
  });

  test('under the slab channel loses a little at 50 and 63 Hz', () => {
    for (const band_Hz of [50, 63]) {
      const gain_dB = at(both.R_dB, band_Hz) - at(slab.R_dB, band_Hz);
      expect(gain_dB).toBeLessThan(-0.5);
      expect(gain_dB).toBeGreaterThan(-5);
    }
  });

  test('springs of every kind offered gain far less there than an octave higher, however thick the slab is dragged', () => {
    for (const support of ['resilient-channel', 'clips', 'separate-joists'])
      for (const slab_m of [0.02, 0.038, 0.1]) {
        const change = (values: Values) => ({ ...values, 'slab-thickness': slab_m });
        const held = resolveStackWith(
          notebook,
          { ...change(valuesOf(notebook, 'both')), 'ceiling-support': support },
          'floor',
        );
        const [on, without] = [
          predict(held).R_dB,
          predict(resolveStackWith(notebook, change(valuesOf(notebook, 'slab')), 'floor')).R_dB,
        ] as const;
        const gain_dB = (band_Hz: number) => at(on, band_Hz) - at(without, band_Hz);
        for (const band_Hz of [50, 63]) {
          const octaveUp_Hz = band_Hz === 50 ? 100 : 125;
          expect(gain_dB(octaveUp_Hz) - gain_dB(band_Hz), `${support} ${slab_m} ${band_Hz}`).toBeGreaterThan(6);
        }
      }
  });

  test('springs move the resonance down, the slab moves it further', () => {
    expect(bounce_Hz(channel)).toBeLessThan(bounce_Hz(existing));
    expect(bounce_Hz(both)).toBeLessThan(bounce_Hz(channel));
  });

  test('with both cures the walls carry most of the sound from 1250 Hz up', () => {
    both.mechanisms.forEach((mechanism, i) => {
      if (both.bands_Hz[i]! >= 1250) expect(mechanism.path).toBe('flanking');
    });
  });

  test('the hard slab is quieter in the bass and louder in the treble under the tapping machine', () => {
    expect(slab.ratings.IIC).toBeLessThan(existing.ratings.IIC);
    expect(at(slab.Ln_dB, 63)).toBeLessThan(at(existing.Ln_dB, 63));
    expect(at(slab.Ln_dB, 3150)).toBeGreaterThan(at(existing.Ln_dB, 3150));
  });

  test('a soft covering takes the treble away again', () => {
    const covered = of('slab', setStackField(notebook, 'floor', ['covering'], 'carpet-on-pad'));
    expect(covered.ratings.IIC).toBeGreaterThan(existing.ratings.IIC);
    expect(at(covered.Ln_dB, 3150)).toBeLessThan(at(slab.Ln_dB, 3150));
  });

  test('isolation clips in a fork of both gain further', () => {
    const fork = { ...notebook, active: 'both' };
    const clips = of('both', setStackField(fork, 'floor', ['layers', 1, 'support'], 'clips'));
    const airborne = clips.ratings.STC - both.ratings.STC;
    expect(airborne).toBeGreaterThan(0);
    // The walls hold the airborne number back, not the one for steps.
    expect(clips.ratings.IIC - both.ratings.IIC).toBeGreaterThan(airborne + 2);
  });
});
