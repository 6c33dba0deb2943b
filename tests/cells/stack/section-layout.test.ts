import { expect, test } from 'vitest';
import { DIMENSION_WIDTH_px } from '#cells/stack/section/section-drawing.ts';
import { layOut } from '#cells/stack/section/section-layout.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { practiceRoom } from '../../browser/practice-room.ts';

const room = practiceRoom();
/** Joist floors, 0.27 to 0.32 m high. */
const floors = room.scenarios.map(({ id }) => resolveStack(room, id, 'floor'));
const many = (count: number): Construction[] => Array.from({ length: count }, (_, i) => floors[i % floors.length]!);
const place = (count: number, room_px: number) => layOut(many(count), count, room_px);

test('one or two floors stand beside each other, as large as drawings become', () => {
  expect(place(1, 928)).toMatchObject({ columns: 1, scale: 420 });
  expect(place(2, 928)).toMatchObject({ columns: 2, scale: 420 });
});

test('four floors take two rows where that makes them much larger: on a wide page, on paper, on a phone', () => {
  expect(place(4, 928)).toMatchObject({ columns: 2, scale: 420 });
  expect(place(4, 680).columns).toBe(2);
  expect(place(4, 680).scale).toBeGreaterThan(300);
  expect(place(4, 328).columns).toBe(1);
});

test.each([1, 2, 3, 4, 5, 8, 20])('%d floors fit into the room, with all their joists', (count) => {
  for (const room_px of [328, 680, 752, 928]) {
    const { columns, scale, width_m } = place(count, room_px);
    expect(scale, `${room_px} px`).toBeGreaterThan(0);
    expect(columns * (width_m * scale + DIMENSION_WIDTH_px) + (columns - 1) * 16).toBeLessThanOrEqual(room_px + 1e-9);
    // Full rows: one column fewer would need another row.
    expect(Math.ceil(count / Math.ceil(count / columns))).toBe(columns);
  }
});

test('many floors keep to many columns: rows without end would help nobody', () => {
  expect(place(20, 928).columns).toBe(5);
});

test('wherever there is room for more of the floor it is drawn', () => {
  expect(place(1, 928).width_m).toBe(1.6);
});
