import { describe, expect, test } from 'vitest';
import { addParameter } from '#src/notebook/edits/add-parameter.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { sizeProblem } from '#src/notebook/parsed-json.ts';
import { notebookProblems, readNotebook, readNotebookValue } from '#src/notebook/read-file.ts';
import { notebookFileName, writeNotebook } from '#src/notebook/write-file.ts';
import { CLUB_RUBBER } from './club-rubber.ts';
import { smallNotebook } from './small-notebook.ts';

/** Values by JSON Pointer; undefined takes the place out. */
type Alterations = Readonly<Record<string, unknown>>;

/** The small notebook as loose JSON, with other values at some places. */
function altered(alterations: Alterations): unknown {
  const file = JSON.parse(JSON.stringify(smallNotebook()));
  for (const [pointer, value] of Object.entries(alterations)) {
    const steps = pointer.split('/').slice(1);
    const holder = steps.slice(0, -1).reduce((at, step) => at[step], file);
    if (value === undefined) delete holder[steps.at(-1)!];
    else holder[steps.at(-1)!] = value;
  }
  return file;
}

function problemsOf(value: unknown): readonly string[] {
  const reading = readNotebookValue(value);
  return reading.ok ? [] : reading.problems.map((p) => p.message);
}

test('what is wrong in two ways at one place is told once', () => {
  const index = smallNotebook().parameters.findIndex((parameter) => !('choices' in parameter));
  const reading = readNotebookValue(altered({ [`/parameters/${index}/value`]: 'thick' }));
  expect(reading.ok ? [] : reading.problems.map(({ path }) => path)).toEqual([`/parameters/${index}/value`]);
});

test('a written notebook reads back equal, as a new object', () => {
  const notebook = smallNotebook();
  const reading = readNotebook(writeNotebook(notebook));
  expect(reading).toEqual({ ok: true, notebook });
});

test('format and version stand first in a file, whatever the order in memory', () => {
  const { format, version, ...rest } = smallNotebook();
  expect(writeNotebook({ ...rest, version, format })).toMatch(
    /^\{\n {2}"format": "slab-and-spring",\n {2}"version": 2,\n {2}"id"/,
  );
});

test('a byte order mark before the text does no harm', () => {
  expect(readNotebook(`\uFEFF${writeNotebook(smallNotebook())}`).ok).toBe(true);
});

test('reading does not change what it was given, and shares nothing with it', () => {
  const value = smallNotebook();
  const reading = readNotebookValue(value);
  expect(value).toEqual(smallNotebook());
  if (!reading.ok) throw new Error('expected a notebook');
  expect(reading.notebook.stacks[0]!.layers[0]).not.toBe(value.stacks[0]!.layers[0]);
});

test('a file name is made of the title', () => {
  expect(notebookFileName({ title: 'Practice room: Übung №1!' })).toBe('practice-room-ubung-no1.slabspring.json');
  expect(notebookFileName({ title: ' ../ ' })).toBe('notebook.slabspring.json');
});

test('what could not be read again is known before it is written', () => {
  const choices = [{ value: 'a', label: 'a' }];
  const bad = addParameter(smallNotebook(), { key: 'not a key', label: 'x', choices, value: 'a' });
  expect(notebookProblems(bad).map((p) => p.path)).toEqual(['/parameters/4/key']);
  expect(notebookProblems(smallNotebook())).toEqual([]);
});

/** As a stranger may have written it. */
const WOOL = { fill: 'mineral-wool', fillThickness_m: 0.05 };
const WIDE = { key: 'wide', label: '', quantity: 'density', value: 1, min: 0, max: 1e5, step: 1 };
const SIDE = { key: 'side', label: '', quantity: 'length', value: 1, min: 1, max: 2, step: 1 };

describe('one thing wrong gives one problem that says what, where, what was expected and what was there', () => {
  test.each<[string, Alterations, string]>([
    ['a title that is a number', { '/title': 3 }, 'title must be a text, got 3 (/title)'],
    ['a missing title', { '/title': undefined }, 'title must be present, got nothing (/title)'],
    ['an unknown key', { '/colour': 'red' }, 'colour must be absent (the key is unknown), got "red" (/colour)'],
    ['another system of units', { '/units': 'metric' }, 'units must be "SI" or "inch-pound", got "metric" (/units)'],
    [
      'NaN written as null',
      { '/parameters/0/min': null },
      'Parameter “slab thickness”: “from” in m must be a number, got null (/parameters/0/min)',
    ],
    [
      'an infinite number',
      { '/parameters/3/max': Number.POSITIVE_INFINITY },
      'Parameter “spare”: “to” must be at most 100000000000000000000, got Infinity (/parameters/3/max)',
    ],
    [
      'a value outside its range',
      { '/parameters/0/value': 0.2 },
      'Parameter “slab thickness”: value in m must be a number from 0 to 0.1, got 0.2 (/parameters/0/value)',
    ],
    [
      'a range upside down',
      { '/parameters/3/min': 2 },
      'Parameter “spare”: “to” must be at least 2, got 1 (/parameters/3/max)',
    ],
    [
      'a step of nothing',
      { '/parameters/3/step': 0 },
      'Parameter “spare”: step must be more than 0, got 0 (/parameters/3/step)',
    ],
    [
      'a value that is no choice',
      { '/parameters/2/value': 'glue' },
      'Parameter “ceiling support”: value must be one of "direct", "clips", got "glue" (/parameters/2/value)',
    ],
    [
      'a choice the field does not know',
      { '/parameters/2/choices/2': { value: 'glue', label: 'glue' } },
      'Stack “Floor”, layer “joists”: the parameter for ceiling support must be choices among direct, resilient-channel, clips, hangers, separate-joists, got glue (/stacks/0/layers/1/support/parameter)',
    ],
    [
      'a repeated key',
      { '/parameters/4': smallNotebook().parameters[0] },
      'Parameter “slab thickness”: key must be unique, got "slab" once more (/parameters/4/key)',
    ],
    [
      'a repeated cell id',
      { '/cells/1/id': 'intro' },
      'Cell “Try”: id must be unique, got "intro" once more (/cells/1/id)',
    ],
    [
      'a repeated layer id',
      { '/stacks/0/layers/2/id': 'deck' },
      'Stack “Floor”, layer “ceiling”: id must be unique, got "deck" once more (/stacks/0/layers/2/id)',
    ],
    [
      'an own material with the key of a built-in one',
      { '/materials/0/key': 'plywood' },
      'Material “club board”: key must be unique, got "plywood" once more (/materials/0/key)',
    ],
    [
      'a key with a blank',
      { '/cells/0/id': 'in tro' },
      'Cell 1 (commentary): id must be a letter, then at most 63 letters, digits, - and _, got "in tro" (/cells/0/id)',
    ],
    [
      'a key that every object has',
      { '/cells/0/id': 'toString' },
      'Cell 1 (commentary): id must be a name that objects do not have already, got "toString" (/cells/0/id)',
    ],
    [
      'a reference to an unknown parameter',
      { '/stacks/0/length_m': { parameter: 'nowhere' } },
      'Stack “Floor”: the parameter for length must be the key of one of the notebook\'s parameters, got "nowhere" (/stacks/0/length_m/parameter)',
    ],
    [
      'a reference to a parameter of another quantity',
      { '/stacks/0/length_m': { parameter: 'density' } },
      'Stack “Floor”: the parameter for length must be a span parameter, got a density parameter (/stacks/0/length_m/parameter)',
    ],
    [
      'a reference to a range wider than the field accepts',
      { '/parameters/4': WIDE, '/stacks/0/layers/0/sheets/1/density_kg_m3': { parameter: 'wide' } },
      'Stack “Floor”, layer “deck”, sheet 2 (plywood): the parameter for density must be a range within 20 to 20000, got 0 to 100000 (/stacks/0/layers/0/sheets/1/density_kg_m3/parameter)',
    ],
    [
      'a reference with something beside it',
      { '/parameters/4': SIDE, '/stacks/0/length_m': { parameter: 'side', and: 1 } },
      'Stack “Floor”: and must be absent (the key is unknown), got 1 (/stacks/0/length_m/and)',
    ],
    [
      'a thickness below nothing',
      { '/stacks/0/layers/2/sheets/0/thickness_m': -0.01 },
      'Stack “Floor”, layer “ceiling”, sheet 1 (gypsum-board): thickness in m must be at least 0, got -0.01 (/stacks/0/layers/2/sheets/0/thickness_m)',
    ],
    [
      'a sheet thicker than a plate can be',
      { '/stacks/0/layers/2/sheets/0/thickness_m': 3 },
      'Stack “Floor”, layer “ceiling”, sheet 1 (gypsum-board): thickness in m must be at most 1 (what is thicker bends as a plate at low frequencies only), got 3 (/stacks/0/layers/2/sheets/0/thickness_m)',
    ],
    [
      'a cavity as high as a room',
      { '/stacks/0/layers/1/depth_m': 2.5 },
      'Stack “Floor”, layer “joists”: depth in m must be at most 2 (what is higher is a room with modes of its own), got 2.5 (/stacks/0/layers/1/depth_m)',
    ],
    [
      'a parameter by which a cavity could be as high as a room',
      { '/parameters/4': { ...SIDE, max: 3 }, '/stacks/0/layers/1/depth_m': { parameter: 'side' } },
      'Stack “Floor”, layer “joists”: the parameter for depth must be a range within 0 to 2 (what is higher is a room with modes of its own), got 1 to 3 (/stacks/0/layers/1/depth_m/parameter)',
    ],
    [
      'an unknown material',
      { '/stacks/0/layers/2/sheets/0/material': 'cheese' },
      'Stack “Floor”, layer “ceiling”, sheet 1 (cheese): material must be a known material, got "cheese" (/stacks/0/layers/2/sheets/0/material)',
    ],
    [
      'an unknown fill',
      { '/stacks/0/layers/1/fill': 'feathers' },
      'Stack “Floor”, layer “joists”: fill must be a known fill, got "feathers" (/stacks/0/layers/1/fill)',
    ],
    [
      'an unknown second fill',
      { '/stacks/0/layers/1/fillsAbove': [{ fill: 'feathers', fillThickness_m: 0.05 }] },
      'Stack “Floor”, layer “joists”, fill 2 (feathers): fill must be a known fill, got "feathers" (/stacks/0/layers/1/fillsAbove/0/fill)',
    ],
    [
      'a third fill thicker than any',
      { '/stacks/0/layers/1/fillsAbove': [WOOL, { ...WOOL, fillThickness_m: 6 }] },
      'Stack “Floor”, layer “joists”, fill 3 (mineral-wool): fill thickness in m must be at most 5, got 6 (/stacks/0/layers/1/fillsAbove/1/fillThickness_m)',
    ],
    [
      'more fills than a cavity may have',
      { '/stacks/0/layers/1/fillsAbove': [WOOL, WOOL, WOOL, WOOL] },
      'Stack “Floor”, layer “joists”: fills above must be at most 3 long, got 4 (/stacks/0/layers/1/fillsAbove)',
    ],
    [
      'a second fill from a parameter that does not fit',
      { '/stacks/0/layers/1/fillsAbove': [{ ...WOOL, fillThickness_m: { parameter: 'density' } }] },
      'Stack “Floor”, layer “joists”, fill 2 (mineral-wool): the parameter for fill thickness must be a length parameter, got a density parameter (/stacks/0/layers/1/fillsAbove/0/fillThickness_m/parameter)',
    ],
    [
      'an unknown covering',
      { '/stacks/0/covering': 'moss' },
      'Stack “Floor”: covering must be a known covering, got "moss" (/stacks/0/covering)',
    ],
    [
      'an own covering heavier than any',
      { '/materials/0': { ...CLUB_RUBBER, surfaceMass_kg_m2: 501 } },
      'Material “club rubber”: surface mass in kg/m² must be at most 500, got 501 (/materials/0/surfaceMass_kg_m2)',
    ],
    [
      'an own covering that lacks how hard it is',
      { '/materials/0': { ...CLUB_RUBBER, contactStiffness_N_m: undefined } },
      'Material “club rubber”: contact stiffness in N/m must be a number, got nothing (/materials/0/contactStiffness_N_m)',
    ],
    [
      'an own covering with the key of a built-in one',
      { '/materials/0': { ...CLUB_RUBBER, key: 'carpet' } },
      'Material “club rubber”: key must be unique, got "carpet" once more (/materials/0/key)',
    ],
    [
      'an unknown support',
      { '/stacks/0/layers/1/support': 'glue' },
      'Stack “Floor”, layer “joists”: ceiling support must be "direct" or "resilient-channel" or "clips" or "hangers" or "separate-joists", got "glue" (/stacks/0/layers/1/support)',
    ],
    [
      'an unknown kind of layer',
      { '/stacks/0/layers/1/kind': 'void' },
      'Stack “Floor”, layer “joists”: kind must be "leaf" or "mat" or "cavity", got "void" (/stacks/0/layers/1/kind)',
    ],
    [
      'two leaves in a row at the end',
      { '/stacks/0/layers/3': { ...smallNotebook().stacks[0]!.layers[2], id: 'more' } },
      'Stack “Floor”, layer “ceiling”: kind must be a mat or a cavity here, since leaves and interlayers alternate, got "leaf" (/stacks/0/layers/3/kind)',
    ],
    [
      'a stack that ends with a cavity',
      { '/stacks/0/layers': smallNotebook().stacks[0]!.layers.slice(0, 2) },
      'Stack “Floor”: layers must be layers that begin and end with a leaf, got 2 layers (/stacks/0/layers)',
    ],
    [
      'a leaf without sheets',
      { '/stacks/0/layers/2/sheets': [] },
      'Stack “Floor”, layer “ceiling”: sheets must be at least 1 long, got 0 (/stacks/0/layers/2/sheets)',
    ],
    [
      'a base with a parent',
      { '/scenarios/0/parent': 'nowhere' },
      'Scenario “Existing”: parent must be null, since the first scenario is the base, got "nowhere" (/scenarios/0/parent)',
    ],
    [
      'a base with changes',
      { '/scenarios/0/changes/slab': 0.05 },
      'Scenario “Existing”: changes must be empty, since the first scenario is the base, got 1 entries (/scenarios/0/changes)',
    ],
    [
      'a second scenario without parent',
      { '/scenarios/1/parent': null },
      'Scenario “Heavy”: parent must be the id of a scenario, since only the first is the base, got null (/scenarios/1/parent)',
    ],
    [
      'an unknown parent',
      { '/scenarios/1/parent': 'nowhere' },
      'Scenario “Heavy”: parent must be the id of one of the scenarios, got "nowhere" (/scenarios/1/parent)',
    ],
    [
      'a scenario that is its own parent',
      { '/scenarios/2/parent': 'both' },
      'Scenario “Both”: parent must be a scenario that does not descend from this one, got "both" (/scenarios/2/parent)',
    ],
    [
      'a change of an unknown parameter',
      { '/scenarios/1/changes/nowhere': 1 },
      'Scenario “Heavy”: nowhere must be a change of one of the notebook\'s parameters, got "nowhere" (/scenarios/1/changes/nowhere)',
    ],
    [
      'a change of the wrong type',
      { '/scenarios/1/changes/slab': 'thick' },
      'Scenario “Heavy”: slab thickness in m must be a number from 0 to 0.1, got "thick" (/scenarios/1/changes/slab)',
    ],
    [
      'a change out of range',
      { '/scenarios/1/changes/slab': 7 },
      'Scenario “Heavy”: slab thickness in m must be a number from 0 to 0.1, got 7 (/scenarios/1/changes/slab)',
    ],
    [
      'changes as a list',
      { '/scenarios/2/changes': [] },
      'Scenario “Both”: changes must be an object, got a list of 0 (/scenarios/2/changes)',
    ],
    [
      'a reference scenario that is not there',
      { '/reference': 'nowhere' },
      'reference must be the id of one of the scenarios, got "nowhere" (/reference)',
    ],
    [
      'an active scenario that is not shown',
      { '/shown': ['existing', 'both'] },
      'active must be the id of a shown scenario, got "heavy" (/active)',
    ],
    [
      'an unknown one shown',
      { '/shown/3': 'nowhere' },
      'entry 4 of shown must be the id of one of the scenarios, got "nowhere" (/shown/3)',
    ],
    ['one shown twice', { '/shown/3': 'both' }, 'entry 4 of shown must be unique, got "both" once more (/shown/3)'],
    [
      'a cell of an unknown stack',
      { '/cells/2/stack': 'nowhere' },
      'Cell 3 (stack): stack must be the id of one of the stacks, got "nowhere" (/cells/2/stack)',
    ],
    [
      'a cell of an unknown parameter',
      { '/cells/1/parameters': ['nowhere'] },
      'Cell “Try”: parameter 1 must be the key of one of the notebook\'s parameters, got "nowhere" (/cells/1/parameters/0)',
    ],
    [
      'an unknown kind of cell',
      { '/cells/1/kind': 'game' },
      'Cell “Try”: kind must be "commentary" or "parameters" or "stack" or "curves" or "ratings" or "paths", got "game" (/cells/1/kind)',
    ],
    ['another version', { '/version': 0 }, 'version must be a whole number from 1 to 2, got 0 (/version)'],
    [
      'a version of the future',
      { '/version': 3 },
      'version must be a whole number from 1 to 2, got 3 (/version); a newer Slab & Spring wrote this file',
    ],
    ['a version in words', { '/version': 'one' }, 'version must be a whole number from 1 to 2, got "one" (/version)'],
    ['another format', { '/format': 'x' }, 'format must be "slab-and-spring", got "x" (/format)'],
  ])('%s', (_name, alterations, message) => {
    expect(problemsOf(altered(alterations))).toEqual([message]);
  });
});

test('everything that is wrong is listed at once, in shape and in meaning', () => {
  const paths = readNotebookValue(
    altered({
      '/title': 3,
      '/stacks/0/layers/0/sheets/0/thickness_m': { parameter: 'nowhere' },
      '/stacks/0/layers/1/depth_m': 'deep',
      '/stacks/0/layers/2/sheets/0/material': 'cheese',
      '/scenarios/1/parent': 'both',
      '/scenarios/2/changes/slab': 9,
      '/cells/0/text': 1,
      '/cells/2/stack': 'nowhere',
      '/active': 'nobody',
      '/odd': 1,
      '/odder': 2,
    }),
  );
  expect(paths.ok ? [] : paths.problems.map((p) => p.path).toSorted()).toEqual([
    '/active',
    '/cells/0/text',
    '/cells/2/stack',
    '/odd',
    '/odder',
    '/scenarios/1/parent',
    '/scenarios/2/changes/slab',
    '/scenarios/2/parent',
    '/stacks/0/layers/0/sheets/0/thickness_m/parameter',
    '/stacks/0/layers/1/depth_m',
    '/stacks/0/layers/2/sheets/0/material',
    '/title',
  ]);
});

test('a file that is too big is known by its size', () => {
  expect(sizeProblem(LIMITS.fileBytes)).toBeUndefined();
  expect(sizeProblem(LIMITS.fileBytes + 1)?.message).toMatch(/at most 2000000 bytes/);
});
