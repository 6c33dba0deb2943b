import { ADAPTATION_TERMS, type AdaptationTerm } from '../standards/iso-717-1.ts';
import { aWeightedLevel_dB } from './a-weighted-level.ts';
import type { AstmRounding } from './astm-rounding.ts';
import type { ContourFit } from './contour-fit.ts';
import { deltaIic } from './delta-iic.ts';
import { deltaLtw, deltaLw } from './delta-lw.ts';
import { iic } from './iic.ts';
import { lnw } from './lnw.ts';
import { type Nc, nc, SIL_BANDS_HZ } from './nc.ts';
import { nr } from './nr.ts';
import { octavesFromThirds } from './octave-bands.ts';
import { oitc } from './oitc.ts';
import { type RcMark2, rcMark2 } from './rc-mark-2.ts';
import { rw } from './rw.ts';
import { bandWidthOf, missingBands, type Spectrum, valuesAt } from './spectrum.ts';
import { stc } from './stc.ts';

/** What the bands are: insulation, normalised impact level, its reduction by a covering, or level in a room. */
export type RatedQuantity = 'R' | 'Ln' | 'improvement' | 'level';

export interface RatingLine {
  readonly name: string;
  /** NaN: the bands do not suffice, and `detail` says which are missing. */
  readonly value: number;
  /** The value is the end of the criterion's scale, and the bands lie beyond it. */
  readonly beyond?: 'above' | 'below';
  /** How the number came about, in one phrase. */
  readonly detail: string;
  readonly standard: string;
}

/** Every rating that there is for these bands, those that cannot be given included. */
export function ratingReport(quantity: RatedQuantity, spectrum: Spectrum, rounding: AstmRounding = {}): RatingLine[] {
  switch (quantity) {
    case 'R':
      return airborne(spectrum, rounding);
    case 'Ln':
      return impact(spectrum, rounding);
    case 'improvement':
      return improvement(spectrum, rounding);
    case 'level':
      return roomNoise(spectrum);
  }
}

function airborne(spectrum: Spectrum, rounding: AstmRounding): RatingLine[] {
  const { STC, fit } = stc(spectrum, rounding);
  const outdoor = oitc(spectrum);
  const iso = rw(spectrum);
  return [
    line('STC', STC, 'ASTM E413-22', fit.missing_Hz, fitted(fit)),
    line('OITC', outdoor.OITC, 'ASTM E1332', outdoor.missing_Hz, `${tenths(outdoor.unrounded_dB)} before rounding`),
    line('Rw', iso.Rw, 'ISO 717-1', iso.fit.missing_Hz, fitted(iso.fit) + octaveRemark(spectrum)),
    ...ADAPTATION_TERMS.map((term) => {
      const { term_dB, XA_dB, missing_Hz } = iso.adaptation[term];
      return line(labelOf(term), term_dB, 'ISO 717-1', missing_Hz, `XA ${tenths(XA_dB)}`);
    }),
  ];
}

function impact(spectrum: Spectrum, rounding: AstmRounding): RatingLine[] {
  const { IIC, fit } = iic(spectrum, rounding);
  const iso = lnw(spectrum);
  const term = (name: string, { term_dB, sum_dB, missing_Hz }: typeof iso.CI) =>
    line(name, term_dB, 'ISO 717-2', missing_Hz, `energy sum ${tenths(sum_dB)}`);
  return [
    line('IIC', IIC, 'ASTM E989', fit.missing_Hz, fitted(fit)),
    line('Ln,w', iso.Lnw, 'ISO 717-2', iso.fit.missing_Hz, fitted(iso.fit) + octaveRemark(spectrum)),
    term('CI', iso.CI),
    term('CI,50-2500', iso.CI50_2500),
  ];
}

function improvement(spectrum: Spectrum, rounding: AstmRounding): RatingLine[] {
  const heavy = deltaLw(spectrum);
  const { dIIC, covered } = deltaIic(spectrum, rounding);
  const missing_Hz = heavy.covered.fit.missing_Hz;
  const on = (floor: string, rating: number) => `${floor} with it ${withMinus(String(rating))}`;
  return [
    line('ΔLw', heavy.dLw, 'ISO 717-2', missing_Hz, on('heavy reference floor', heavy.covered.Lnw)),
    line('CI,Δ', heavy.CIdelta, 'ISO 717-2', missing_Hz, on('CI of that floor', heavy.covered.CI.term_dB)),
    line('ΔLlin', heavy.dLlin, 'ISO 717-2', missing_Hz, 'ΔLw + CI,Δ'),
    line('ΔIIC', dIIC, 'ASTM E2179', missing_Hz, on('reference concrete floor', covered.IIC)),
    ...([1, 2, 3] as const).map((type) => {
      const light = deltaLtw(spectrum, type);
      return line(
        `ΔLt${type},w`,
        light.dLtw,
        'ISO 717-2',
        missing_Hz,
        on(`lightweight floor ${type}`, light.covered.Lnw),
      );
    }),
  ];
}

function roomNoise(spectrum: Spectrum): RatingLine[] {
  const octaves = bandWidthOf(spectrum.bands_Hz) === 'octave' ? spectrum : octavesFromThirds(spectrum, 'level');
  const s12 = nc(octaves, 'S12.2');
  const classic = nc(octaves, 'Beranek');
  const rating = nr(octaves);
  const rc = rcMark2(octaves);
  const count = spectrum.values_dB.filter((v) => !Number.isNaN(v)).length;
  return [
    line('LA', tenth(aWeightedLevel_dB(spectrum)), 'IEC 61672-1', [], `${count} bands added`),
    criterion('NC', 'ANSI/ASA S12.2', s12),
    criterion('NC (1957)', 'Beranek 1957', classic),
    line(
      'NR',
      rating.nrRounded,
      'ISO/R 1996',
      unless(rating.nr, rating.missing_Hz),
      `touched at ${rating.governing_Hz} Hz`,
    ),
    line('RC', rc.RC, 'RC Mark II', unless(rc.RC, rc.missing_Hz), qualityOf(rc)),
    line('SIL', tenth(s12.SIL_dB), 'ANSI/ASA S12.2', missingOf(octaves, SIL_BANDS_HZ), 'mean of 500 to 4000 Hz'),
  ];
}

function line(
  name: string,
  value: number,
  standard: string,
  missing_Hz: readonly number[],
  detail: string,
): RatingLine {
  return { name, value, standard, detail: Number.isNaN(value) ? `needs ${inWords(missing_Hz)}` : detail };
}

function inWords(missing_Hz: readonly number[]): string {
  if (missing_Hz.length === 0) return 'more bands';
  const listed = missing_Hz.slice(0, 6).join(', ');
  return `${listed}${missing_Hz.length > 6 ? ', …' : ''} Hz`;
}

function fitted({ sum_dB, largest_dB, largestBand_Hz, governs }: ContourFit): string {
  if (Number.isNaN(largestBand_Hz)) return 'no deficiency';
  const limit = { sum: 'the sum governs', single: 'the single band governs', both: 'both limits govern', none: '' }[
    governs
  ];
  return `deficiencies ${tenths(sum_dB)} in all, ${tenths(largest_dB)} at ${largestBand_Hz} Hz; ${limit}`;
}

/** ISO 717-1 and -2 allow octave bands for measurements in buildings only (clause 4.4 and 4.3). */
function octaveRemark({ bands_Hz }: Spectrum): string {
  return bandWidthOf(bands_Hz) === 'octave' ? ' (octaves: for field measurements only)' : '';
}

function criterion(name: string, standard: string, rated: Nc): RatingLine {
  const { ncRounded, governing_Hz, missing_Hz, below, above } = rated;
  const beyond = below ? 'below' : above ? 'above' : undefined;
  const touched = { below: 'below the lowest curve', above: 'above the highest curve' };
  const detail = beyond ? touched[beyond] : `touched at ${governing_Hz} Hz`;
  return { ...line(name, ncRounded, standard, unless(rated.nc, missing_Hz), detail), ...(beyond && { beyond }) };
}

const REGION_NAMES = { N: 'neutral', LF: 'rumble', MF: 'roar', HF: 'hiss' } as const;
const VIBRATION = { A: '; light structures clearly vibrate', B: '; light structures may vibrate' } as const;

/** How the noise sounds, as RC Mark II judges it: the level alone where low bands are missing. */
function qualityOf({ tag, QAI_dB, quality, vibration, missing_Hz }: RcMark2): string {
  if (!tag) return `level only, its quality needs ${inWords(missing_Hz)}`;
  const judged = tag === 'N' ? '' : `, ${quality}`;
  return `${REGION_NAMES[tag]} (${tag}), QAI ${tenths(QAI_dB)}${judged}${vibration ? VIBRATION[vibration] : ''}`;
}

function missingOf(spectrum: Spectrum, wanted_Hz: readonly number[]): readonly number[] {
  return missingBands(wanted_Hz, valuesAt(spectrum, wanted_Hz));
}

function labelOf(term: AdaptationTerm): string {
  return term.replace(/^(C(?:tr)?)(\d+)_(\d+)$/, '$1,$2-$3');
}

function unless(value: number, missing_Hz: readonly number[]): readonly number[] {
  return Number.isNaN(value) ? missing_Hz : [];
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

function tenths(value: number): string {
  return withMinus(value.toFixed(1));
}

function withMinus(text: string): string {
  return text.replace('-', '−');
}
