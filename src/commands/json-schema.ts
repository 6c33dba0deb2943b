/** The JSON Schemas of the notebook file and of a bare stack, made from the schemas that files are checked with. */
import { type ConversionConfig, type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import type * as v from 'valibot';
import { notebookSchema } from '#src/notebook/schema.ts';
import { CHOICES_OF_EITHER, finite, key, name, reference } from '#src/notebook/schema-parts.ts';
import { bareStackSchema } from '#src/notebook/stack-schema.ts';

/** File names and contents; the contents end with a line break. */
export function jsonSchemaFiles(): Readonly<Record<string, string>> {
  return {
    'notebook.schema.json': schemaText(
      notebookSchema,
      'Slab & Spring notebook',
      'A file whose name ends in .slabspring.json. Beyond this schema, ids and keys must be unique, references must name what exists and fit it, values must lie in their ranges, and leaves and interlayers must alternate.',
    ),
    'stack.schema.json': schemaText(
      bareStackSchema,
      'Slab & Spring stack',
      'One floor-ceiling from the upper room down, in SI units, with literals only, the materials it brings and what goes around it. Beyond this schema, ids and keys must be unique, materials must be built in or among its own, and layers must alternate between a leaf and a mat or cavity, and begin and end with a leaf.',
    ),
  };
}

/** Schemas that stand in many places; the JSON Schema defines each once. */
const SHARED = { key, name, number: finite, reference };

const CONFIG: ConversionConfig = {
  target: 'draft-2020-12',
  definitions: SHARED,
  // Names that every object has are refused; a JSON Schema could only list them.
  ignoreActions: ['check'],
  overrideSchema: ({ valibotSchema, jsonSchema }) => {
    const choices = CHOICES_OF_EITHER.get(valibotSchema);
    if (choices) return { anyOf: choices.map(converted) };
    return valibotSchema.type === 'object_with_rest' ? { ...jsonSchema, additionalProperties: false } : undefined;
  },
};

function schemaText(schema: v.GenericSchema, title: string, description: string): string {
  const { $schema, $defs } = toJsonSchema(schema, CONFIG);
  const body = converted(schema);
  const uses = (id: string) => JSON.stringify(body).includes(`"#/$defs/${id}"`);
  const shared = Object.fromEntries(Object.keys(SHARED).flatMap((id) => (uses(id) ? [[id, $defs?.[id]]] : [])));
  return `${JSON.stringify({ $schema, title, description, ...body, $defs: shared }, null, 2)}\n`;
}

/** Without the frame that a schema has when it stands alone. */
function converted(schema: v.GenericSchema): JsonSchema {
  const { $schema: _dialect, $defs: _shared, ...rest } = toJsonSchema(schema, CONFIG);
  return rest;
}
