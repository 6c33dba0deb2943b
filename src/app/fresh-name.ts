/** A name that is not taken: "Slab on top 2", "Slab on top 3", … */
export function freshName(from: string, taken: readonly string[]): string {
  const stem = from.replace(/ \d+$/, '');
  for (let n = 2; ; n++) if (!taken.includes(`${stem} ${n}`)) return `${stem} ${n}`;
}
