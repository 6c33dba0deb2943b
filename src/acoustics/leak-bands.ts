import type { FloorModel } from './floor-model.ts';
import { gaussLegendre } from './gauss-legendre.ts';
import { leakArea_m2 } from './leak-area.ts';
import { OpenLeak, type Swing } from './leaks.ts';
import { exactBandOf } from './standards/iec-61260.ts';

/** Points in a band, or between a resonance of a leak and the middle to the next. */
const POINTS = 4;

/** How near a break in the sum comes to a resonance, in half-widths of its peak; to the middle between two, in radians. */
const NEAR = 0.02;
const NEAR_MIDDLE = 0.3;
const MOST_STEPS = 20;

/** Peaks are not taken for narrower than this, in radians of phase; friction keeps them much wider. */
const NARROWEST = 1e-9;

/** A phase that moves by less, in radians, and an echo fainter than this crowd no points. */
const STILL = 1e-4;
const FAINT = 1e-3;

/**
 * What passes through the leaks of a floor in each band, per area of the floor and at most all of it: the mean of τ over
 * log-spaced frequencies. Undefined where all are closed.
 *
 * A leak does not depend on the floor's waves and has many resonances, c/2L apart and narrow, so it is summed by itself. The
 * phase θ of its echo says where they are. Between each and the middle to the next, Gauss–Legendre points in
 * Θ = 2 arctan((1 + g)/(1 − g) tan θ/2) crowd to the peak 1/|1 − g e^{−jθ}|² so that it becomes constant.
 */
export function leakBands(
  { construction, edges, air }: FloorModel,
  bands_Hz: readonly number[],
): Float64Array | undefined {
  const open = (construction.leaks ?? [])
    .filter((leak) => leakArea_m2(leak) > 0)
    .map((leak) => new OpenLeak(leak, air));
  if (open.length === 0) return undefined;
  return Float64Array.from(bands_Hz, (band_Hz) => {
    const { lower_Hz, upper_Hz } = exactBandOf(band_Hz);
    const sum = open.reduce((all, leak) => all + meanTransmission(leak, lower_Hz, upper_Hz) * leak.area_m2, 0);
    return Math.min(sum / edges.area_m2, 1);
  });
}

/** Mean of τ over ln f. */
export function meanTransmission(leak: OpenLeak, lower_Hz: number, upper_Hz: number): number {
  const end = placeAt(leak, upper_Hz);
  let from = placeAt(leak, lower_Hz);
  let sum = 0;
  for (let turn = Math.floor(from.phase / Math.PI) + 1; turn * Math.PI < end.phase && !isFaint(from, end); turn++) {
    const to = crossing(leak, turn, from, end);
    sum += sumBetween(leak, from, to);
    from = to;
  }
  sum += sumBetween(leak, from, end);
  return sum / Math.log(upper_Hz / lower_Hz);
}

interface Place extends Swing {
  readonly f_Hz: number;
}

function placeAt(leak: OpenLeak, f_Hz: number): Place {
  return { f_Hz, ...leak.swing(f_Hz) };
}

/** About where the phase has come to a multiple of π, even at resonances and odd between them, by false position (Illinois). */
function crossing(leak: OpenLeak, turn: number, from: Place, end: Place): Place {
  const wanted = turn * Math.PI;
  let [low, high] = [from, end];
  let [below, above] = [from.phase - wanted, end.phase - wanted];
  let place = low;
  let side = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    place = placeAt(leak, low.f_Hz + (high.f_Hz - low.f_Hz) * (below / (below - above)));
    const off = place.phase - wanted;
    if (Math.abs(off) < (turn % 2 === 0 ? NEAR * (1 - place.echo) : NEAR_MIDDLE)) break;
    if (off < 0) {
      if (side < 0) above /= 2;
      side = -1;
      low = place;
      below = off;
    } else {
      if (side > 0) below /= 2;
      side = 1;
      high = place;
      above = off;
    }
  }
  return place;
}

/** ∫ τ d(ln f) where the phase goes at most from a resonance to the middle to the next, or back. */
function sumBetween(leak: OpenLeak, from: Place, to: Place): number {
  const still = Math.abs(to.phase - from.phase) < STILL || isFaint(from, to);
  const resonance = 2 * Math.PI * Math.round((from.phase + to.phase) / (4 * Math.PI));
  const nearest = Math.abs(from.phase - resonance) < Math.abs(to.phase - resonance) ? from : to;
  const start = still ? 0 : within(from.phase - resonance);
  const end = still ? STILL : within(to.phase - resonance);
  const width = still ? 1 : Math.max(1 - nearest.echo, NARROWEST);
  const stretch = (2 - width) / width;
  const first = 2 * Math.atan(stretch * Math.tan(start / 2));
  const span = 2 * Math.atan(stretch * Math.tan(end / 2)) - first;
  const perRadian = (to.f_Hz - from.f_Hz) / (end - start);
  const { nodes, weights } = gaussLegendre(POINTS);
  let sum = 0;
  for (let j = 0; j < POINTS; j++) {
    const tan = Math.tan((first + (span * (nodes[j]! + 1)) / 2) / 2);
    const phase = 2 * Math.atan(tan / stretch);
    const slope = (stretch * (1 + tan * tan)) / (stretch * stretch + tan * tan);
    const f_Hz = from.f_Hz + perRadian * (phase - start);
    sum += (weights[j]! * slope * leak.transmission(f_Hz)) / f_Hz;
  }
  return (sum * span * perRadian) / 2;
}

function isFaint(a: Place, b: Place): boolean {
  return Math.max(a.echo, b.echo) < FAINT;
}

/** A phase that a break missed by a little. */
function within(phase: number): number {
  return Math.min(Math.max(phase, -Math.PI), Math.PI);
}
