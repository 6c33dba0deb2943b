/** Which of both a key means: Ctrl or ⌘ with Z, with Shift and Z, or with Y. Fields have an undo of their own. */
export function undoKey(event: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || editsText(event)) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'y') return 'redo';
  if (key !== 'z') return undefined;
  return event.shiftKey ? 'redo' : 'undo';
}

function editsText(event: Event): boolean {
  const [target] = event.composedPath();
  return target instanceof Element && target.matches('textarea, input:not([type]), input[type="text"]');
}
