import { describe, expect, it } from 'vitest';
import type { JoistKind, SupportKind } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { JOIST_LABELS, SUPPORT_LABELS } from '#src/notebook/field-specs.ts';
import { OPTIONAL_CAVITY_FIELDS } from '#src/notebook/optional-cavity-fields.ts';
import { fieldsOfSupport } from '#src/notebook/usual-support.ts';
import { cavity, floor, leaf, sheet } from '../published/reference-constructions.ts';

const JOISTS = Object.keys(JOIST_LABELS) as JoistKind[];
const SUPPORTS = Object.keys(SUPPORT_LABELS) as SupportKind[];
const UNUSUAL = {
  supportLineSpacing_m: 0.33,
  supportPointSpacing_m: 0.77,
  supportHeight_m: 0.19,
  supportStiffness_N_m: 3e7,
  hangerFrequency_Hz: 31,
};

function levels_dB(joists: JoistKind, support: SupportKind, more: object): readonly number[] {
  const held = cavity({ joists, support, joistSpacing_m: 0.41, ...more });
  const { R_dB, Ln_dB } = predict(floor(leaf([sheet('osb', 0.018)]), held, leaf([sheet('gypsum-board', 0.0127)])));
  return [...R_dB, ...Ln_dB];
}

describe('fields of a kind of support', () => {
  it.each(JOISTS.flatMap((joists) => SUPPORTS.map((support) => [joists, support] as const)))(
    '%s, %s: those that move the prediction, and no others',
    (joists, support) => {
      const before = levels_dB(joists, support, {});
      const moves = OPTIONAL_CAVITY_FIELDS.filter((name) => {
        const after = levels_dB(joists, support, { [name]: UNUSUAL[name] });
        return after.some((level, i) => Math.abs(level - before[i]!) > 1e-9);
      });
      expect([...fieldsOfSupport(joists, support)].sort()).toEqual([...moves].sort());
    },
  );
});
