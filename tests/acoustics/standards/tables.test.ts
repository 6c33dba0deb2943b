import { describe, expect, it } from 'vitest';
import { energySum_dB } from '#src/acoustics/ratings/energy.ts';
import { SPEECH_SPECTRUM_LEVEL, speechBandLevels, type VocalEffort } from '#src/acoustics/standards/ansi-s3-5.ts';
import * as E413 from '#src/acoustics/standards/astm-e413.ts';
import * as E989 from '#src/acoustics/standards/astm-e989.ts';
import * as E1332 from '#src/acoustics/standards/astm-e1332.ts';
import { exactBandOf, OCTAVES_HZ, THIRD_OCTAVES_HZ, thirdsOf } from '#src/acoustics/standards/iec-61260.ts';
import { LOUDNESS_PARAMETERS } from '#src/acoustics/standards/iso-226.ts';
import { HEARING_THRESHOLD } from '#src/acoustics/standards/iso-389-7.ts';
import * as ISO_717_1 from '#src/acoustics/standards/iso-717-1.ts';
import * as ISO_717_2 from '#src/acoustics/standards/iso-717-2.ts';
import * as FLOORS from '#src/acoustics/standards/iso-717-2-reference-floors.ts';
import { NC_TABLES } from '#src/acoustics/standards/noise-criteria.ts';
import { NOISE_RATING } from '#src/acoustics/standards/noise-rating.ts';
import { RC_CURVE } from '#src/acoustics/standards/room-criteria-2.ts';
import type { BandTable } from '#src/acoustics/standards/table.ts';
import { PUBLISHED_TABLES, type PublishedTableKey } from '../../published/ratings-tables.ts';

/** Name, clause and how it was checked, for the test's title. */
function cited(key: PublishedTableKey): [title: string, values: Record<string, number>] {
  const { standard, clause, verified, values } = PUBLISHED_TABLES[key];
  return [`${standard}, ${clause} (${key}; ${verified})`, values];
}

function asRecord(table: BandTable): Record<string, number> {
  return Object.fromEntries(table);
}

const adaptation = (width: 'third' | 'octave') =>
  ISO_717_1.ADAPTATION_TERMS.map((term): [PublishedTableKey, BandTable] => [
    `iso717_1_spectrum_${width}_${term.replace('_', '-')}` as PublishedTableKey,
    (width === 'third' ? ISO_717_1.SPECTRA_THIRD : ISO_717_1.SPECTRA_OCTAVE)[term],
  ]);

describe('tables stand as printed', () => {
  const tables: [PublishedTableKey, BandTable][] = [
    ['iso717_1_reference_third', ISO_717_1.REFERENCE_THIRD],
    ['iso717_1_reference_octave', ISO_717_1.REFERENCE_OCTAVE],
    ...adaptation('third'),
    ...adaptation('octave'),
    ['iso717_2_reference_third', ISO_717_2.REFERENCE_THIRD],
    ['iso717_2_reference_octave', ISO_717_2.REFERENCE_OCTAVE],
    ['astm_e413_contour', E413.CONTOUR],
    ['astm_e989_contour', E989.CONTOUR],
  ];
  it.each(tables.map(([key, table]) => [...cited(key), table] as const))('%s', (_title, values, table) => {
    expect(asRecord(table)).toEqual(values);
  });

  it(cited('astm_e1332_source')[0], () => {
    const { source_dB, A_weighting_dB, A_weighted_source_dB, constant } = PUBLISHED_TABLES.astm_e1332_source.values;
    expect(asRecord(E1332.SOURCE)).toEqual(source_dB);
    expect(asRecord(E1332.A_WEIGHTING)).toEqual(A_weighting_dB);
    expect(E1332.SOURCE_LEVEL_DBA).toBe(constant);
    E1332.SOURCE.forEach(([f, level], i) => {
      expect(level + E1332.A_WEIGHTING[i]![1], `${f} Hz`).toBeCloseTo(A_weighted_source_dB[f], 9);
    });
  });

  it(cited('iso717_2_reference_floor_heavy')[0], () => {
    const { 'Ln,r,0,w': Lnw, 'CI,r,0': CI, ...bands } = PUBLISHED_TABLES.iso717_2_reference_floor_heavy.values;
    expect(asRecord(FLOORS.HEAVY_FLOOR)).toEqual(bands);
    expect([FLOORS.HEAVY_FLOOR_LNW_DB, FLOORS.HEAVY_FLOOR_CI_DB]).toEqual([Lnw, CI]);
  });

  it(cited('astm_e2179_reference_floor')[0], () => {
    const { IIC, ...bands } = PUBLISHED_TABLES.astm_e2179_reference_floor.values;
    expect(asRecord(FLOORS.HEAVY_FLOOR)).toEqual(bands);
    expect(FLOORS.HEAVY_FLOOR_IIC).toBe(IIC);
  });

  it(cited('iso717_2_reference_floor_light')[0], () => {
    const { type1, type2, type3, 'Ln,t,r,0,w': Lnw } = PUBLISHED_TABLES.iso717_2_reference_floor_light.values;
    expect([1, 2, 3].map((type) => asRecord(FLOORS.LIGHT_FLOORS[type as 1 | 2 | 3]))).toEqual([type1, type2, type3]);
    expect(FLOORS.LIGHT_FLOORS_LNW_DB).toEqual(Lnw);
  });

  it(cited('iso717_2_reference_covering')[0], () => {
    const { 'dL_r,w': dLw, ...bands } = PUBLISHED_TABLES.iso717_2_reference_covering.values;
    expect(asRecord(FLOORS.REFERENCE_COVERING)).toEqual(bands);
    expect(FLOORS.REFERENCE_COVERING_DLW_DB).toBe(dLw);
  });

  it.each(['third', 'octave'] as const)(`${cited('iec61260_midbands')[0]}: %s`, (width) => {
    const rows = Object.entries(PUBLISHED_TABLES.iec61260_midbands.values[width] as Record<string, number[]>);
    expect(new Set(rows.map(([f]) => Number(f)))).toEqual(new Set(width === 'third' ? THIRD_OCTAVES_HZ : OCTAVES_HZ));
    for (const [nominal, [middle, lower, upper]] of rows) {
      const band = exactBandOf(Number(nominal), width);
      const error = [band.middle_Hz - middle!, band.lower_Hz - lower!, band.upper_Hz - upper!];
      for (const e of error) expect(Math.abs(e), `${nominal} Hz`).toBeLessThanOrEqual(0.5e-5 + 1e-9);
    }
  });

  it.each([
    ['nc_S12_2', 'S12.2'],
    ['nc_beranek', 'Beranek'],
  ] as const)('%s', (key, name) => {
    const { bands, ...curves } = PUBLISHED_TABLES[key].values;
    expect(bands[0]).toBe(NC_TABLES[name].lowestBand_Hz);
    expect(Object.fromEntries(Object.entries(NC_TABLES[name].curves).map(([n, c]) => [`NC-${n}`, c]))).toEqual(curves);
  });

  it(cited('nr_coefficients')[0], () => {
    const { bands, a, b } = PUBLISHED_TABLES.nr_coefficients.values['ISO-R1996'];
    expect(NOISE_RATING.map((r) => [r.band_Hz, r.a_dB, r.b])).toEqual(
      bands.map((f: number, i: number) => [f, a[i], b[i]]),
    );
  });

  it(cited('rc_mark2')[0], () => {
    expect(asRecord(RC_CURVE)).toEqual(PUBLISHED_TABLES.rc_mark2.values.offset_re_RC);
  });

  it.each(['2003', '2023'] as const)('ISO 226:%s, table 1 (from memory, unverified)', (edition) => {
    const { f, alpha_f, L_U, T_f } = PUBLISHED_TABLES[`iso226_${edition}`].values;
    const rows = LOUDNESS_PARAMETERS[edition].map((p) => [p.band_Hz, p.exponent, p.transfer_dB, p.threshold_dB]);
    expect(rows).toEqual(f.map((band: number, i: number) => [band, alpha_f[i], L_U[i], T_f[i]]));
  });

  it(cited('iso389_7_diffuse')[0], () => {
    const { f, diffuse_field_dB, free_field_dB } = PUBLISHED_TABLES.iso389_7_diffuse.values;
    expect(HEARING_THRESHOLD.diffuse).toEqual(f.map((band: number, i: number) => [band, diffuse_field_dB[i]]));
    expect(HEARING_THRESHOLD.free).toEqual(f.map((band: number, i: number) => [band, free_field_dB[i]]));
  });
});

describe('tables agree with each other', () => {
  it('each spectrum of ISO 717-1 is a level spectrum of 0 dB in total, within the rounding of its bands', () => {
    for (const spectra of [ISO_717_1.SPECTRA_THIRD, ISO_717_1.SPECTRA_OCTAVE]) {
      for (const [term, table] of Object.entries(spectra)) {
        expect(Math.abs(energySum_dB(table.map(([, v]) => v))), term).toBeLessThanOrEqual(0.5);
      }
    }
  });

  it('the octave spectra of ISO 717-1 are the sums of their three one-third octaves, within rounding', () => {
    for (const [f, octave] of ISO_717_1.SPECTRA_OCTAVE.Ctr50_5000) {
      const thirds = thirdsOf(f).map((t) => ISO_717_1.SPECTRA_THIRD.Ctr50_5000.find(([band]) => band === t)![1]);
      expect(Math.abs(energySum_dB(thirds) - octave), `${f} Hz`).toBeLessThanOrEqual(1);
    }
  });

  it('the contours of E413 and E989 are the reference curves of ISO 717 where the ranges meet', () => {
    const relative = (table: BandTable) =>
      Object.fromEntries(table.map(([f, v]) => [f, v - table.find(([b]) => b === 500)![1]]));
    const { 100: _, ...from125 } = relative(ISO_717_1.REFERENCE_THIRD);
    const { 4000: __, ...to3150 } = relative(E413.CONTOUR);
    expect(to3150).toEqual(from125);
    expect(relative(E989.CONTOUR)).toEqual(relative(ISO_717_2.REFERENCE_THIRD));
  });

  it('the free-field threshold of ISO 389-7 is the threshold in ISO 226:2023', () => {
    for (const { band_Hz, threshold_dB } of LOUDNESS_PARAMETERS['2023']) {
      expect(HEARING_THRESHOLD.free.find(([f]) => f === band_Hz)![1]).toBe(threshold_dB);
    }
  });

  it('nominal bands have exact ones, others are refused', () => {
    expect(() => exactBandOf(123)).toThrow('nominal_Hz must be a mid-band frequency of IEC 61260-1 (third), got 123');
    expect(() => exactBandOf(100, 'octave')).toThrow('(octave), got 100');
    expect(() => thirdsOf(100)).toThrow('octave_Hz must be a nominal octave of IEC 61260-1, got 100');
  });
});

/** ANSI S3.5-1997, table 3 with 10 lg(0.2316 f): band levels to 0.1 dB, 160–8000 Hz. */
// biome-ignore format: table
const SPEECH_BANDS: Record<VocalEffort, number[]> = {
  normal: [48.1, 51.1, 52.4, 52.6, 54.3, 54.9, 53.7, 51.0, 48.7, 47.6, 45.8, 44.0, 40.8, 40.2, 39.0, 35.9, 34.2, 33.8],
  raised: [49.5, 50.6, 56.6, 57.2, 58.8, 60.8, 60.4, 59.0, 57.5, 56.5, 54.3, 52.0, 50.0, 48.8, 46.4, 42.1, 39.3, 37.7],
  loud: [51.0, 54.4, 59.2, 62.4, 63.0, 65.5, 67.2, 66.7, 65.8, 65.1, 63.4, 61.0, 58.6, 56.8, 55.1, 49.0, 45.5, 44.1],
  shout: [46.5, 53.3, 60.1, 65.1, 67.1, 69.9, 72.9, 74.1, 75.0, 74.2, 73.3, 71.0, 68.4, 66.8, 64.1, 58.9, 55.1, 53.4],
};

describe('speech', () => {
  it.each(Object.keys(SPEECH_BANDS) as VocalEffort[])('ANSI S3.5-1997 table 3: band levels of %s speech', (effort) => {
    const levels = speechBandLevels(effort);
    expect(levels.map(([f]) => f)).toEqual(THIRD_OCTAVES_HZ.filter((f) => f >= 160 && f <= 8000));
    levels.forEach(([f, level], i) => {
      expect(Math.abs(level - SPEECH_BANDS[effort][i]!), `${f} Hz`).toBeLessThanOrEqual(0.05 + 1e-9);
    });
    expect(SPEECH_SPECTRUM_LEVEL[effort]).toHaveLength(18);
  });
});
