import type { Prediction } from './prediction.ts';
import { deltaIic } from './ratings/delta-iic.ts';
import { deltaLw } from './ratings/delta-lw.ts';

/** What something laid on a bare slab takes off its impact sound; more is better. */
export interface Improvement {
  readonly bands_Hz: readonly number[];
  /** ΔL, drop of L_n per band, dB; negative where it gets louder. */
  readonly dL_dB: readonly number[];
  /** ΔL_w and C_I,Δ, and their sum ΔL_lin, dB, ISO 717-2. */
  readonly dLw: number;
  readonly CIdelta: number;
  readonly dLlin: number;
  /** ΔIIC, ASTM E2179, to a tenth. */
  readonly dIIC: number;
  /** The lowest resonance of what floats, on the slab; absent where nothing does. */
  readonly floatingResonance_Hz?: number;
}

/**
 * ΔL = L_n of the bare slab − L_n of the slab with something laid on it, rated by ISO 717-2:2020, clause 5, and ASTM E2179,
 * clause 7 (see `ratings/delta-lw.ts`, `ratings/delta-iic.ts`).
 *
 * @param bare The slab, predicted from 100 Hz or lower.
 * @param laid The same slab with what lies on it, in the same bands.
 */
export function improvementOf(bare: Prediction, laid: Prediction): Improvement {
  const { bands_Hz } = bare;
  const dL_dB = bands_Hz.map((_, i) => bare.Ln_dB[i]! - laid.Ln_dB[i]!);
  const spectrum = { bands_Hz, values_dB: dL_dB };
  const { dLw, CIdelta, dLlin } = deltaLw(spectrum);
  const floating = laid.resonances_Hz.filter(({ kind }) => kind === 'floating').map((r) => r.frequency_Hz);
  return {
    bands_Hz,
    dL_dB,
    dLw,
    CIdelta,
    dLlin,
    dIIC: deltaIic(spectrum).dIIC,
    ...(floating.length > 0 && { floatingResonance_Hz: Math.min(...floating) }),
  };
}
