/** What rules a region of the direct path, in words and numbers of the prediction. */
import type { BandMechanism, NamedFrequency, Prediction, Sound } from '#src/acoustics/prediction.ts';
import { levelText } from '#src/charts/band-data.ts';
import { hertzText } from '#src/charts/hertz-text.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { namedFrequency, type Region, ruledBands } from './regions.ts';

export interface MechanismContext {
  readonly prediction: Prediction;
  readonly sound: Sound;
  readonly units: UnitSystem;
}

export function mechanismInWords(region: Region, context: MechanismContext): string {
  const { prediction, units } = context;
  const named = namedFrequency(prediction, region);
  const at = region.frequency_Hz === undefined ? undefined : hertzText(region.frequency_Hz);
  const slope = slopeInWords(region, context);
  const mass = formatQuantity(prediction.surfaceMass_kg_m2, 'surface-mass', units);
  switch (region.mechanism) {
    case 'mass-spring-mass':
      return `${named?.name ?? 'the leaves bounce on the spring between them'}${given(': f0 = ', at)}${cost(region, context)}`;
    case 'mass':
      return `the floor moves as one, and its mass holds the sound back: ${mass}${slope}${towards(region, context)}`;
    case 'mobility':
      return `the blows shake the floor as far as its mass and stiffness let them: ${mass}${slope}`;
    case 'hammer-contact':
      return `the surface gives way under the hammers${given(', which resonate on it at ', at)}${lessForce(region, context)}${slope}`;
    case 'double-leaf':
      return `${eachOnItsOwn(region, prediction)}${slope}`;
    case 'cavity-mode':
      return `the air in ${severalCavities(prediction) ? 'a' : 'the'} cavity resonates: ${named?.name ?? 'half a wavelength fits across its depth'}${given(' at ', at)}${multiples(region, prediction)}${cost(region, context)}`;
    case 'coincidence':
      return `bending waves in ${leafOf(named)} run as fast as sound${given(': fc = ', at)}${cost(region, context)}`;
    case 'bay-resonance':
      return `${named?.name ?? 'a board swings between its fastenings'}${given(': resonance at ', at)}${cost(region, context)}`;
    case 'supports':
    case 'flanking':
    case 'leak':
      // Paths of their own: `region-sentences.ts` has words for them.
      return '';
  }
}

function severalCavities({ resonances_Hz }: Prediction): boolean {
  return resonances_Hz.filter(({ kind }) => kind === 'cavity').length > 1;
}

/** Leaves on several springs come apart one after the other: above the last f0 alone does each move on its own. */
function eachOnItsOwn({ first, last }: Region, { bands_Hz, resonances_Hz }: Prediction): string {
  const bounces_Hz = resonances_Hz
    .filter(({ kind }) => kind === 'mass-spring-mass' || kind === 'floating')
    .map((r) => r.frequency_Hz);
  const below = bounces_Hz.filter((f) => f < bands_Hz[first]!);
  const above = bounces_Hz.filter((f) => f > bands_Hz[last]!);
  const [lowest, highest] = [Math.min(...below), Math.max(...below)];
  if (below.length > 0 && above.length > 0)
    return `some leaves move on their own, others still together: between f0 = ${hertzText(highest)} and f0 = ${hertzText(Math.min(...above))}`;
  const of =
    below.length > 1 ? `every f0 (${hertzText(lowest)} to ${hertzText(highest)})` : `f0 = ${hertzText(lowest)}`;
  return `the leaves move each on its own${below.length === 0 ? '' : `, above ${of}`}`;
}

/** "the upper leaf: bending waves as fast as sound" is about the upper leaf. */
function leafOf(named: NamedFrequency | undefined): string {
  return named?.name.includes(': ') ? named.name.slice(0, named.name.indexOf(': ')) : 'a leaf';
}

function given(words: string, value: string | undefined): string {
  return value === undefined ? '' : words + value;
}

/** Aslant, and with more than one half wave, air resonates above the frequency that bears its name. */
function multiples({ first, frequency_Hz }: Region, { bands_Hz }: Prediction): string {
  return frequency_Hz !== undefined && bands_Hz[first]! > Math.SQRT2 * frequency_Hz
    ? ', several halves and slanting waves higher up'
    : '';
}

/** What a resonance does to the band where it does most. */
function cost(region: Region, { prediction, sound }: MechanismContext): string {
  const effects = effectsOf(region, prediction, sound);
  if (effects.length === 0) return '';
  const most = effects.reduce((a, b) => (b.effect_dB > a.effect_dB ? b : a));
  const level_dB = (sound === 'impact' ? prediction.Ln_dB : prediction.R_dB)[most.index]!;
  const where = region.first === region.last ? '' : ` at ${prediction.bands_Hz[most.index]} Hz`;
  const [symbol, changed] = sound === 'impact' ? ['Ln', 'higher'] : ['R', 'lower'];
  return `; ${symbol} is ${levelText(level_dB)} dB${where}, about ${Math.round(most.effect_dB)} dB ${changed} for it`;
}

function lessForce(region: Region, { prediction, sound }: MechanismContext): string {
  const values = effectsOf(region, prediction, sound).map(({ effect_dB }) => Math.round(effect_dB));
  if (values.length === 0) return '';
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return `: ${least === most ? '' : `${least} to `}${most} dB less force than on a rigid one`;
}

function effectsOf({ first, last }: Region, prediction: Prediction, sound: Sound) {
  return ruledBands(prediction, sound)
    .map(({ effect_dB }: BandMechanism, index) => ({ index, effect_dB }))
    .slice(first, last + 1)
    .filter((band): band is { index: number; effect_dB: number } => band.effect_dB !== undefined);
}

/** How fast R or Ln rises through the region, from a straight line through its bands; undefined with too few bands. */
function slope_dB_per_octave({ first, last }: Region, { prediction, sound }: MechanismContext): number | undefined {
  const values = (sound === 'impact' ? prediction.Ln_dB : prediction.R_dB).slice(first, last + 1);
  if (values.length < 3 || !values.every(Number.isFinite)) return undefined;
  const middle = (values.length - 1) / 2;
  let product = 0;
  let square = 0;
  values.forEach((v, i) => {
    product += (i - middle) * v;
    square += (i - middle) ** 2;
  });
  return Math.round((3 * product) / square);
}

function slopeInWords(region: Region, context: MechanismContext): string {
  const slope = slope_dB_per_octave(region, context);
  const symbol = context.sound === 'impact' ? 'Ln' : 'R';
  if (slope === undefined) return '';
  if (slope === 0) return `; ${symbol} stays level`;
  return `; ${symbol} ${slope > 0 ? 'rises' : 'falls'} by ${Math.abs(slope)} dB per octave`;
}

/** Mass alone would give 6 dB per octave: where there is hardly half of that, the resonance above takes the rest. */
function towards(region: Region, context: MechanismContext): string {
  const { prediction } = context;
  const slope = slope_dB_per_octave(region, context);
  if (slope === undefined || slope > 3) return '';
  const top_Hz = prediction.bands_Hz[region.last]!;
  const next_Hz = Math.min(...prediction.resonances_Hz.map((r) => r.frequency_Hz).filter((f) => f > top_Hz));
  return Number.isFinite(next_Hz) ? ` instead of rising by 6, so near to the resonance at ${hertzText(next_Hz)}` : '';
}
