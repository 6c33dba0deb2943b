const LONGEST = 80;

/** A file name that every system accepts, made of what people call things. */
export function fileName(parts: readonly string[], extension: string): string {
  const stem = parts
    .join(' ')
    .normalize('NFKC')
    .replace(/[\p{C}<>:"/\\|?*.]+/gu, ' ')
    .trim()
    .replace(/\s+/g, '-')
    .slice(0, LONGEST);
  return `${stem || 'picture'}.${extension}`;
}
