import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { FieldValues } from '#src/acoustics/ratings/field-values.ts';
import { roomBelow } from '../../src/commands/room-options.ts';
import { northWall } from '../notebook/north-wall.ts';
import { runCommand } from './run-command.ts';

const DEMO = 'demo-notebooks/practice-room-above-library.slabspring.json';
const STACK = 'demo-notebooks/one-stack.json';

const run = (...args: string[]) => runCommand('predict', args);

test.each([
  ['50', undefined, { receivingVolume_m3: 50, reverberationTime_s: 0.5 }],
  ['50 m3', '0.8 s', { receivingVolume_m3: 50, reverberationTime_s: 0.8 }],
  ['1000 ft3', '800 ms', { receivingVolume_m3: 28.316846592, reverberationTime_s: 0.8 }],
])('--room %s --reverberation %s is understood', (room, time, expected) => {
  const found = roomBelow(room, time) as typeof expected;
  expect(found.receivingVolume_m3).toBeCloseTo(expected.receivingVolume_m3, 9);
  expect(found.reverberationTime_s).toBeCloseTo(expected.reverberationTime_s, 12);
});

test.each([
  [undefined, '1', 'Expected --room with --reverberation, got no --room.'],
  ['big', undefined, '--room: Expected a volume, such as 50 m³; got "big".'],
  ['0', undefined, '--room must be more than 0 m³, got 0.'],
  ['50', '-1', '--reverberation must be more than 0 s, got -1.'],
])('--room %s --reverberation %s is refused in words', (room, time, message) => {
  expect(roomBelow(room, time)).toBe(message);
});

test('without the options nothing is asked for', () => {
  expect(roomBelow(undefined, undefined)).toBeUndefined();
});

describe('npm run predict --room', { timeout: 60_000 }, () => {
  const field = (...args: string[]) => {
    const { out } = run(DEMO, '--json', ...args);
    return JSON.parse(out).scenarios[1].stacks[0] as { field: FieldValues; ratings: Record<string, number> };
  };

  test('prints field values that follow the standards for that room: what does not depend on it stays', () => {
    const { field: small, ratings } = field('--room', '30');
    const { field: tenfold } = field('--room', '300', '--reverberation', '0.5');
    expect(small.ASTC).toBe(ratings.STC);
    expect(small.apparentRw).toBe(ratings.Rw);
    expect(small.apparentLnw).toBe(ratings.Lnw);
    // D_nT grows by 10 lg of the volume, L'_nT falls by it: exactly 10 dB, so the ratings move by exactly 10.
    expect(tenfold.DnTw - small.DnTw).toBe(10);
    expect(tenfold.LnTw - small.LnTw).toBe(-10);
    expect(tenfold.ASTC).toBe(small.ASTC);
    expect(small.limits).toEqual([]);
    expect(tenfold.limits[0]).toContain('NIC only');
  });

  test('a longer reverberation costs noise reduction, but no normalised value', () => {
    const { field: dry } = field('--room', '50', '--reverberation', '0.5');
    const { field: live } = field('--room', '50', '--reverberation', '5');
    expect(live.NIC - dry.NIC).toBe(-10);
    expect(live.ISR).toBeLessThan(dry.ISR);
    expect(live.DnTw).toBe(dry.DnTw);
  });

  test('the table and the CSV carry them, for a single stack too', () => {
    const table = run('--stack', STACK, '--room', '20');
    expect(table.out).toContain('As it would be measured in the building');
    expect(table.out).toContain('NNIC and ASTC need a receiving room of at least 25 m³');
    const head = run(DEMO, '--csv', '--room', '20').out.split('\r\n')[0]!;
    expect(head).toContain('field_ASTC,field_NNIC');
    expect(run(DEMO, '--csv').out).not.toContain('field_');
  });

  test('without flanking the table says so, and which way a building differs', () => {
    const { out } = run('--stack', STACK, '--room', '60');
    expect(out).toContain('As it would be measured in the building if nothing went around the floor:');
    expect(out).toContain('No flanking is stated, so that these are limits');
    expect(out).toContain('L′n,w and L′nT,w are at least, all others at most this');
    expect(out).not.toContain('with the flanking of the notebook');
  });

  test('with a limit curve it says that impact values are of the floor alone, with walls it need not', () => {
    const { out } = run(DEMO, '--room', '60');
    expect(out).toContain('with the flanking of the notebook for airborne sound:');
    expect(out).toMatch(/nothing about impact sound: AIIC, NISR, ISR, L′n,w and L′nT,w are those of the floor alone/);
    const notebook = JSON.parse(readFileSync(DEMO, 'utf8'));
    notebook.flanking = { kind: 'by the walls', R500_dB: 58, slope_dB_per_octave: 3, walls: [northWall(0.24)] };
    const walled = runCommand('predict', ['-', '--room', '60'], JSON.stringify(notebook)).out;
    expect(walled).toContain('with the flanking of the notebook:');
    expect(walled).not.toContain('those of the floor alone');
  });

  test.each([
    [['--room', '-5'], '--room must be more than 0 m³, got -5.'],
    [['--room', '60', '--reverberation', '-1'], '--reverberation must be more than 0 s, got -1.'],
    [['--room'], 'Expected a value behind --room, got none.'],
    [['--room', '--json'], 'Expected a value behind --room, got --json.'],
    [['--json=3'], 'Expected nothing behind --json, got "3".'],
    [['--romo', '5'], '--background, got --romo.'],
  ])('%j is refused in one sentence and with how to call it, not with all options', (args, sentence) => {
    const { code, err, out } = run('--stack', STACK, ...args);
    expect([code, out]).toEqual([2, '']);
    expect(err.split('\n')[0]).toContain(sentence);
    expect(err).toContain('--help');
    expect(err.split('\n').length).toBeLessThan(8);
  });

  test('wrong use ends with code 2 and says why', () => {
    const { code, err, out } = run(DEMO, '--reverberation', '1');
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('got no --room');
  });
});
