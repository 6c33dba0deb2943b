import { dips } from './dips.ts';
import type { FloorModel } from './floor-model.ts';
import { contactEffect } from './hammer-contact-effect.ts';
import { movingAsOne_dB } from './moving-as-one.ts';
import type { BandMechanism, PathLevels, PathName } from './prediction.ts';
import { type RulingResonance, resonanceNear, rulingResonances } from './ruling-resonances.ts';

/** What rules one band of the direct path. */
type DirectRule = Omit<BandMechanism, 'path' | 'share'>;

/** No rating reads lower bands; what is found from here on never depends on whether they were asked for. */
const USUAL_LOWEST_HZ = 50;

/** So much less force than on a rigid surface lets the surface rule: half the energy. */
const LEAST_CONTACT_dB = 3;

/**
 * What rules each band of a floor: the path with most energy and, within the direct path, a resonance where the curve has a
 * dip beside it (a peak, for impact sound) that it can have made. A resonance without a dip rules nothing.
 */
export class Mechanisms {
  readonly #model: FloorModel;
  readonly #bands_Hz: readonly number[];
  readonly #resonances: readonly RulingResonance[];
  /** The leaves' first resonance on their springs; Infinity for one leaf. */
  readonly #bounce_Hz: number;

  constructor(model: FloorModel, bands_Hz: readonly number[]) {
    this.#model = model;
    this.#bands_Hz = bands_Hz;
    this.#resonances = rulingResonances(model);
    this.#bounce_Hz = Math.min(
      ...this.#resonances.filter((r) => r.mechanism === 'mass-spring-mass').map((r) => r.frequency_Hz),
    );
  }

  /** @param paths_dB R of each path. A floor with springs may also do worse than it would as one mass. */
  airborne(paths_dB: PathLevels): BandMechanism[] {
    const direct_dB = paths_dB.direct!;
    const asOne_dB = Number.isFinite(this.#bounce_Hz) ? movingAsOne_dB(this.#model, this.#bands_Hz) : undefined;
    const resonant = this.#resonant(direct_dB, asOne_dB);
    return this.#rules(paths_dB, -1, (band) => resonant[band] ?? this.#apart(band) ?? { mechanism: 'mass' });
  }

  /** @param paths_dB Ln of each path. The force of the hammers has no part in a peak of the floor. */
  impact(paths_dB: PathLevels): BandMechanism[] {
    const direct_dB = paths_dB.direct!;
    const contact = contactEffect(this.#model);
    const force_dB = this.#bands_Hz.map((f_Hz) => contact.force_dB(f_Hz));
    // A force that is the same at all frequencies brings 3 dB more an octave into a band.
    const held_dB = direct_dB.map((level_dB, i) => 10 * Math.log10(this.#bands_Hz[i]!) + force_dB[i]! - level_dB);
    const resonant = this.#resonant(held_dB);
    return this.#rules(paths_dB, 1, (band) => {
      if (resonant[band]) return resonant[band];
      const effect_dB = -force_dB[band]!;
      if (effect_dB >= LEAST_CONTACT_dB)
        return { mechanism: 'hammer-contact', frequency_Hz: contact.resonance_Hz, effect_dB };
      return this.#apart(band) ?? { mechanism: 'mobility' };
    });
  }

  #apart(band: number): DirectRule | undefined {
    return this.#bands_Hz[band]! > this.#bounce_Hz
      ? { mechanism: 'double-leaf', frequency_Hz: this.#bounce_Hz }
      : undefined;
  }

  #resonant(levels_dB: readonly number[], asOne_dB?: readonly number[]): (DirectRule | undefined)[] {
    const usual = this.#bands_Hz.findIndex((f_Hz) => f_Hz >= USUAL_LOWEST_HZ);
    const named = (from: number) => this.#namedDips(levels_dB.slice(from), asOne_dB?.slice(from), from);
    return usual === 0 ? named(0) : [...named(0).slice(0, usual), ...named(usual)];
  }

  #namedDips(
    levels_dB: readonly number[],
    asOne_dB: readonly number[] | undefined,
    from: number,
  ): (DirectRule | undefined)[] {
    return dips(levels_dB, asOne_dB).map((dip, i) => {
      const resonance = dip && resonanceNear(this.#resonances, this.#bands_Hz[from + dip.bottom]!);
      if (!resonance || Math.abs(Math.log2(this.#bands_Hz[from + i]! / resonance.rings_Hz)) > 1) return undefined;
      const { mechanism, frequency_Hz } = resonance;
      return { mechanism, frequency_Hz, effect_dB: dip.depth_dB };
    });
  }

  /** @param sign 1 for levels, −1 for losses. */
  #rules(paths_dB: PathLevels, sign: 1 | -1, direct: (band: number) => DirectRule): BandMechanism[] {
    const paths = Object.entries(paths_dB) as [PathName, readonly number[]][];
    return this.#bands_Hz.map((_, band) => {
      const [path, strongest] = paths.reduce((a, b) => (sign * b[1][band]! > sign * a[1][band]! ? b : a));
      // Relative to the strongest, so that nothing overflows or vanishes.
      const others = paths.map(([, levels]) => 10 ** ((sign * (levels[band]! - strongest[band]!)) / 10));
      const total = others.reduce((sum, energy) => sum + (Number.isFinite(energy) ? energy : 0), 0);
      const share = 1 / Math.max(total, 1);
      if (path === 'direct') return { path, share, ...direct(band) };
      return { path, share, mechanism: path === 'leaks' ? 'leak' : path };
    });
  }
}
