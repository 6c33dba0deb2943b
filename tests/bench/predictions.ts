import type { Construction } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { QUADRATURE, QUICK_QUADRATURE, SHARP_QUADRATURE } from '#src/acoustics/quadrature.ts';
import { REFERENCE_CONSTRUCTIONS, type ReferenceId } from '../published/reference-constructions.ts';

export interface Bench {
  readonly question: string;
  /** Runs once for input number `i`; what it returns goes into a sink. */
  readonly run: (i: number) => number;
}

/** How long does one prediction take, R and Ln in 21 bands with all ratings? */
export const PREDICTION_BENCHES: readonly Bench[] = [
  prediction('two-leaf joist floor on resilient channel', 'f3'),
  prediction('the same with the quick quadrature', 'f3', QUICK_QUADRATURE),
  prediction('the same with the quadrature for little loss', 'f3', SHARP_QUADRATURE),
  prediction('two-leaf joist floor on clips', 't1'),
  prediction('the same with the quick quadrature', 't1', QUICK_QUADRATURE),
  prediction('three leaves: topping on mat, deck, ceiling on clips', 't4'),
  prediction('framed wall, empty', 'w1'),
  prediction('open-truss floor, deep empty cavity', 'f4'),
  prediction('bare slab', 'c150'),
  prediction('screed on mat on cross-laminated timber (orthotropic)', 'a1'),
];

function prediction(question: string, id: ReferenceId, quadrature = QUADRATURE): Bench {
  const floor = REFERENCE_CONSTRUCTIONS[id];
  // Ten sizes in turn, so that no run can reuse the one before.
  const floors = Array.from({ length: 10 }, (_, i): Construction => ({ ...floor, length_m: 4 + i / 10 }));
  return { question, run: (i) => predict(floors[i % floors.length]!, { quadrature }).ratings.STC };
}
