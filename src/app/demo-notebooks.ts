/** The notebooks that come with the page: files of their own, fetched when one is opened. */
const FILES = import.meta.glob<string>('../../demo-notebooks/*.slabspring.json', {
  query: '?url',
  import: 'default',
  eager: true,
});

export interface DemoNotebook {
  /** Of the file in the project, which its title is kept under (`demo-titles.ts`). */
  readonly path: string;
  readonly url: string;
}

/** In the order of their file names; the first one opens on first start. */
export const DEMO_NOTEBOOKS: readonly DemoNotebook[] = Object.entries(FILES)
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([path, url]) => ({ path, url }));
