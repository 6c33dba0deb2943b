/** How long the browser may take to fetch what was handed to it, ms. */
const KEPT_MS = 30_000;

/** Hands a file to the browser, which puts it where its user wants downloads. */
export function download(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), KEPT_MS);
}
