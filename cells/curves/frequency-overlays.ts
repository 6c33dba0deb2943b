/** Frequencies marked over the curves: drawn with the first curve, so that nothing moves when more is loaded. */
import type { NamedFrequency } from '#src/acoustics/prediction.ts';
import type { FrequencyOverlay } from '#src/charts/band-data.ts';
import { hertzText } from '#src/charts/hertz-text.ts';

/** Leaves on springs have an f0, bending waves an fc; the other resonances go by their frequency alone. */
const SYMBOLS: Readonly<Record<NamedFrequency['kind'], string>> = {
  'mass-spring-mass': 'f0 ',
  floating: 'f0 ',
  critical: 'fc ',
  cavity: '',
  bay: '',
};

/** Lowest first. */
export function frequencyOverlays(frequencies: readonly NamedFrequency[], dash: string): FrequencyOverlay[] {
  return frequencies
    .toSorted((a, b) => a.frequency_Hz - b.frequency_Hz)
    .map(({ frequency_Hz, name, kind }) => {
      const label = `${SYMBOLS[kind]}${hertzText(frequency_Hz)}`;
      return { kind: 'frequency', label, description: `${label}: ${name}`, frequency_Hz, dash };
    });
}
