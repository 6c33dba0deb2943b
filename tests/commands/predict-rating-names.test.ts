import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { RATING_ROWS, rowWords } from '#cells/ratings/rating-rows.ts';
import { countsWalls } from '#cells/shared/rated-result.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { splitCells } from '#src/quantities/split-cells.ts';
import type { NotebookPrediction, StackPrediction } from '../../src/commands/predict-notebook.ts';
import { northWall } from '../notebook/north-wall.ts';
import { runCommand } from './run-command.ts';

const demo = JSON.parse(
  readFileSync(new URL('../../demo-notebooks/practice-room-above-library.slabspring.json', import.meta.url), 'utf8'),
) as Notebook;

const LIMIT = { R500_dB: 58, slope_dB_per_octave: 3 };
const AROUND = [
  ['nothing', { kind: 'none', ...LIMIT }, ['STC', 'OITC', 'Rw', 'IIC', 'Ln,w']],
  ['a limit', { kind: 'ordinary', ...LIMIT }, ['ASTC', 'OITC with walls', 'R′w', 'IIC', 'Ln,w']],
  [
    'walls one by one',
    { kind: 'by the walls', ...LIMIT, walls: [northWall(0.24)] },
    ['ASTC', 'OITC with walls', 'R′w', 'AIIC', 'L′n,w'],
  ],
  ['by the walls, but none', { kind: 'by the walls', ...LIMIT, walls: [] }, ['STC', 'OITC', 'Rw', 'IIC', 'Ln,w']],
] as const;

/** The expected names are those of ASTM E336 and E1007, ISO 16283-1 and -2. */
describe.each(AROUND)('npm run predict with %s around the floor', { timeout: 60_000 }, (_, flanking, names) => {
  const notebook = { ...demo, flanking } as Notebook;
  const run = (...args: string[]) => runCommand('predict', ['-', ...args], JSON.stringify(notebook)).out;
  const [STC, OITC, Rw, IIC, Lnw] = names;

  test('the tables head ratings and gains with the names of what is counted', () => {
    const table = run('--gains');
    const head = (words: readonly string[]) => words.join(' +').replaceAll(/[()]/g, '\\$&');
    expect(table).toMatch(
      new RegExp(`^ +${head([STC, OITC, `${Rw}(C;Ctr)`, IIC, `${Lnw}(CI)`, 'kg/m²', 'mm'])}$`, 'm'),
    );
    expect(table).toMatch(new RegExp(`^ +${head([...names, 'kg/m²', 'mm'])}$`, 'm'));
  });

  test('JSON and CSV keep their keys and say the names beside them', () => {
    const [{ ratings, ratingNames, wallsCounted }] = (JSON.parse(run('--json')) as NotebookPrediction).scenarios[0]!
      .stacks as [StackPrediction];
    expect(ratingNames).toEqual({ STC, OITC, Rw, IIC, Lnw });
    for (const key of Object.keys(ratingNames)) expect(ratings).toHaveProperty(key, expect.any(Number));
    const [columns, ...lines] = splitCells(run('--csv')).rows.map(({ cells }) => cells);
    expect(columns).toEqual(expect.arrayContaining(Object.keys(ratings)));
    const said = new Set(lines.map((line) => line[columns!.indexOf('walls_in_ratings')]));
    const sounds = [...(STC === 'ASTC' ? ['airborne'] : []), ...(IIC === 'AIIC' ? ['impact'] : [])];
    expect(wallsCounted).toEqual(sounds);
    expect([...said]).toEqual([sounds.join(' and ')]);
  });

  test('they are the names that the page gives the same rows', () => {
    const onPage = (key: string) => {
      const row = RATING_ROWS.find((r) => r.key === key)!;
      const sound = row.group === 'Airborne' ? 'airborne' : 'impact';
      return rowWords(row, countsWalls(notebook, sound, false)).label.replace(/ \(.*/, '');
    };
    expect(['stc', 'oitc', 'rw', 'iic', 'lnw'].map(onPage)).toEqual(names);
  });
});
