import { describe, expect, test } from 'vitest';
import { materialFields, newMaterial } from '#cells/stack/own-material-fields.ts';
import { COVERINGS, SHEET_MATERIALS } from '#src/acoustics/materials.ts';
import { predict } from '#src/acoustics/predict.ts';
import { addParameter } from '#src/notebook/edits/add-parameter.ts';
import { linkField } from '#src/notebook/edits/link-field.ts';
import { useOwnMaterial } from '#src/notebook/edits/use-own-material.ts';
import { materialUses } from '#src/notebook/material-use.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { smallNotebook } from '../../notebook/small-notebook.ts';

const CEILING = ['layers', 2, 'sheets', 0, 'material'];
const sheetOf = (notebook = smallNotebook(), scenario = 'existing') => {
  const leaf = resolveStack(notebook, scenario, 'floor').layers[2];
  return leaf?.kind === 'leaf' ? leaf.sheets[0]! : undefined;
};

test.each(['sheet', 'fibre', 'covering'] as const)('the fields of a %s take what a file takes, and no more', (kind) => {
  const made = { ...newMaterial(smallNotebook(), kind), source: 'assumed' };
  const problemsWith = (name: string, value: number) =>
    notebookProblems({ ...smallNotebook(), materials: [{ ...made, [name]: value }] }).length;
  for (const { name, min, max } of materialFields(made)) {
    expect([problemsWith(name, min), problemsWith(name, max)], name).toEqual([0, 0]);
    expect([problemsWith(name, min - 1), problemsWith(name, 1.01 * max)], name).toEqual([1, 1]);
  }
});

describe('a material made for a field', () => {
  test('starts with all numbers of the one it is like, and without a source', () => {
    const clt = SHEET_MATERIALS.find((m) => m.key === 'cross-laminated-timber')!;
    const made = newMaterial(smallNotebook(), 'sheet', 'cross-laminated-timber');
    expect(made).toMatchObject({
      name: `${clt.name}, own`,
      source: '',
      form: clt.form,
      density_kg_m3: clt.density_kg_m3,
      youngsModulus_Pa: clt.youngsModulus_Pa,
      youngsModulusAcross_Pa: clt.youngsModulusAcross_Pa,
    });
    expect(made.key).not.toBe(clt.key);
  });

  test('takes its place in the base, and what is computed stays', () => {
    const made = newMaterial(smallNotebook(), 'sheet', 'gypsum-board');
    const used = useOwnMaterial({ ...smallNotebook(), active: 'existing' }, 'floor', CEILING, made);
    expect(notebookProblems(used)).toEqual([]);
    expect({ ...sheetOf(used), name: '' }).toEqual({ ...sheetOf(), name: '' });
    expect(materialUses(used, 'sheet', made.key)).toEqual(['stack "Floor": ceiling material']);
  });

  test('as a covering starts like the one that is chosen, or like carpet where there is none', () => {
    const { key, name, ...numbers } = COVERINGS.find((c) => c.key === 'sheet-vinyl')!;
    const like = newMaterial(smallNotebook(), 'covering', 'sheet-vinyl');
    expect(like).toMatchObject({ ...numbers, kind: 'covering', name: `${name}, own`, source: '' });
    expect(like.key).not.toBe(key);
    const { name: _, key: __, ...carpet } = COVERINGS.find((c) => c.key === 'carpet')!;
    expect(newMaterial(smallNotebook(), 'covering', 'none')).toMatchObject({ ...carpet, name: 'own covering' });
  });

  test('as a covering is computed with its own numbers, at the limits of the file too', () => {
    const made = { ...newMaterial(smallNotebook(), 'covering', 'carpet'), source: 'assumed' };
    const base = { ...smallNotebook(), active: 'existing' };
    const floorWith = (numbers: object) => {
      const used = useOwnMaterial(base, 'floor', ['covering'], { ...made, ...numbers });
      expect(notebookProblems(used)).toEqual([]);
      expect(materialUses(used, 'covering', made.key)).toEqual(['stack "Floor": floor covering']);
      return resolveStack(used, 'existing', 'floor');
    };
    const numbers = { surfaceMass_kg_m2: 3.5, thickness_m: 0.006, contactStiffness_N_m: 2.5e5 };
    expect(floorWith(numbers).covering).toEqual({ name: 'carpet, own', ...numbers });
    for (const side of ['min', 'max'] as const) {
      const extreme = Object.fromEntries(materialFields(made).map((field) => [field.name, field[side]]));
      const { R_dB, Ln_dB } = predict(floorWith(extreme));
      for (const value of [...R_dB, ...Ln_dB]) expect(value).toSatisfy(Number.isFinite);
    }
  });

  test('in a fork belongs to the fork', () => {
    const made = newMaterial(smallNotebook(), 'sheet', 'osb');
    const used = useOwnMaterial(smallNotebook(), 'floor', CEILING, made);
    expect(notebookProblems(used)).toEqual([]);
    expect(sheetOf(used, 'heavy')!.name).toBe(made.name);
    expect(sheetOf(used, 'existing')!.name).toBe(sheetOf()!.name);
  });

  test('becomes a choice of the parameter that the field refers to', () => {
    const choices = [{ value: 'gypsum-board', label: 'gypsum board' }];
    const board = { key: 'board', label: 'ceiling board', choices, value: 'gypsum-board' };
    const linked = linkField(addParameter(smallNotebook(), board), 'floor', CEILING, 'board');
    const made = newMaterial(linked, 'sheet', 'gypsum-board');
    const used = useOwnMaterial(linked, 'floor', CEILING, made);
    expect(notebookProblems(used)).toEqual([]);
    expect(sheetOf(used, 'heavy')!.name).toBe(made.name);
    expect(sheetOf(used, 'existing')!.name).toBe(sheetOf()!.name);
    expect(materialUses(used, 'sheet', made.key)).toEqual(['parameter "ceiling board"']);
  });
});
