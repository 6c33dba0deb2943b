/** The notebooks that come with the page: files of their own, fetched when one is opened. */
const FILES = import.meta.glob<string>('../../demo-notebooks/*.slabspring.json', {
  query: '?url',
  import: 'default',
  eager: true,
});

export interface DemoNotebook {
  readonly url: string;
  /** Made from the file's name: "practice-room" → "Practice room". */
  readonly name: string;
}

/** In the order of their file names; the first one opens on first start. */
export const DEMO_NOTEBOOKS: readonly DemoNotebook[] = Object.entries(FILES)
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([path, url]) => ({ url, name: nameOf(path) }));

function nameOf(path: string): string {
  const stem = path.replace(/^.*\//, '').replace('.slabspring.json', '').replace(/^\d+-/, '').replaceAll('-', ' ');
  return stem.charAt(0).toUpperCase() + stem.slice(1);
}
