/**
 * Files dropped on an element that may hold measured bands. Notebooks, which are JSON, are left to the page, which
 * leaves alone what was taken here.
 */
export interface BandsDrop {
  takes(): boolean;
  onOver(over: boolean): void;
  onFile(file: File): void;
}

/** The listeners stay as long as the element. */
export function receiveBands(element: HTMLElement, { takes, onOver, onFile }: BandsDrop): void {
  element.addEventListener('dragover', (event) => {
    // Until it is dropped, a file tells its type but not its name.
    const files = [...(event.dataTransfer?.items ?? [])].filter(({ kind }) => kind === 'file');
    if (!takes() || files.length === 0 || files.some(({ type }) => type === 'application/json')) return;
    event.preventDefault();
    onOver(true);
  });
  element.addEventListener('dragleave', () => onOver(false));
  element.addEventListener('drop', (event) => {
    onOver(false);
    const [file] = event.dataTransfer?.files ?? [];
    if (!takes() || !file || /\.json$/i.test(file.name)) return;
    event.preventDefault();
    onFile(file);
  });
}
