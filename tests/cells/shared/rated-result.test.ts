import { describe, expect, test } from 'vitest';
import { liveValue } from '#cells/commentary/live-value.ts';
import type { ResultsView } from '#cells/contract.ts';
import { countedNote } from '#cells/ratings/counted-note.ts';
import { countedWords, ratedResult } from '#cells/shared/rated-result.ts';
import { predict } from '#src/acoustics/predict.ts';
import { moveCell } from '#src/notebook/edits/move-cell.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook, RatingsCell, StackLeak } from '#src/notebook/types.ts';
import { practiceRoom } from '../../browser/practice-room.ts';
import { northWall } from '../../notebook/north-wall.ts';

const WEAK = { kind: 'own', R500_dB: 45, slope_dB_per_octave: 3 } as const;
const NONE = { ...WEAK, kind: 'none' } as const;
const WALLS = { ...WEAK, kind: 'by the walls', walls: [northWall(0.05)] } as const;

const rated = (id: string, floorAlone?: boolean): RatingsCell => ({
  ...{ kind: 'ratings', id, folded: false, title: id, stack: 'floor' },
  ...(floorAlone !== undefined && { floorAlone }),
});

const room = (cells: readonly RatingsCell[], flanking: Notebook['flanking'] = WEAK) =>
  practiceRoom({ cells, flanking });

const resultsOf = (notebook: Notebook): ResultsView => ({
  of: (scenario, stack) => ({ state: 'ready', prediction: predict(resolveStack(notebook, scenario, stack)) }),
});

function stc(notebook: Notebook): number {
  return ratedResult(notebook, resultsOf(notebook), 'both', 'floor').prediction!.ratings.STC;
}

const text = (notebook: Notebook, destination: string) => liveValue(notebook, resultsOf(notebook), destination, '');

const together = room([rated('a')]);
const alone = room([rated('a', true)]);
const laboratory = stc(room([], NONE));

describe('numbers outside of a cell of ratings', () => {
  test('count what it counts: the walls, or the floor alone', () => {
    expect(stc(alone)).toBe(laboratory);
    expect(stc(together)).toBeLessThan(laboratory);
    expect(stc(room([]))).toBe(stc(together));
    expect(stc(room([rated('a', false)]))).toBe(stc(together));
  });

  test('go by the first of several, and by none of another floor', () => {
    const both = room([rated('a', true), rated('b')]);
    expect(stc(both)).toBe(laboratory);
    expect(stc(moveCell(both, 'a', 1))).toBe(stc(together));
    expect(stc(room([{ ...rated('other', true), stack: 'elsewhere' }, rated('a')]))).toBe(stc(together));
  });

  test('in a text follow, say so, and take their differences alike', () => {
    expect(text(alone, 'value:both/floor/stc')).toMatchObject({
      text: String(laboratory),
      about: 'STC of Floor of the practice room, Both, floor alone',
    });
    expect(text(together, 'value:both/floor/stc').about).toMatch(/, floor and walls together$/);
    const base = ratedResult(alone, resultsOf(alone), 'base', 'floor').prediction!.ratings.STC;
    expect(text(alone, 'value:both/floor/stc-gain')).toMatchObject({
      text: `+${laboratory - base}`,
      about: 'STC of Floor of the practice room, Both, against the reference, floor alone',
    });
  });

  test('say nothing of walls where there are none, or where it is a mass', () => {
    expect(countedWords(room([rated('a', true)], NONE), 'floor', 'airborne')).toBeUndefined();
    expect(text(room([], NONE), 'value:floor/stc').about).toBe('STC of Floor of the practice room, Slab on top');
    expect(text(alone, 'value:floor/surface-mass').about).toMatch(/Slab on top$/);
  });

  test('are called what the standards call them with the walls in them', () => {
    // ASTM E336-23 and ISO 16283-1:2014 name the airborne ones, ASTM E1007 and ISO 16283-2:2020 the impact ones.
    const byWalls = room([], WALLS);
    const names = (notebook: Notebook) =>
      ['stc', 'rw', 'iic', 'lnw'].map((key) => text(notebook, `value:floor/${key}-name`).text);
    expect(names(byWalls)).toEqual(['ASTC', 'R′w', 'AIIC', 'L′n,w']);
    expect(names(together)).toEqual(['ASTC', 'R′w', 'IIC', 'Ln,w']);
    for (const notebook of [alone, room([], NONE)]) expect(names(notebook)).toEqual(['STC', 'Rw', 'IIC', 'Ln,w']);
    expect(text(together, 'value:both/floor/stc').about).toMatch(/^ASTC of /);
    expect(text(together, 'value:floor/surface-mass-name').state).toBe('missing');
  });

  test('count walls for footsteps only where they are described one by one', () => {
    expect(countedWords(together, 'floor', 'impact')).toBe('floor alone');
    expect(countedWords(room([], WALLS), 'floor', 'impact')).toBe('floor and walls together');
    expect(text(together, 'value:floor/iic').about).toMatch(/, floor alone$/);
  });
});

describe('beside the switch', () => {
  const note = (notebook: Notebook, id: string) =>
    countedNote(notebook, notebook.cells.find((c) => c.id === id) as RatingsCell);

  test('stands that texts and sliders follow', () => {
    expect(note(alone, 'a')).toMatch(/left out here, in texts and beside the sliders; curves and paths count it\.$/);
    expect(note(together, 'a')).not.toMatch(/beside the sliders/);
  });

  test.each([true, false])('stands that they go by the first ratings, where these differ: %s', (floorAlone) => {
    const notebook = room([rated('a', floorAlone), rated('b', !floorAlone), rated('c', floorAlone)]);
    expect(note(notebook, 'b')).toMatch(/Texts and the figures beside the sliders go by the first ratings/);
    for (const id of ['a', 'c']) expect(note(notebook, id)).not.toMatch(/go by the first ratings/);
  });

  test('stands which gaps stay in the floor alone, those of shown scenarios that are open', () => {
    const gap = {
      kind: 'slit',
      id: 'gap',
      name: 'gap at the wall',
      width_m: 0.001,
      length_m: 4,
      depth_m: 0.3,
    } as const;
    const pipe = { kind: 'hole', id: 'pipe', name: 'pipe', diameter_m: 0.02, depth_m: 0.3 } as const;
    const leaky = (notebook: Notebook, ...leaks: readonly StackLeak[]): Notebook => ({
      ...notebook,
      stacks: notebook.stacks.map((stack) => ({ ...stack, leaks })),
    });
    const none = room([rated('a')], NONE);
    for (const notebook of [alone, together, none]) {
      expect(note(leaky(notebook, gap, pipe), 'a')).toMatch(
        /Airborne sound through its gaps is counted too: gap at the wall, pipe\./,
      );
      expect(note(leaky(notebook, { ...gap, width_m: 0 }, pipe), 'a')).toMatch(/is counted too: pipe\./);
      expect(note(notebook, 'a')).not.toMatch(/gaps/);
    }
    expect(note(leaky(alone, gap), 'a')).toMatch(
      /^The floor alone, as in a laboratory\. Airborne sound through its gaps/,
    );
  });
});
