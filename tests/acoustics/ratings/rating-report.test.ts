import { describe, expect, it } from 'vitest';
import { ratingReport } from '#src/acoustics/ratings/rating-report.ts';
import { HEAVY_FLOOR } from '#src/acoustics/standards/iso-717-2-reference-floors.ts';
import { bandsOf, valuesOf } from '#src/acoustics/standards/table.ts';
import { PUBLISHED_CASES } from '../../published/ratings-cases.ts';
import { asSpectrum } from './as-spectrum.ts';

const valuesByName = (lines: ReturnType<typeof ratingReport>) =>
  Object.fromEntries(lines.map((l) => [l.name, l.value]));
const C2 = asSpectrum(PUBLISHED_CASES.find((c) => c.id === 'iso717-1-C2')!.input as Record<string, number>);

describe('the report of all ratings', () => {
  it('ISO 717-1 Annex C, table C.2: every airborne rating, with how it came about', () => {
    const lines = ratingReport('R', C2);
    // Only what the standard prints is judged here.
    expect(valuesByName(lines)).toMatchObject({ Rw: 30, C: -2, 'C,50-5000': -2, Ctr: -3, 'Ctr,50-5000': -4 });
    expect(lines.find((l) => l.name === 'Rw')!.detail).toBe(
      'deficiencies 31.8 in all, 8.5 at 3150 Hz; the sum governs',
    );
    expect(lines.every((l) => l.standard !== '' && l.detail !== '')).toBe(true);
  });

  it('the heavy reference floor: IIC 28, held by the single band, and Ln,w 78', () => {
    const lines = ratingReport('Ln', { bands_Hz: bandsOf(HEAVY_FLOOR), values_dB: valuesOf(HEAVY_FLOOR) });
    expect(valuesByName(lines)).toEqual({ IIC: 28, 'Ln,w': 78, CI: -11, 'CI,50-2500': NaN });
    expect(lines[0]!.detail).toContain('the single band governs');
    expect(lines[3]!.detail).toBe('needs 50, 63, 80 Hz');
  });

  it('the reference covering: ΔLw 19', () => {
    const covering = asSpectrum(
      PUBLISHED_CASES.find((c) => c.id === 'iso717-2-ref-covering')!.input as Record<string, number>,
    );
    expect(valuesByName(ratingReport('improvement', covering))).toMatchObject({ ΔLw: 19, 'CI,Δ': -11, ΔLlin: 8 });
  });

  it('a room level in one-third octaves is rated by its octaves', () => {
    const bands_Hz = C2.bands_Hz.filter((f) => f >= 50 && f <= 5000);
    const thirds = { bands_Hz, values_dB: bands_Hz.map(() => 40) };
    const octaves = {
      bands_Hz: [63, 125, 250, 500, 1000, 2000, 4000],
      values_dB: new Array(7).fill(40 + 10 * Math.log10(3)),
    };
    const byThirds = valuesByName(ratingReport('level', thirds));
    const byOctaves = valuesByName(ratingReport('level', octaves));
    expect([byThirds.NC, byThirds.NR, byThirds.RC]).toEqual([byOctaves.NC, byOctaves.NR, byOctaves.RC]);
  });

  it('own case by hand: the RC-40 curve is neutral, its SIL (45 + 40 + 35 + 30)/4 = 37.5 dB', () => {
    const bands_Hz = [16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000];
    const values_dB = [65, 65, 60, 55, 50, 45, 40, 35, 30];
    const lines = ratingReport('level', { bands_Hz, values_dB });
    expect(lines.find((l) => l.name === 'RC')).toMatchObject({
      value: 40,
      detail: 'neutral (N), QAI 0.0',
    });
    expect(lines.find((l) => l.name === 'SIL')).toMatchObject({ value: 37.5 });
    const rumbling = values_dB.map((level_dB, i) => (i < 3 ? level_dB + 12 : level_dB));
    expect(ratingReport('level', { bands_Hz, values_dB: rumbling }).find((l) => l.name === 'RC')!.detail).toBe(
      'rumble (LF), QAI 12.0, objectionable; light structures clearly vibrate',
    );
  });

  it('without the lowest octaves RC is a level alone, and says what its quality needs', () => {
    const lines = ratingReport('level', { bands_Hz: [500, 1000, 2000], values_dB: [40, 40, 40] });
    expect(lines.find((l) => l.name === 'RC')).toMatchObject({
      value: 40,
      detail: 'level only, its quality needs 16, 31.5, 63, 125, 250, 4000 Hz',
    });
    expect(lines.find((l) => l.name === 'SIL')).toMatchObject({ value: NaN, detail: 'needs 4000 Hz' });
  });

  it('noise beyond the curves is marked: NC-70 and NC-15 are the ends of ANSI/ASA S12.2', () => {
    const bands_Hz = [63, 125, 250, 500, 1000, 2000, 4000];
    const NC = (level_dB: number) =>
      ratingReport('level', { bands_Hz, values_dB: bands_Hz.map(() => level_dB) }).find((l) => l.name === 'NC');
    expect(NC(100)).toMatchObject({ value: 70, beyond: 'above', detail: 'above the highest curve' });
    expect(NC(0)).toMatchObject({ value: 15, beyond: 'below', detail: 'below the lowest curve' });
    expect(NC(50)).not.toHaveProperty('beyond');
  });

  it('says that octaves are for the field, and what an STC would need', () => {
    const lines = ratingReport('R', { bands_Hz: [125, 250, 500, 1000, 2000], values_dB: [36, 45, 52, 55, 56] });
    expect(lines.find((l) => l.name === 'Rw')!.detail).toContain('field measurements only');
    expect(lines.find((l) => l.name === 'STC')!.detail).toBe('needs 160, 200, 315, 400, 630, 800, … Hz');
  });
});
