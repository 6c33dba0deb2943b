import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { soundBelow } from '../../src/commands/predict-below.ts';
import type { LevelSpectrum } from '../../src/commands/read-levels.ts';
import { root, runCommand } from './run-command.ts';

const STACK = 'demo-notebooks/one-stack.json';
const SOURCE = 'demo-notebooks/percussion-club-levels.csv';
const BACKGROUND = 'demo-notebooks/reading-room-background.csv';

/** 20 m²; what it is made of does not matter here. */
const floor = { length_m: 5, width_m: 4, layers: [] } as Construction;
const room = { receivingVolume_m3: 50, reverberationTime_s: 0.5 };

function levels(file: string, bands: Readonly<Record<number, number>>): LevelSpectrum {
  return { file, bands_Hz: Object.keys(bands).map(Number), values_dB: Object.values(bands), notices: [] };
}

describe('sound in the room below', () => {
  const source = levels('drums.csv', { 100: 90, 1000: 60, 8000: 50 });
  const prediction = { bands_Hz: [100, 1000, 1250], R_dB: [30, 65, 65] };

  test('own case by hand: A = 0.16 · 50 / 0.5 = 16 m², S/A = 1.25, so 0.97 dB more than L1 − R', () => {
    const sound = soundBelow(floor, prediction, { room, source });
    expect(sound.absorptionArea_m2).toBeCloseTo(16, 12);
    expect(sound.below_dB[0]).toBeCloseTo(60.969, 3);
    expect(sound.below_dB[1]).toBeCloseTo(-4.031, 3);
    // ISO 389-7:2019, table 1 (from memory): 26.5 dB at 100 Hz, 0.8 dB at 1 kHz.
    expect(sound.threshold_dB.slice(0, 2)).toEqual([26.5, 0.8]);
    expect(sound.excess_dB[0]).toBeCloseTo(34.469, 3);
    expect(sound.audible).toEqual(['heard', 'under threshold', null]);
    // ISO 226: at 1 kHz the loudness level is the level.
    expect(sound.loudness_phon[1]).toBeCloseTo(-4.03, 1);
  });

  test('says why a band has no value and which bands of the file are not predicted', () => {
    const { gaps, notices, below_dB } = soundBelow(floor, prediction, { room, source });
    expect(below_dB[2]).toBeNaN();
    expect(gaps).toEqual([{ bands_Hz: [1250], values: 'below_dB', reason: 'drums.csv has no level there' }]);
    expect(notices).toEqual(['drums.csv: nothing is predicted at 8000 Hz; these bands are left out']);
  });

  test('a background hides what it covers; where it has no level nothing is said', () => {
    const loud = soundBelow(floor, prediction, { room, source, background: levels('fan.csv', { 100: 70 }) });
    expect(loud.audible).toEqual(['under background', null, null]);
    expect(loud.excess_dB[0]).toBeCloseTo(-9.031, 3);
    expect(loud.gaps.at(-1)).toEqual({ bands_Hz: [1000], values: 'excess_dB', reason: 'fan.csv has no level there' });
  });

  test('rates the level below, and says what a criterion lacks', () => {
    const { ratings } = soundBelow(floor, prediction, { room, source });
    const LA = ratings.find(({ name }) => name === 'LA')!;
    // 60.97 − 19.1 dB (IEC 61672-1 table 3, 100 Hz, ± 0.05); the kilohertz adds nothing that can be seen.
    expect(Math.abs(LA.value - 41.87)).toBeLessThanOrEqual(0.1);
    expect(ratings.find(({ name }) => name === 'NC')).toMatchObject({
      value: Number.NaN,
      detail: expect.stringContaining('needs '),
    });
  });
});

const run = (args: readonly string[], input?: string) => runCommand('predict', args, input);

describe('npm run predict --source', { timeout: 60_000 }, () => {
  const asked = ['--stack', STACK, '--room', '50', '--source', SOURCE, '--background', BACKGROUND];

  test('--json: L1 − R + 10 lg(S/A) in every band, ratings and audibility beside it', () => {
    const { code, out, err } = run([...asked, '--json']);
    expect([code, err]).toEqual([0, '']);
    const { R_dB, soundBelow: sound } = JSON.parse(out).scenarios[0].stacks[0];
    // S 10 m², A 16 m².
    const gain_dB = 10 * Math.log10(10 / 16);
    sound.below_dB.forEach((level: number, i: number) => {
      expect(level).toBeCloseTo(sound.above_dB[i] - R_dB[i] + gain_dB, 9);
    });
    expect(sound).toMatchObject({ source: 'percussion-club-levels.csv', background: 'reading-room-background.csv' });
    expect(sound.ratings.map((r: { name: string }) => r.name)).toEqual(['LA', 'NC', 'NC (1957)', 'NR', 'RC', 'SIL']);
    expect(new Set(sound.audible)).toEqual(new Set(['heard', 'under background']));
  });

  test('the table shows levels and ratings, the CSV has them in columns', () => {
    const table = run(asked).out;
    expect(table).toContain('In the room below, with percussion-club-levels.csv above:');
    expect(table).toMatch(/^Hz +L above +L below +phon +threshold +background +over +heard$/m);
    const [head, first] = run([...asked, '--csv']).out.split('\r\n');
    expect(head).toContain(
      'above_dB,below_dB,loudness_phon,threshold_dB,background_dB,excess_dB,audible,below_LA,below_NC',
    );
    const cells = first!.replace(/"[^"]*"/g, 'quoted').split(',');
    expect(cells).toHaveLength(head!.split(',').length);
    expect(cells[head!.split(',').indexOf('above_dB')]).toBe('88');
  });

  test('bands without a level above are null with a reason', () => {
    const { out } = run([...asked, '--from', '31.5', '--json']);
    const { soundBelow: sound } = JSON.parse(out).scenarios[0].stacks[0];
    expect(sound.below_dB.slice(0, 2)).toEqual([null, null]);
    expect(sound.audible[0]).toBeNull();
    expect(sound.gaps[0]).toMatchObject({
      bands_Hz: [31.5, 40],
      reason: 'percussion-club-levels.csv has no level there',
    });
  });

  test('a source may come by standard input, in octaves', () => {
    const octaves = 'f,level\n63,95\n125,95\n250,94\n500,93\n1000,92\n2000,90\n4000,86\n';
    const { code, out } = run(['--stack', STACK, '--room', '50', '--source', '-'], octaves);
    expect(code).toBe(0);
    expect(out).toContain('Note: octaves are spread over their one-third octaves');
  });

  test('every file that is wrong is named with what is wrong in it', () => {
    const { code, out, err } = run(['--stack', 'nowhere.json', '--room', '50', '--source', STACK, '--background', '-']);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/^nowhere\.json cannot be read: ENOENT/);
    expect(err).toMatch(/^one-stack\.json: Expected a heading/m);
    expect(err).toMatch(/^standard input: Expected a heading line and bands, got nothing/m);
  });

  test('without --room it says what is missing', () => {
    const { code, err } = run(['--stack', STACK, '--source', SOURCE]);
    expect(code).toBe(2);
    expect(err).toContain('Expected --room with --source, got no --room');
  });
});

test.each([SOURCE, BACKGROUND])('%s says that it is invented', (file) => {
  expect(readFileSync(`${root}/${file}`, 'utf8')).toMatch(/^# Invented, nothing was measured/);
});
