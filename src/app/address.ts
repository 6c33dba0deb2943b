/** The address names the open notebook behind its #, so that each tab opens its own again after a reload. */
export function notebookInAddress({ hash }: Pick<Location, 'hash'>): string | undefined {
  try {
    return decodeURIComponent(hash.slice(1)) || undefined;
  } catch {
    return undefined;
  }
}

export function putInAddress(notebookId: string): void {
  const hash = `#${encodeURIComponent(notebookId)}`;
  if (location.hash !== hash) history.replaceState(history.state, '', hash);
}
