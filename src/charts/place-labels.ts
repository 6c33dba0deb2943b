/** Keeps written labels apart: along a line by moving them, above a chart by stacking them in rows. */

/**
 * Moves label centres as little as needed so that neighbours stand `gap` apart, inside `low`…`high`.
 *
 * @param wanted Where each label would like to stand, any order. Not changed.
 * @returns Places in the order of `wanted`. With too many labels for the space they share it evenly.
 */
export function spreadLabels(
  wanted: readonly number[],
  { gap, low, high }: { gap: number; low: number; high: number },
): number[] {
  const n = wanted.length;
  const spacing = n > 1 ? Math.min(gap, (high - low) / (n - 1)) : gap;
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
  // Blocks of touching labels; each block sits at the mean of what its members want.
  const blocks: { members: number[]; start: number }[] = [];
  for (const i of order) {
    let block = { members: [i], start: wanted[i]! };
    for (
      let last = blocks.at(-1);
      last && last.start + last.members.length * spacing > block.start;
      last = blocks.at(-1)
    ) {
      const members = [...last.members, ...block.members];
      block = { members, start: startOf(members, wanted, spacing) };
      blocks.pop();
    }
    block.start = Math.max(low, Math.min(high - (block.members.length - 1) * spacing, block.start));
    blocks.push(block);
  }
  return settle(blocks, n, { spacing, low, high });
}

function startOf(members: readonly number[], wanted: readonly number[], spacing: number): number {
  return members.reduce((sum, i, k) => sum + wanted[i]! - k * spacing, 0) / members.length;
}

/** Clamping to the ends can push blocks into each other: two passes set them apart again. */
function settle(
  blocks: readonly { members: number[]; start: number }[],
  n: number,
  { spacing, low, high }: { spacing: number; low: number; high: number },
): number[] {
  const flat = blocks.flatMap((b) => b.members.map((i, k) => ({ i, y: b.start + k * spacing })));
  flat.forEach((label, k) => {
    label.y = Math.max(label.y, k ? flat[k - 1]!.y + spacing : low);
  });
  for (let k = flat.length - 1; k >= 0; k--)
    flat[k]!.y = Math.min(flat[k]!.y, k < flat.length - 1 ? flat[k + 1]!.y - spacing : high);
  const places = new Array<number>(n);
  for (const { i, y } of flat) places[i] = y;
  return places;
}

/**
 * Puts labels into as few rows as they need so that none overlap in a row.
 *
 * @param spans Left edge and width of each label. Not changed.
 * @returns The row of each label, 0 first.
 */
export function labelRows(spans: readonly { left: number; width: number }[], gap: number): number[] {
  const ends: number[] = [];
  const rows = new Array<number>(spans.length);
  const order = spans.map((_, i) => i).sort((a, b) => spans[a]!.left - spans[b]!.left);
  for (const i of order) {
    const { left, width } = spans[i]!;
    let row = ends.findIndex((end) => end + gap <= left);
    if (row < 0) row = ends.length;
    ends[row] = left + width;
    rows[i] = row;
  }
  return rows;
}
