/** Where a function is smallest, and its value there. */
export interface Minimum {
  readonly x: readonly number[];
  readonly value: number;
}

/**
 * Minimum of a function without derivatives by the simplex of Nelder & Mead (Computer Journal 7, 1965), restarted once
 * from the place it found. Deterministic.
 * @param steps First size of the simplex along each coordinate.
 */
export function minimise(
  f: (x: readonly number[]) => number,
  start: readonly number[],
  steps: readonly number[],
  { tolerance = 1e-4, mostEvaluations = 700 } = {},
): Minimum {
  const first = descend(f, start, steps, tolerance, mostEvaluations);
  return descend(
    f,
    first.x,
    steps.map((s) => s / 3),
    tolerance,
    mostEvaluations,
  );
}

function descend(
  f: (x: readonly number[]) => number,
  start: readonly number[],
  steps: readonly number[],
  tolerance: number,
  mostEvaluations: number,
): Minimum {
  const n = start.length;
  const at = (x: readonly number[]): Minimum => ({ x, value: f(x) });
  const simplex = [at(start), ...steps.map((step, i) => at(start.map((v, j) => (i === j ? v + step : v))))];
  let evaluations = simplex.length;
  while (evaluations < mostEvaluations) {
    simplex.sort((a, b) => a.value - b.value);
    const best = simplex[0]!;
    const worst = simplex[n]!;
    if (worst.value - best.value < tolerance) break;
    const middle = start.map((_, j) => simplex.slice(0, n).reduce((sum, p) => sum + p.x[j]!, 0) / n);
    const along = (t: number): Minimum => {
      evaluations++;
      return at(middle.map((m, j) => m + t * (worst.x[j]! - m)));
    };
    const reflected = along(-1);
    if (reflected.value < best.value) {
      const expanded = along(-2);
      simplex[n] = expanded.value < reflected.value ? expanded : reflected;
    } else if (reflected.value < simplex[n - 1]!.value) simplex[n] = reflected;
    else {
      const contracted = reflected.value < worst.value ? along(-0.5) : along(0.5);
      if (contracted.value < Math.min(reflected.value, worst.value)) simplex[n] = contracted;
      else {
        for (let i = 1; i <= n; i++) simplex[i] = at(simplex[i]!.x.map((v, j) => (v + best.x[j]!) / 2));
        evaluations += n;
      }
    }
  }
  simplex.sort((a, b) => a.value - b.value);
  return simplex[0]!;
}
