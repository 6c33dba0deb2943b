import type { Notebook } from '#src/notebook/types.ts';

/** Whether two notebooks would make the same file. */
export async function sameContent(a: Notebook, b: Notebook): Promise<boolean> {
  const { writeNotebook } = await import('#src/notebook/write-file.ts');
  return writeNotebook(a) === writeNotebook(b);
}
