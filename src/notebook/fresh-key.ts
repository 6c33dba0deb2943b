import { isForbiddenKey } from './plain-data.ts';
import { slug } from './slug.ts';

const LONGEST = 48;

/** A parameter key made of a label: "slab thickness" → "slab-thickness", with a number behind it if that is taken. */
export function freshKey(label: string, taken: readonly string[]): string {
  const stem = slug(label, /[^a-z0-9]+/g, LONGEST).replace(/^[^a-z]+/, '') || 'value';
  for (let n = 1; ; n++) {
    const key = n === 1 ? stem : `${stem}-${n}`;
    if (!taken.includes(key) && !isForbiddenKey(key)) return key;
  }
}
