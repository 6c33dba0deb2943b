/** Leaves and interlayers alternate; every field names a material that exists or a parameter that exists and fits. */
import {
  CAVITY_FIELDS,
  type FieldSpec,
  LAYER_FIELDS,
  LEAK_FIELDS,
  SHEET_FIELDS,
  STACK_FIELDS,
} from '../field-specs.ts';
import { choiceValues, fitProblem } from '../field-use.ts';
import { type Path, type Problem, problemAt, shortValue } from '../problem.ts';
import type { Layer, Notebook, Parameter } from '../types.ts';
import { asObject, byText, type Entry, entriesOf, isNumber, isText, own, type RawObject } from './raw.ts';

type Specs = Readonly<Record<string, FieldSpec>>;

/** A further fill may be what the first may be. */
const FILL_FIELDS: Specs = { fill: CAVITY_FIELDS.fill, fillThickness_m: CAVITY_FIELDS.fillThickness_m };

/** What fields may name, looked up once per file. */
interface Known {
  readonly parameters: ReadonlyMap<string, RawObject>;
  readonly choicesOf: (spec: FieldSpec) => ReadonlySet<string>;
}

export function checkStacks(notebook: RawObject): readonly Problem[] {
  const known: Known = {
    parameters: byText(entriesOf(notebook, 'parameters'), 'key'),
    choicesOf: rememberedChoices(notebook),
  };
  return entriesOf(notebook, 'stacks').flatMap(({ item, path }) => {
    const layers = entriesOf(item, 'layers', path);
    return [
      ...fieldProblems(known, { item, path }, STACK_FIELDS),
      ...alternationProblems(layers, path),
      ...layers.flatMap((layer) => layerProblems(known, layer)),
      ...entriesOf(item, 'leaks', path).flatMap((leak) => leakProblems(known, leak)),
    ];
  });
}

function layerProblems(known: Known, layer: Entry): readonly Problem[] {
  const kind = own(layer.item, 'kind');
  const specs = isLayerKind(kind) ? LAYER_FIELDS[kind] : {};
  const sheets = kind === 'leaf' ? entriesOf(layer.item, 'sheets', layer.path) : [];
  const fills = kind === 'cavity' ? entriesOf(layer.item, 'fillsAbove', layer.path) : [];
  return [
    ...fieldProblems(known, layer, specs),
    ...sheets.flatMap((sheet) => fieldProblems(known, sheet, SHEET_FIELDS)),
    ...fills.flatMap((fill) => fieldProblems(known, fill, FILL_FIELDS)),
  ];
}

function leakProblems(known: Known, leak: Entry): readonly Problem[] {
  const kind = own(leak.item, 'kind');
  return kind === 'slit' || kind === 'hole' ? fieldProblems(known, leak, LEAK_FIELDS[kind]) : [];
}

function alternationProblems(layers: readonly Entry[], stackPath: Path): readonly Problem[] {
  const wrong = layers.flatMap(({ item, path }, i) => {
    const kind = own(item, 'kind');
    if (!isLayerKind(kind) || (kind === 'leaf') === (i % 2 === 0)) return [];
    const expected = i % 2 === 0 ? 'a leaf here' : 'a mat or a cavity here';
    return [problemAt([...path, 'kind'], `${expected}, since leaves and interlayers alternate`, `"${kind}"`)];
  });
  if (wrong.length > 0 || layers.length % 2 === 1) return wrong;
  const received = layers.length === 0 ? 'none' : `${layers.length} layers`;
  return [problemAt([...stackPath, 'layers'], 'layers that begin and end with a leaf', received)];
}

function isLayerKind(kind: unknown): kind is Layer['kind'] {
  return isText(kind) && Object.hasOwn(LAYER_FIELDS, kind);
}

function fieldProblems(known: Known, { item, path }: Entry, specs: Specs): readonly Problem[] {
  return Object.entries(specs).flatMap(([name, spec]) => {
    const field = own(item, name);
    const place = [...path, name];
    if (isText(field)) return literalProblems(known, field, spec, place);
    const key = own(asObject(field), 'parameter');
    return isText(key) ? referenceProblems(known, key, spec, [...place, 'parameter']) : [];
  });
}

/** Materials, coverings and fills; the schema knows the other choices. */
function literalProblems(known: Known, text: string, spec: FieldSpec, path: Path): readonly Problem[] {
  if (spec.type !== 'choice' || spec.fixed || known.choicesOf(spec).has(text)) return [];
  return [problemAt(path, `a known ${spec.label}`, shortValue(text))];
}

function referenceProblems(known: Known, key: string, spec: FieldSpec, path: Path): readonly Problem[] {
  const parameter = known.parameters.get(key);
  if (!parameter) return [problemAt(path, "the key of one of the notebook's parameters", shortValue(key))];
  const comparable = comparableParameter(parameter);
  const misfit = comparable && fitProblem(comparable, spec, known.choicesOf(spec));
  return misfit ? [problemAt(path, misfit.expected, misfit.received)] : [];
}

function rememberedChoices(notebook: RawObject): Known['choicesOf'] {
  const materials = entriesOf(notebook, 'materials').map((m) => m.item) as unknown as Notebook['materials'];
  const remembered = new Map<FieldSpec, ReadonlySet<string>>();
  return (spec) => {
    const choices = remembered.get(spec) ?? choiceValues({ materials }, spec);
    remembered.set(spec, choices);
    return choices;
  };
}

/** The parameter, if enough of it is sound to be compared with a field. */
function comparableParameter(raw: RawObject): Parameter | undefined {
  const choices = entriesOf(raw, 'choices').map(({ item }) => item);
  if (choices.length > 0) return { ...raw, choices } as unknown as Parameter;
  const sound = isText(own(raw, 'quantity')) && isNumber(own(raw, 'min')) && isNumber(own(raw, 'max'));
  return sound ? (raw as unknown as Parameter) : undefined;
}
