const LONGEST = 80;

/** A file name that every system accepts, made of what people call things. */
export function fileName(parts: readonly string[], extension: string): string {
  const stem = parts
    .join(' ')
    .normalize('NFKC')
    .replace(/[\p{C}<>:"/\\|?*.]+/gu, ' ')
    .trim()
    .replace(/\s+/g, '-');
  return `${shortened(stem) || 'picture'}.${extension}`;
}

/** After the last whole word that fits; in the middle of one only where it is very long. */
function shortened(stem: string): string {
  if (stem.length <= LONGEST) return stem;
  const cut = stem.slice(0, LONGEST + 1).lastIndexOf('-');
  return stem.slice(0, cut > LONGEST / 2 ? cut : LONGEST);
}
