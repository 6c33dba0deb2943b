/** Tables about the numbers of a construction: how well R is known, and what more of each number does. */
import { OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';
import { LOWEST_MEASURED_BAND_HZ } from '#src/acoustics/uncertainty.ts';
import type { NamedNumber } from './named-number.ts';
import type { StackPrediction } from './predict-notebook.ts';
import { columns, signedTenths, tenths } from './text-columns.ts';

const OCTAVES_ONLY = 'The thirds at octave mid-bands; --json and --csv have every band.';

export function uncertaintyTable({ bands_Hz, R_dB, uncertainty }: StackPrediction): string | undefined {
  if (!uncertainty) return undefined;
  const { R, betweenLaboratories, tolerances } = uncertainty;
  const head = ['Hz', 'R', 'u', '95 %', 'R by tolerances', 'Ln by tolerances'];
  const rows = bands_Hz.map((band_Hz, i) => [
    String(band_Hz),
    ...[R_dB, R.standard_dB, R.expanded_dB, tolerances.R_dB, tolerances.Ln_dB].map((values) => tenths(values[i])),
  ]);
  return [
    'how far a laboratory may find something else, ± dB',
    columns([head, ...rows]),
    `u: standard uncertainty of R, ISO 12999-1 situation A and the model's residuals; 95 %: ${R.coverageFactor} u.`,
    `Below ${LOWEST_MEASURED_BAND_HZ} Hz no row is measured: the residual there is borrowed from the octave above.`,
    `Between laboratories alone: Rw ± ${betweenLaboratories.Rw}, Ln,w ± ${betweenLaboratories.Lnw} dB (ISO 12999-1, standard uncertainty).`,
    'By tolerances: of the numbers below, assumed, no source. The residuals hold a part of it: not to be added.',
  ].join('\n');
}

export function toleranceTable({ bands_Hz, uncertainty }: StackPrediction): string | undefined {
  if (!uncertainty) return undefined;
  const shown = octavesOf(bands_Hz);
  const rows = uncertainty.tolerances.contributions.map((c) => [
    nameOf(c),
    digits(c.value),
    c.standardUncertainty === null ? '–' : digits(c.standardUncertainty),
    ...cellsOf(c.R_dB, shown, tenths),
    ...noteOf(c),
  ]);
  const head = ['', 'value', '±', ...shown.map(({ band_Hz }) => String(band_Hz)), 'note'];
  return ['what each assumed tolerance does to R, ± dB', columns([head, ...rows], 1), OCTAVES_ONLY].join('\n');
}

export function sensitivityTable({ bands_Hz, sensitivities }: StackPrediction): string | undefined {
  if (!sensitivities) return undefined;
  const shown = octavesOf(bands_Hz);
  const rows = sensitivities.numbers.flatMap((s) => [
    [nameOf(s), digits(s.value), 'R', ...cellsOf(s.dR_dB, shown, signedTenths), ...noteOf(s)],
    ['', '', 'Ln', ...cellsOf(s.dLn_dB, shown, signedTenths), ''],
  ]);
  const head = ['', 'value', '', ...shown.map(({ band_Hz }) => String(band_Hz)), 'note'];
  return ['what 10 % more of a number does, dB', columns([head, ...rows], 1), OCTAVES_ONLY].join('\n');
}

interface ShownBand {
  readonly band_Hz: number;
  readonly index: number;
}

function octavesOf(bands_Hz: readonly number[]): readonly ShownBand[] {
  return bands_Hz.flatMap((band_Hz, index) => (OCTAVES_HZ.includes(band_Hz) ? [{ band_Hz, index }] : []));
}

function cellsOf(
  values: readonly number[] | null,
  shown: readonly ShownBand[],
  inWords: (value: number | undefined) => string,
): readonly string[] {
  return shown.map(({ index }) => inWords(values?.[index]));
}

function nameOf({ path, of }: NamedNumber): string {
  return `${path} (${of})`;
}

function digits(value: number): string {
  const rounded = Number(value.toPrecision(4));
  return Math.abs(rounded) < 1e6 ? String(rounded) : rounded.toExponential().replace('e+', 'e');
}

function noteOf({ stated, reason }: NamedNumber & { readonly reason?: string }): readonly [string] {
  return [reason ?? (stated ? '' : 'usual value, not stated')];
}
