/**
 * What Enter and Escape do in a field that is typed into: take what stands there, or go back. Browsers tell of no
 * change where the text is the one that stood there before, so Enter tells it. While letters are composed both keys
 * belong to that.
 */
export function entryKey(event: KeyboardEvent, goBack: () => void): void {
  if (event.isComposing) return;
  if (event.key === 'Enter') event.target!.dispatchEvent(new Event('change'));
  if (event.key === 'Escape') goBack();
}
