const LONGEST = 48;

/** A parameter key made of a label: "slab thickness" → "slab-thickness", with a number behind it if that is taken. */
export function freshKey(label: string, taken: readonly string[]): string {
  const words = label
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+|-+$/g, '')
    .slice(0, LONGEST);
  const stem = words || 'value';
  for (let n = 1; ; n++) {
    const key = n === 1 ? stem : `${stem}-${n}`;
    if (!taken.includes(key)) return key;
  }
}
