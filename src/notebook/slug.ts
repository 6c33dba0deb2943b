/** A text as lower-case words with hyphens between: without accents, parted at everything that matches `parting`. */
export function slug(text: string, parting: RegExp, longest: number): string {
  return text
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(parting, '-')
    .replace(/^-+/, '')
    .slice(0, longest)
    .replace(/-+$/, '');
}
