/** Gives numbers in [0, 1), as Math.random does; passed in, so that tests and replays are repeatable. */
export type RandomSource = () => number;

const ALPHABET = 'abcdefghijkmnpqrstuvwxyz23456789';
const LENGTH = 8;

/** A short id that is not among `taken`: 8 of 32 letters and digits that are hard to mix up, first a letter. */
export function freshId(random: RandomSource, taken: Iterable<string> = []): string {
  const used = new Set(taken);
  for (;;) {
    let id = '';
    for (let i = 0; i < LENGTH; i++) id += ALPHABET[Math.floor(random() * (i === 0 ? 24 : 32))]!;
    if (!used.has(id)) return id;
  }
}
