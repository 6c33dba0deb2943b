/** Width of the bracket that bisection ends at, of the largest bound of an eigenvalue. */
const RELATIVE_TOLERANCE = 1e-12;

/**
 * Eigenvalue number `rank`, smallest first, of a symmetric tridiagonal matrix, by Sturm's sequence and bisection
 * (Wilkinson, The Algebraic Eigenvalue Problem, 1965, chapter 5).
 * @param diagonal n values; `beside` n − 1, next to the diagonal.
 */
export function tridiagonalEigenvalue(diagonal: ArrayLike<number>, beside: ArrayLike<number>, rank: number): number {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < diagonal.length; i++) {
    const reach = Math.abs(beside[i] ?? 0) + Math.abs(beside[i - 1] ?? 0);
    low = Math.min(low, diagonal[i]! - reach);
    high = Math.max(high, diagonal[i]! + reach);
  }
  const scale = Math.max(Math.abs(low), Math.abs(high));
  while (high - low > RELATIVE_TOLERANCE * scale) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (countBelow(diagonal, beside, middle) > rank) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

function countBelow(diagonal: ArrayLike<number>, beside: ArrayLike<number>, shift: number): number {
  let count = 0;
  let pivot = 1;
  for (let i = 0; i < diagonal.length; i++) {
    const next = i > 0 ? beside[i - 1]! : 0;
    pivot = diagonal[i]! - shift - (next * next) / pivot;
    if (pivot === 0) pivot = -Number.MIN_VALUE;
    if (pivot < 0) count++;
  }
  return count;
}
