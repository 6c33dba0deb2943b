import type { DemoNotebook } from './demo-notebooks.ts';

/** Read from the files when the page is built: the titles alone, not what else is in them. */
const TITLES = import.meta.glob<string>('../../demo-notebooks/*.slabspring.json', { import: 'title', eager: true });

export function titleOfDemo({ path }: DemoNotebook): string {
  return TITLES[path] ?? 'Without a title';
}
